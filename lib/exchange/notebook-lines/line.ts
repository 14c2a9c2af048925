import type { Count } from "./reading";
import type { SlotRead } from "./slots";
import { isAdjacent, type Token, tokenise, wordsOf } from "./tokens";

/** A line cut in tokens, with what the years in it may lean on. */
export interface Line {
  readonly text: string;
  readonly tokens: readonly Token[];
  /** the latest year that two digits can mean; null = 29 for 2029, as spreadsheets read them */
  readonly thisYear: number | null;
  /** of the nearest earlier line that has an exact year */
  readonly previousYear: number | null;
  /** what slots have read at which token, so that no pattern reads it a second time */
  readonly reads: Map<string, SlotRead | null>;
}

/** A reader gives where it stopped (token number, not included) and what it read. */
export type Read<Value> = { readonly end: number } & Value;

export function lineOf(text: string, thisYear: number | null, previousYear: number | null): Line {
  return { text, tokens: tokenise(text), thisYear, previousYear, reads: new Map() };
}

export function low(line: Line, at: number): string {
  return line.tokens[at]?.low ?? "";
}

export function words(line: Line, from: number, to: number): string {
  return wordsOf(line.text, line.tokens, from, to);
}

export const NOTHING_SAID: Omit<Count, "words"> = { value: null, low: null, high: null, approximate: false };

/** Words after which a bare number has ended: "kept 12 and gave..." has, "kept 12 chickens" has not. */
const CLOSERS = new Set(
  (
    "and but then so yet of off from in into before after by on onto at out with without under over only again last this that " +
    "when since until till as because while though although still now already altogether together too or also just later"
  ).split(" "),
);

/** Whether what was read can end before token `at`: at the end, a mark, or a word that begins something new. */
export function isClosed(line: Line, at: number): boolean {
  const token = line.tokens[at];
  if (token === undefined) return true;
  if (token.kind === "mark") return isApart(line, at) || !["%", "/", "°", "£", "$", "€"].includes(token.text);
  return CLOSERS.has(token.low);
}

const RUN_ON = new Set(
  "up kept saved pulled rogued plants flowered survived seeded left standing harvested planted mothers died".split(" "),
);

/** "30 up 12 kept 4 rogued": a new number behind a word, with what it counts, begins something new without a comma. */
export function isRunOn(line: Line, at: number): boolean {
  const [before, token] = [line.tokens[at - 1], line.tokens[at]];
  return before?.kind === "word" && token?.kind === "number" && RUN_ON.has(line.tokens[at + 1]?.low ?? "");
}

const CLAUSE_MARKS = new Set([",", ";", ":", ".", "(", ")", "–", "—", "-", "!", "?", "->", "=>", "→"]);

/** "sown 50 / up 38", "50 seeds > 31 plants": a stroke with blanks parts as a comma does; "80 plants/ 20 saved" as well. */
export function isApart(line: Line, at: number): boolean {
  const [before, token, after] = [line.tokens[at - 1], line.tokens[at], line.tokens[at + 1]];
  if (token === undefined || before === undefined || after === undefined || !["/", ">"].includes(token.text))
    return false;
  const [isFree, isFollowed] = [before.to < token.from, token.to < after.from];
  return token.text === "/" ? isFollowed : isFree && isFollowed;
}

/** Whether token `at` parts what stands before it from what follows; a dash within "30-40" does not. */
export function isClauseMark(line: Line, at: number): boolean {
  const token = line.tokens[at];
  if (isApart(line, at)) return true;
  if (token?.kind !== "mark" || !CLAUSE_MARKS.has(token.text)) return false;
  const isJoint = isAdjacent(line.tokens, at) && isAdjacent(line.tokens, at + 1);
  return !(isJoint && ["-", "–"].includes(token.text));
}

/** Whether token `at` begins a line or a clause, or follows the year at the head of the line. */
export function isBeginning(line: Line, at: number): boolean {
  const before = line.tokens[at - 1];
  if (before === undefined || isClauseMark(line, at - 1)) return true;
  if (["and", "but", "then", "so"].includes(before.low)) return true;
  return at === 1 && (before.kind === "number" || before.kind === "short-year");
}

/** Where the first of these phrases that stands at token `at` ends, or null. Longer phrases come first in the list. */
export function phraseEnd(line: Line, at: number, phrases: readonly string[]): number | null {
  for (const phrase of phrases) {
    const parts = phrase.split(" ");
    if (parts.every((part, index) => low(line, at + index) === part)) return at + parts.length;
  }
  return null;
}
