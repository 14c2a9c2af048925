import { readAmount, readAmountOrPart } from "./amount";
import { readDayOfYear } from "./calendar-words";
import { readCount } from "./count";
import { type Distance, readDistance } from "./distance";
import { isClosed, type Line, low } from "./line";
import { readLooseLotReference, readLotReference } from "./lot-reference";
import { readAdjectives, readName, readOwner, readRest } from "./names-in-lines";
import type { Amount, Count, LotReference } from "./reading";
import { readYear } from "./year";

/** What a slot of a pattern has taken up. */
export type SlotValue =
  | { readonly count: Count }
  | { readonly amount: Amount }
  | { readonly name: string }
  | { readonly lot: LotReference }
  | { readonly distance: Distance }
  | { readonly share: number }
  | { readonly edtf: string | null }
  | { readonly month: number; readonly day: number | null };

export type SlotRead = { readonly end: number } & SlotValue;

const SHARES: Record<string, number> = { half: 1 / 2, third: 1 / 3, thirds: 1 / 3, quarter: 1 / 4, quarters: 1 / 4 };

/** The slots that a pattern can hold, `{count}`, `{amount}`, ... each with its reader. */
export const SLOTS: Record<string, (line: Line, at: number) => SlotRead | null> = {
  /** plants, seeds, ears: whole numbers only */
  count: readWhole,
  /** any number: a percentage, a length */
  number: readCount,
  /** a count with an end behind it: "12" in "kept 12 and..." but not in "kept 12 chickens" */
  bare: (line, at) => {
    const read = readWhole(line, at);
    return read !== null && isClosed(line, read.end) ? read : null;
  },
  amount: readAmount,
  part: readAmountOrPart,
  name: readName,
  owner: readOwner,
  rest: readRest,
  adjectives: readAdjectives,
  lot: readLotReference,
  loose: readLooseLotReference,
  distance: readDistance,
  share: readShare,
  year: (line, at) => readYear(line, at),
  day: readDayOfYear,
};

/** Beyond ten million nobody has counted. */
const MOST = 10_000_000;

function readWhole(line: Line, at: number): ReturnType<typeof readCount> {
  const read = readCount(line, at);
  if (read === null) return null;
  const { value, low: least, high } = read.count;
  return [value, least, high].every((number) => number === null || (Number.isInteger(number) && number <= MOST))
    ? read
    : null;
}

/** "half", "a third", "two thirds", "three quarters", "40 %". */
function readShare(line: Line, at: number): SlotRead | null {
  const percent = readCount(line, at);
  if (percent !== null && percent.count.value !== null && isPercent(low(line, percent.end))) {
    return { end: percent.end + 1, share: percent.count.value / 100 };
  }
  const whole = percent?.count.value ?? 1;
  const place =
    percent !== null && percent.count.value !== null
      ? percent.end
      : low(line, at) === "a" || low(line, at) === "one"
        ? at + 1
        : at;
  const part = SHARES[low(line, place)];
  return part === undefined ? null : { end: place + 1, share: whole * part };
}

function isPercent(low: string): boolean {
  return ["%", "percent", "pct"].includes(low);
}
