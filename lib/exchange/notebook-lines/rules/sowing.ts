import type { Found } from "../pattern";
import type { LotReference } from "../reading";
import { doubtful, likely, type Reading, rule, sure, withCount } from "./rule";

/** "sowed 60 seeds", "60 seeds sown", "sowed 20 g", "sowed a packet". */
export const seedsSownRule = rule("seeds-sown", [
  [
    "(<sow>|put in|set) (about|only|just)? {count} (good|sound|old|of the)? <seeds>",
    (found) => (isOfYear(found) ? null : withCount(found, (count) => sure({ kind: "seeds-sown", value: { count } }))),
  ],
  [
    "planted (only|just)? {count} <seeds>",
    (found) => (isOfYear(found) ? null : withCount(found, (count) => sure({ kind: "seeds-sown", value: { count } }))),
  ],
  [
    "<sow> (only|just)? {bare}",
    (found) => withCount(found, (count) => likely({ kind: "seeds-sown", value: { count } })),
  ],
  [
    "(only|just)? {count} (<seeds-many>? (sown|sowed|drilled)|<seeds-many> planted) $",
    (found) => withCount(found, (count) => sure({ kind: "seeds-sown", value: { count } })),
  ],
  ["(<sow>|put in) {part}", sownAmount],
  ["{amount} (all)? (sown|sowed|drilled)", sownAmount],
]);

/** "planted 2016 seed": seed of that year, and not two thousand of them. */
function isOfYear(found: Found): boolean {
  return /\b(?:1[89]|20)\d{2} seed$/i.test(found.words);
}

function sownAmount(found: Found): Reading | null {
  const amount = found.amount();
  if (amount === null) return null;
  // "85 seed sown" can be the seed of 1985
  const read = amount.givenUnit === "seed" ? doubtful : sure;
  if (amount.unit === "seeds") return read({ kind: "seeds-sown", value: { count: countOf(amount) } });
  return sure({ kind: "sown-amount", value: { amount } });
}

function countOf({ words, value, low, high, approximate }: NonNullable<ReturnType<Found["amount"]>>) {
  return { words, value, low, high, approximate };
}

/** Which seed was sown: "from the 1991 seed", "from last year's", "sowed the old jar", "1990 and 1992 seed mixed". */
export const sownFromRule = rule("sown-from", [
  ["(<sow>|grown|grew|grew it|raised|planted|came|all|again)? (from|with|using|out of|of) {lot}", sown(sure)],
  [
    "(<sow>|grown|grew|raised|planted)? (from|with|using|out of) {loose} (and|with) {lot:second} (mixed|together|mixed together)?",
    sown(sure),
  ],
  [
    "(<sow>|grown|grew|raised|planted) (from|with|using|out of) {loose} (and|with) {loose:second} (mixed|together|mixed together)?",
    sown(sure),
  ],
  ["(sowed|sown|sow|grew|planted|drilled|used) {lot} (again)?", sown(sure)],
  ["(sowed|sown|sow|grew|planted|drilled|used) {loose} and {lot:second} (mixed|together|mixed together)?", sown(sure)],
  ["{lot} (sown|sowed|used|again|sown again|used again)", sown(sure)],
  ["{lot} $", (found) => (["year", "last-year"].includes(found.lot()?.kind ?? "") ? sown(likely)(found) : null)],
  ["(<sow>|grown|grew|raised)? (again)? from (the)? (old|new) (one|ones) $", sown(doubtful)],
]);

function sown(read: typeof sure) {
  return (found: Found): Reading | null => {
    const lots = [found.lot() ?? found.lot("loose"), found.lot("second")].filter(
      (lot): lot is LotReference => lot !== null,
    );
    return lots.length === 0 ? null : read({ kind: "sown-from", value: { lots } });
  };
}

/** A year in which the variety wasn't grown: "nothing sown", "rested", "did not grow it". */
export const gapRule = rule("gap", [
  ["(nothing|none|not|no seed) (sown|sowed|grown|planted|grew) (at all|this year|again)? $", skipped],
  [
    "(did not|didn't|did nothing|never) (sow|grow|plant) (it|any|any of it|them|anything|this one)? (at all|this year|that year)? $",
    skipped,
  ],
  [
    "(i|we|they)? (let it|let them)? (rested|skipped|skipped it|skipped a year|missed a year|had a rest|took a rest|year off|a year off|a fallow year|fallow|left it in the jar|stayed in the jar|left in the jar|no grow-out|no grow out|no garden|no garden this year) (this year|that year)? $",
    skipped,
  ],
  ["^ nothing (this year|that year|at all|done)? $", doubtfulGap],
]);

function skipped(): Reading {
  return sure({ kind: "gap", value: {} });
}

function doubtfulGap(): Reading {
  return doubtful({ kind: "gap", value: {} });
}
