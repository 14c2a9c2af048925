import { isAdjacent, type Token } from "./tokens";

const ONES =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "- - twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
const SPELLINGS: Record<string, string> = {
  fourty: "forty",
  fourtheen: "fourteen",
  fifthteen: "fifteen",
  ninty: "ninety",
};
const GROUPS: Record<string, number> = { dozen: 12, score: 20, hundred: 100, thousand: 1000 };

export interface NumberRead {
  readonly end: number;
  readonly value: number;
}

/**
 * Reads a number in digits or words from token `at`: `40`, `forty`, `twenty-five`, `two dozen`, `a score`,
 * `half a dozen`, `a hundred and twenty`, `two thousand`. Null where none stands there; a bare "a" is no number.
 */
export function readNumber(tokens: readonly Token[], at: number): NumberRead | null {
  const token = tokens[at];
  if (token === undefined) return null;
  // "1e3", "G12": no number of its own
  if (token.kind === "number" && isAdjacent(tokens, at) && tokens[at - 1]?.kind === "word") return null;
  if (token.kind === "number" && token.number !== null) return grouped(tokens, at + 1, token.number);
  if (token.low === "half" && isArticle(tokens[at + 1]) && tokens[at + 2]?.low === "dozen")
    return { end: at + 3, value: 6 };
  if (isArticle(token)) {
    const group = GROUPS[tokens[at + 1]?.low ?? ""];
    if (group !== undefined) return grouped(tokens, at + 1, 1);
    return ["single", "lone"].includes(tokens[at + 1]?.low ?? "") ? { end: at + 2, value: 1 } : null;
  }
  const small = smallNumber(token.low);
  if (small === null) return token.low === "dozen" || token.low === "hundred" ? grouped(tokens, at, 1) : null;
  const next = tokens[at + 1];
  const ones = next === undefined ? null : smallNumber(next.low);
  // twenty five
  if (small >= 20 && small % 10 === 0 && ones !== null && ones >= 1 && ones <= 9)
    return grouped(tokens, at + 2, small + ones);
  return grouped(tokens, at + 1, small);
}

/** Whether a number of words or digits can begin at this token; used to end a name before one. */
export function startsNumber(tokens: readonly Token[], at: number): boolean {
  return readNumber(tokens, at) !== null;
}

function grouped(tokens: readonly Token[], at: number, value: number): NumberRead {
  const group = GROUPS[tokens[at]?.low ?? ""];
  if (group === undefined) return { end: at, value };
  const product = value * group;
  // a hundred and twenty
  const rest = tokens[at + 1]?.low === "and" && group >= 100 ? readNumber(tokens, at + 2) : null;
  return rest !== null && rest.value < group
    ? { end: rest.end, value: product + rest.value }
    : { end: at + 1, value: product };
}

function smallNumber(low: string): number | null {
  const word = SPELLINGS[low] ?? low;
  const ones = ONES.indexOf(word);
  if (ones >= 0) return ones;
  const tens = TENS.indexOf(word, 2);
  if (tens >= 0) return tens * 10;
  const [first, second] = word.split("-");
  if (first === undefined || second === undefined || word.split("-").length !== 2) return null;
  const [ten, one] = [TENS.indexOf(first, 2), ONES.indexOf(second)];
  return ten >= 2 && one >= 1 && one <= 9 ? ten * 10 + one : null;
}

function isArticle(token: Token | undefined): boolean {
  return token?.low === "a" || token?.low === "an";
}
