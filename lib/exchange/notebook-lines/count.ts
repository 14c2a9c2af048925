import { isApart, type Line, low, NOTHING_SAID, phraseEnd, type Read, words } from "./line";
import { readNumber } from "./number-words";
import type { Count } from "./reading";
import { isAdjacent } from "./tokens";

const ABOUT = new Set([
  "about",
  "around",
  "roughly",
  "approx",
  "approximately",
  "circa",
  "nearly",
  "almost",
  "maybe",
  "perhaps",
  "probably",
  "say",
  "ca",
  "c",
  "~",
  "some",
]);
const AT_LEAST = ["more than", "at least", "upwards of", "over", "well over", "just over", "above"];
const AT_MOST = [
  "fewer than",
  "less than",
  "<",
  "at most",
  "up to",
  "no more than",
  "under",
  "just under",
  "below",
  "not quite",
];
/** Words for a number that nobody counted; a "couple" is two to some and a few to others. */
const UNCOUNTED = [
  "a good few",
  "quite a few",
  "a very few",
  "very few",
  "a few",
  "few",
  "several",
  "many",
  "some",
  "plenty",
  "lots",
  "loads",
  "a lot",
  "a handful",
  "handful",
  "a couple",
  "couple",
  "dozens",
  "scores",
  "hundreds",
  "most",
  "a good many",
  "not many",
];

/** Reads a count from token `at`: "40", "about 40", "30-40", "between 30 and 40", "over 40", "two dozen", "40 or so", "a few". */
export function readCount(line: Line, at: number): Read<{ count: Count }> | null {
  const between = low(line, at) === "between" ? range(line, at + 1, ["and"]) : null;
  if (between !== null) return { end: between.end, count: { ...between.count, words: words(line, at, between.end) } };
  let start = at;
  let about = false;
  for (const phrase of ["just", "only"]) if (low(line, start) === phrase && ABOUT.has(low(line, start + 1))) start += 1;
  if (ABOUT.has(low(line, start)) && isNumberNext(line, start + 1)) {
    about = true;
    // "c." and "ca." may carry a stop
    start += low(line, start + 1) === "." ? 2 : 1;
  } else if (low(line, start) === "only" && readNumber(line.tokens, start + 1) !== null) start += 1;
  const bound = about ? null : boundAt(line, start);
  if (bound !== null) {
    const limit = readNumber(line.tokens, bound.end);
    if (limit !== null) return { end: limit.end, count: bounded(words(line, at, limit.end), bound.side, limit.value) };
  }
  const spread = range(line, start, ["-", "–", "—", "to", "or"]);
  const said = spread ?? exact(line, start);
  if (said === null) return about ? null : uncounted(line, at);
  const loose = looseEnd(line, said.end);
  const end = loose?.end ?? said.end;
  const count = { ...said.count, approximate: about || loose?.approximate === true, words: words(line, at, end) };
  return { end, count: loose?.open === true ? { ...count, value: null, high: null } : count };
}

function isNumberNext(line: Line, at: number): boolean {
  return readNumber(line.tokens, low(line, at) === "." ? at + 1 : at) !== null || low(line, at) === "between";
}

function exact(line: Line, at: number): Read<{ count: Count }> | null {
  const number = readNumber(line.tokens, at);
  if (number === null) return null;
  const { value, end } = number;
  return { end, count: { words: words(line, at, end), value, low: value, high: value, approximate: false } };
}

function range(line: Line, at: number, joints: readonly string[]): Read<{ count: Count }> | null {
  const first = readNumber(line.tokens, at);
  if (first === null || !joints.includes(low(line, first.end))) return null;
  const second = readNumber(line.tokens, first.end + 1);
  if (second === null || second.value <= first.value) return null;
  const count = { words: "", value: null, low: first.value, high: second.value, approximate: false };
  return { end: second.end, count: { ...count, words: words(line, at, second.end) } };
}

function boundAt(line: Line, at: number): Read<{ side: "low" | "high" }> | null {
  // ">20", but not the arrow "->"
  if (
    low(line, at) === ">" &&
    !isApart(line, at) &&
    !(isAdjacent(line.tokens, at) && ["-", "="].includes(low(line, at - 1)))
  )
    return { end: at + 1, side: "low" };
  const least = phraseEnd(line, at, AT_LEAST);
  if (least !== null) return { end: least, side: "low" };
  const most = phraseEnd(line, at, AT_MOST);
  return most === null ? null : { end: most, side: "high" };
}

function bounded(said: string, side: "low" | "high", value: number): Count {
  return { ...NOTHING_SAID, words: said, [side]: value };
}

/** What follows a number and loosens it: "40 or so", "40-odd", "40ish", "40+". */
function looseEnd(line: Line, at: number): Read<{ approximate: boolean; open: boolean }> | null {
  const [first, second] = [low(line, at), low(line, at + 1)];
  if (first === "+" && isAdjacent(line.tokens, at)) return { end: at + 1, approximate: false, open: true };
  if (first === "or" && (second === "so" || second === "thereabouts"))
    return { end: at + 2, approximate: true, open: false };
  if (first === "odd" || first === "ish") return { end: at + 1, approximate: true, open: false };
  if (first === "-" && (second === "odd" || second === "ish")) return { end: at + 2, approximate: true, open: false };
  return null;
}

function uncounted(line: Line, at: number): Read<{ count: Count }> | null {
  const end = phraseEnd(line, at, UNCOUNTED);
  if (end === null) return null;
  const said = words(line, at, end);
  const pair = { value: 2, low: 2, high: 2, approximate: true };
  return { end, count: { ...(/couple/i.test(said) ? pair : NOTHING_SAID), words: said } };
}
