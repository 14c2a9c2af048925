import { isClauseMark, isClosed, type Line, low, words } from "./line";
import type { Span, Understood } from "./reading";
import { RULES } from "./rules";
import type { RuleMatch } from "./rules/rule";
import { yearRule } from "./rules/years";
import { isAdjacent, type Token } from "./tokens";

export interface Scan {
  readonly understood: readonly Understood[];
  readonly notUnderstood: readonly Span[];
}

/** Not so, or only meant to be: neither is done. */
const DENIALS = new Set(
  (
    "not no never without neither nor cannot forgot forgotten meant wanted hope hoped hoping plan plans planned planning should would could will must ought " +
    "intend intended wish wished if next tomorrow"
  ).split(" "),
);

/** "1990 plants" is a count, "1991 seed" a lot of that year; "1991 seed from 12" tells of the year 1991. */
const COUNTED = new Set(["plants", "plant", "seeds", "g", "kg", "grains", "beans", "peas"]);
const LOT_NOUNS = new Set(["seed", "lot", "jar", "stock", "packet", "tin", "batch", "'s"]);

const JOINING = new Set(["and", "but", "then", "so", "also"]);

/** Words that say nothing alone, between pieces that are understood. */
const FILLERS = new Set(
  "and but then so also the a an it them they i we he she with of in on at to for from that this there all very was were had only just too still by".split(
    " ",
  ),
);

/** Reads a line from left to right: at each word the longest rule that fits, else the word is left over. */
export function scan(line: Line): Scan {
  const understood: Understood[] = [];
  const left: Token[][] = [[]];
  let denied = false;
  for (let at = 0; at < line.tokens.length; ) {
    const match = denied || isLowerNumber(line, at) ? null : ((at === 0 ? headYear(line) : null) ?? longest(line, at));
    const end = match?.end ?? at + 1;
    if (match?.fact !== undefined && match.fact !== null) {
      const [first, last] = [line.tokens[at], line.tokens[end - 1]];
      if (first === undefined || last === undefined) break;
      understood.push({
        from: first.from,
        to: last.to,
        words: words(line, at, end),
        certainty: match.certainty,
        ...match.fact,
      });
      left.push([]);
    } else if (match !== null) {
      // a number that is none of the seed's stays with the words around it ("house no. 12")
      left.at(-1)?.push(...line.tokens.slice(at, end));
    } else if (isClauseMark(line, at)) {
      left.push([]);
    } else {
      left.at(-1)?.push(...line.tokens.slice(at, end));
    }
    denied = isDenied(line, at, match, denied);
    at = end;
  }
  return { understood, notUnderstood: left.flatMap((run) => leftOver(line, run)) };
}

/** What follows a "not" or "meant to" that no rule has read is not so, to the end of the clause. */
function isDenied(line: Line, at: number, match: RuleMatch | null, before: boolean): boolean {
  const token = line.tokens[at];
  if (token === undefined || match !== null) return false;
  if (isClauseMark(line, at) || token.low === "and" || token.low === "but") return false;
  return before || DENIALS.has(token.low) || token.low.endsWith("n't");
}

/** A year at the head of the line is its year, whatever could be made of it with the next word ("1997 sown"). */
function headYear(line: Line): RuleMatch | null {
  const match = yearRule.read(line, 0);
  if (match === null) return null;
  const next = low(line, match.end);
  const after = low(line, match.end + 1);
  const endsThere = isClosed(line, match.end + 1) || ["sown", "sowed", "used", "again"].includes(after);
  const isLot = LOT_NOUNS.has(next) && endsThere && !["from", "off", "of"].includes(after);
  // "2024 seeds from the swap" tells of the year
  const isSeedFrom = ["seed", "seeds"].includes(next) && ["from", "off", "given", "bought"].includes(after);
  // "2026 plants 40": the count stands behind
  const isHeading = line.tokens[match.end + 1]?.kind === "number" || after === ":" || after === "=";
  return isLot || (COUNTED.has(next) && !isSeedFrom && !isHeading) ? null : match;
}

/** Whether token `at` is the lower number of "1/2": what follows is no count of its own ("1/2 lb" is not 2 lb). */
function isLowerNumber(line: Line, at: number): boolean {
  const [upper, stroke, number] = [line.tokens[at - 2], line.tokens[at - 1], line.tokens[at]];
  if (upper?.kind !== "number" || stroke?.text !== "/" || number?.kind !== "number") return false;
  return isAdjacent(line.tokens, at - 1) && isAdjacent(line.tokens, at);
}

function longest(line: Line, at: number): RuleMatch | null {
  let best: RuleMatch | null = null;
  for (const rule of RULES) {
    const match = rule.read(line, at);
    if (match !== null && (best === null || match.end > best.end)) best = match;
  }
  return best;
}

/** A run of words that no rule took, without joining words at its ends; nothing where it says nothing. */
function leftOver(line: Line, run: readonly Token[]): Span[] {
  let [from, to] = [0, run.length];
  while (from < to && JOINING.has(run[from]?.low ?? "")) from += 1;
  while (to > from && JOINING.has(run[to - 1]?.low ?? "")) to -= 1;
  const [first, last] = [run[from], run[to - 1]];
  const isEmpty = run.slice(from, to).every((token) => token.kind === "mark" || FILLERS.has(token.low));
  if (first === undefined || last === undefined || isEmpty) return [];
  return [{ from: first.from, to: last.to, words: line.text.slice(first.from, last.to) }];
}
