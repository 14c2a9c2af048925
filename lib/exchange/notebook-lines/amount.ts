import { readCount } from "./count";
import { readFraction } from "./fraction";
import { type Line, low, NOTHING_SAID, phraseEnd, type Read, words } from "./line";
import { readNumber } from "./number-words";
import type { Amount, Count, SeedUnit } from "./reading";

/** Grams in each unit of weight; the pound is 453.59237 g exactly (international agreement of 1959), the ounce a sixteenth. */
const GRAMS: Record<string, number> = { g: 1, kg: 1000, mg: 0.001, oz: 453.592_37 / 16, lb: 453.592_37 };
const SPELLINGS: Record<string, string> = {
  g: "g",
  gm: "g",
  gms: "g",
  gr: "g",
  gram: "g",
  grams: "g",
  gramme: "g",
  grammes: "g",
  kg: "kg",
  kgs: "kg",
  kilo: "kg",
  kilos: "kg",
  kilogram: "kg",
  kilograms: "kg",
  mg: "mg",
  oz: "oz",
  ounce: "oz",
  ounces: "oz",
  lb: "lb",
  lbs: "lb",
  pound: "lb",
  pounds: "lb",
};
const COUNTED: Record<string, SeedUnit> = {
  seed: "seeds",
  seeds: "seeds",
  grain: "seeds",
  grains: "seeds",
  kernel: "seeds",
  kernels: "seeds",
  bean: "seeds",
  beans: "seeds",
  pea: "seeds",
  peas: "seeds",
  corns: "seeds",
  pips: "seeds",
  ear: "ears",
  ears: "ears",
  cob: "ears",
  cobs: "ears",
  head: "heads",
  heads: "heads",
  umbels: "heads",
  pod: "pods",
  pods: "pods",
  fruit: "fruits",
  fruits: "fruits",
  packet: "packets",
  packets: "packets",
  pkt: "packets",
  pkts: "packets",
  envelope: "packets",
  envelopes: "packets",
};
const VESSELS = new Set(
  (
    "jar jars jarful jarfuls handful handfuls fistful pinch pinches spoonful spoonfuls teaspoon teaspoonful tablespoon cup cups cupful cupfuls " +
    "mug mugful pint pints quart quarts gallon gallons bag bags bagful bagfuls sack sacks sackful bucket buckets bucketful tin tins tinful " +
    "matchbox thimble thimbleful basket baskets tray bottle bottles sheaf sheaves"
  ).split(" "),
);
const SIZES = new Set("full small little big large good whole jam tiny half-full heaped brown paper".split(" "));
const PARTS = [
  "the rest of it",
  "the rest",
  "rest",
  "the remainder",
  "the remains",
  "half of it",
  "half of them",
  "half the jar",
  "half the seed",
  "half of the seed",
  "half of the jar",
  "half the lot",
  "half",
  "a third of it",
  "a third",
  "a quarter of it",
  "a quarter",
  "most of it",
  "most",
  "all of it",
  "all the seed",
  "a little",
  "a bit",
  "a few seeds",
  "a few",
  "some of it",
  "some",
  "plenty",
  "lots",
  "a lot",
  "enough",
];
const OF_SEED = [
  "of clean seed",
  "of clean dry seed",
  "of dry seed",
  "of good seed",
  "of the seed",
  "of seed",
  "of seeds",
  "of grain",
  "of it",
  "of them",
  "clean seed",
  "dry seed",
  "good seed",
  "seed",
  "seeds",
];

/** Reads a weight, a count of seeds, ears or packets, or a vessel from token `at`: "300 g", "2 lb 4 oz", "half a pound", "500 seeds", "a jarful". */
export function readAmount(line: Line, at: number): Read<{ amount: Amount }> | null {
  return fractionOfUnit(line, at) ?? writtenFraction(line, at) ?? measured(line, at) ?? vessel(line, at);
}

/** The same, and words for a part of what is there: "half of it", "the rest", "some". */
export function readAmountOrPart(line: Line, at: number): Read<{ amount: Amount }> | null {
  const amount = readAmount(line, at);
  if (amount !== null) return amount;
  const fraction = readFraction(line, at);
  const part =
    phraseEnd(line, at, PARTS) ?? (fraction !== null && fraction.value < 1 ? partEnd(line, fraction.end) : null);
  if (part === null) return null;
  const end = ofSeed(line, part);
  return { end, amount: wordsOnly(words(line, at, end)) };
}

/** "1/2 of it", "1/2 the jar", "1/2" before an end. */
function partEnd(line: Line, at: number): number {
  return phraseEnd(line, at, ["of the jar", "of the lot", "the jar", "the seed", "the lot", "of it", "of them"]) ?? at;
}

/** "1/2 lb", "2 1/2 oz", "3/4 of a pound", "1/2 a cup". */
function writtenFraction(line: Line, at: number): Read<{ amount: Amount }> | null {
  const isAbout = ["about", "around", "nearly", "almost", "roughly", "~"].includes(low(line, at));
  const read = readFraction(line, isAbout ? at + 1 : at);
  if (read === null) return null;
  let end = read.end;
  if (low(line, end) === "of") end += 1;
  if (low(line, end) === "a" || low(line, end) === "an") end += 1;
  const unit = SPELLINGS[low(line, end)];
  if (unit !== undefined) {
    const { value } = read;
    return weighed(line, at, end + 1, { words: "", value, low: value, high: value, approximate: isAbout }, unit);
  }
  if (!VESSELS.has(low(line, end))) return null;
  const tail = ofSeed(line, end + 1);
  return { end: tail, amount: wordsOnly(words(line, at, tail)) };
}

/** "the 2015 jar", "1991 seed": a year, and no two thousand jars. */
function isYearOfLot(line: Line, at: number, written: string): boolean {
  const isOne = ["seed", "packet", "jar", "tin", "bag", "bottle", "sack"].includes(written);
  return isOne && /^(?:1[89]|20)\d{2}$/.test(line.tokens[at]?.text ?? "");
}

function measured(line: Line, at: number): Read<{ amount: Amount }> | null {
  const read = readCount(line, at) ?? single(line, at);
  if (read === null) return null;
  const filler = low(line, read.end) === "of" ? 1 : SIZES.has(low(line, read.end)) ? 1 : 0;
  const written = low(line, read.end + filler);
  if (isYearOfLot(line, at, written)) return null;
  const weight = SPELLINGS[written];
  if (weight !== undefined && filler === 0) return weighed(line, at, read.end + 1, read.count, weight);
  const unit = COUNTED[written];
  if (unit !== undefined) {
    // "a packet of 40 seeds" is one packet here: the seeds in it are another count
    const end = ofSeed(line, read.end + filler + 1);
    return { end, amount: { ...read.count, words: words(line, at, end), unit, givenUnit: written, grams: null } };
  }
  if (!VESSELS.has(written)) return null;
  const end = ofSeed(line, read.end + filler + 1);
  return { end, amount: wordsOnly(words(line, at, end)) };
}

function weighed(line: Line, at: number, unitEnd: number, count: Count, unit: string): Read<{ amount: Amount }> {
  const factor = GRAMS[unit] ?? 1;
  const ounces = unit === "lb" ? readNumber(line.tokens, unitEnd) : null;
  const withOunces = ounces !== null && SPELLINGS[low(line, ounces.end)] === "oz";
  const more = withOunces && ounces !== null ? ounces.value / 16 : 0;
  const end = ofSeed(line, withOunces && ounces !== null ? ounces.end + 1 : unitEnd);
  const plus = (value: number | null) => (value === null ? null : value + more);
  const scaled = (value: number | null) => (value === null ? null : (value + more) * factor);
  return {
    end,
    amount: {
      words: words(line, at, end),
      value: plus(count.value),
      low: plus(count.low),
      high: plus(count.high),
      approximate: count.approximate,
      unit: "g",
      givenUnit: unit,
      grams: { value: scaled(count.value), low: scaled(count.low), high: scaled(count.high) },
    },
  };
}

/** "half a pound", "a quarter of an ounce", "half an oz", "a pound and a half" is not read. */
function fractionOfUnit(line: Line, at: number): Read<{ amount: Amount }> | null {
  const about = ["about", "around", "nearly", "almost", "roughly"].includes(low(line, at));
  const first = about ? at + 1 : at;
  const start = low(line, first) === "a" ? first + 1 : first;
  const share = low(line, start) === "half" ? 0.5 : low(line, start) === "quarter" ? 0.25 : null;
  if (share === null) return null;
  let end = start + 1;
  if (low(line, end) === "of") end += 1;
  if (low(line, end) === "a" || low(line, end) === "an") end += 1;
  const unit = SPELLINGS[low(line, end)];
  if (unit !== undefined) {
    return weighed(line, at, end + 1, { words: "", value: share, low: share, high: share, approximate: about }, unit);
  }
  if (!VESSELS.has(low(line, end)) || end === start + 1) return null;
  const tail = ofSeed(line, end + 1);
  return { end: tail, amount: wordsOnly(words(line, at, tail)) };
}

/** "a packet", "an ear", "a pound". */
function single(line: Line, at: number): Read<{ count: Count }> | null {
  if (low(line, at) !== "a" && low(line, at) !== "an") return null;
  return { end: at + 1, count: { words: low(line, at), value: 1, low: 1, high: 1, approximate: false } };
}

function vessel(line: Line, at: number): Read<{ amount: Amount }> | null {
  let end = at;
  if (["a", "an", "the", "one"].includes(low(line, end))) end += 1;
  while (SIZES.has(low(line, end)) && end < at + 4) end += 1;
  if (end === at || !VESSELS.has(low(line, end))) return null;
  const tail = ofSeed(line, end + 1);
  return { end: tail, amount: wordsOnly(words(line, at, tail)) };
}

/** Steps over "of seed", "of clean seed", "seed". */
function ofSeed(line: Line, at: number): number {
  return phraseEnd(line, at, OF_SEED) ?? at;
}

function wordsOnly(said: string): Amount {
  return { ...NOTHING_SAID, words: said, unit: null, givenUnit: null, grams: null };
}
