import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type DecimalMark, readDecimal, writeDecimal } from "./decimal";
import type { SeedSharesCell } from "./kinds";

/** Reads the text of a cell that is not empty. The refusal's path is left to the caller. */
export type CellReader<T> = (text: string, mark: DecimalMark) => Outcome<T>;

/** The largest count that both databases store. */
const LARGEST_COUNT = 2_147_483_647;

/** A name: trimmed, Unicode NFC, each run of blanks one blank. */
export const readName: CellReader<string> = (text) => accepted(text.normalize("NFC").replace(/\s+/g, " ").trim());

/** Words as they were written. */
export const readText: CellReader<string> = (text) => accepted(text);

export const readDay: CellReader<FuzzyDate> = (text) => parseDate(text);

export function readOneOf<const Words extends readonly string[]>(words: Words): CellReader<Words[number]> {
  return (text) => {
    const written = text.trim();
    const word = words.find((candidate) => candidate === written);
    if (word !== undefined) return accepted(word);
    const meant = words.find((candidate) => candidate === written.toLowerCase());
    const needed = meant === undefined ? `write ${either(words)}` : `did you mean ${meant}?`;
    return refused(refusal("not-one-of", [], text, "is not known here", needed));
  };
}

export interface DecimalLimits {
  readonly atLeast?: number;
  readonly above?: number;
  readonly atMost?: number;
  /** what would be right, where the limits alone don't say it */
  readonly needed?: string;
}

export function readDecimalWithin(limits: DecimalLimits): CellReader<number> {
  return (text, mark) => {
    const read = readDecimal(text, mark);
    if (!read.ok) return read;
    const { atLeast, above, atMost } = limits;
    const value = read.value;
    const low = (atLeast !== undefined && value < atLeast) || (above !== undefined && value <= above);
    const high = atMost !== undefined && value > atMost;
    if (!low && !high) return read;
    const needed = limits.needed ?? `write ${range(limits)}`;
    return refused(refusal("number-out-of-range", [], value, low ? "is too small" : "is too large", needed));
  };
}

/** A count of plants or seeds: whole, not below `atLeast`; `mayBeEmpty`: whether a cell without one may stand. */
export function readCount(atLeast: 0 | 1, mayBeEmpty = true): CellReader<number> {
  return (text, mark) => {
    const read = readDecimal(text, mark);
    if (!read.ok) return read;
    const value = read.value;
    if (!Number.isInteger(value)) {
      return refused(refusal("count-not-whole", [], value, "is not a whole number", "write a count, as 40"));
    }
    if (value < atLeast) {
      const needed =
        atLeast === 1 && mayBeEmpty
          ? "write 1 or more, or leave it empty where it is not known"
          : `write ${atLeast} or more`;
      return refused(refusal("count-too-small", [], value, "is too small", needed));
    }
    if (value > LARGEST_COUNT) {
      return refused(refusal("count-too-large", [], value, "is too large", `write a count up to ${LARGEST_COUNT}`));
    }
    return read;
  };
}

/** `equal`, `plants`, or `cv` with a coefficient of variation of 0 or more. */
export const readSeedShares: CellReader<SeedSharesCell> = (text) => {
  const written = text.trim();
  if (written === "equal" || written === "plants") return accepted(written);
  const variation = /^cv\s+(\S+)$/.exec(written)?.[1];
  // Inside words a number keeps the point even where the spreadsheet writes commas; both are read.
  const read = variation === undefined ? null : readDecimal(variation, ",");
  if (read?.ok && read.value >= 0) return accepted({ cv: read.value });
  const needed = "write equal, plants, or cv with a number of 0 or more, as cv 0.6";
  return refused(refusal("seed-shares-not-known", [], text, "does not say how the seed was shared", needed));
};

/** A score: a number where it is one, else the words as written. */
export function readScore(text: string, mark: DecimalMark): string {
  const read = readDecimal(text, mark);
  return read.ok ? writeDecimal(read.value) : text.trim();
}

function either(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

function range({ atLeast, above, atMost }: DecimalLimits): string {
  const low =
    above !== undefined ? `a number above ${above}` : atLeast !== undefined ? `a number from ${atLeast}` : "a number";
  if (atMost === undefined) return atLeast !== undefined ? `a number of ${atLeast} or more` : low;
  return `${low} to ${atMost}`;
}
