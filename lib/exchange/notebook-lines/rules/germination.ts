import type { Found } from "../pattern";
import type { Count, FactOf } from "../reading";
import { isMonthAndShortYear } from "../year";
import { doubtful, likely, type Reading, rule, sure } from "./rule";

type Germination = FactOf<"germination">["value"];

const TESTED = /\b(?:test|tested|tried|testing|paper|towel|germination|germ|sprouted|chitted|saucer|blotter)\b|%/i;

function germination(
  found: Found,
  value: Partial<Germination>,
): { readonly kind: "germination"; readonly value: Germination } {
  const days = found.count("days")?.value ?? null;
  const where = TESTED.test(found.words) ? "test" : "came-up";
  return {
    kind: "germination",
    value: { up: null, of: null, percent: null, how: null, where, days, lot: found.lot(), ...value },
  };
}

const ofMany = (found: Found): Reading | null => {
  const [up, of] = [found.count("up"), found.count("of")];
  if (up === null || of === null || !isPart(up, of)) return null;
  // "1/2 came up" is a share
  if (found.words.includes("/") && (of.value ?? 0) <= 4)
    return shareOf(found, ((up.value ?? 0) / (of.value ?? 1)) * 100);
  return sure(germination(found, { up, of }));
};

/** "18/20" with nothing beside it: a test, unless both numbers could be a day and a month. */
const written = (found: Found): Reading | null => {
  const [up, of] = [found.count("up"), found.count("of")];
  if (up?.value === null || up === null || of === null || of.value === null || !isPart(up, of)) return null;
  const fact = germination(found, { up, of, where: "test" });
  // a half or three quarters of a thing, and days of a month, are written alike; so are "5/94" and a month of a year
  if (of.value < 10 || isMonthAndShortYear(found.line, found.from)) return null;
  return of.value <= 12 || (up.value <= 12 && of.value < 100) || (of.value <= 31 && up.value <= 12)
    ? doubtful(fact)
    : likely(fact);
};

const percent = (found: Found): Reading | null => {
  const count = found.count();
  if (count === null || (count.high ?? 0) > 100) return null;
  return sure(germination(found, { percent: count }));
};

const TEST_BEFORE =
  /^(?:[\s\d'’~?.,:;()/×–—-]|x|ca?\b|about|the|old|new|own|seeds?|jar|on|damp|wet|paper|towel|lot|test(?:ed)?|germ(?:ination)?|jan\w*|feb\w*|mar\w*|apr\w*|may|jun\w*|jul\w*|aug\w*|sep\w*|oct\w*|nov\w*|dec\w*|spring|summer|autumn|fall|winter|of|in|from)*$/i;

/** "2023: 90 %" is a test; behind anything else ("some yellow kernels, about 2 %") nobody knows what it is of. */
const aPercentAlone = (found: Found): Reading | null => {
  const first = found.line.tokens[found.from];
  return first !== undefined && TEST_BEFORE.test(found.line.text.slice(0, first.from)) ? percent(found) : null;
};

const bad = (found: Found): Reading => sure(germination(found, { how: "badly" }));
const well = (found: Found): Reading => sure(germination(found, { how: "well" }));
const nothing = (found: Found): Reading => sure(germination(found, { how: "none" }));

const share = (found: Found): Reading | null => {
  const part = found.share();
  if (part === null) return null;
  return shareOf(found, part * 100);
};

/** A share in words is a percentage that nobody counted. */
function shareOf(found: Found, value: number): Reading {
  const said: Count = { words: found.words, value, low: value, high: value, approximate: true };
  return sure(germination(found, { percent: said }));
}

/** How the seed came up: "18 of 20 came up", "18/20", "90 %", "half came up", "came up badly", "tested 50, 41 up after 8 days". */
export const germinationRule = rule("germination", [
  ["(only|just)? {count:up} (of|out of|in|from|/) (the)? {count:of} (<seeds>|sown)? <up> <days-later>?", ofMany],
  [
    "(tested|test|germination|germination test|germ test|on paper|on a towel|on wet paper|tried) (:|,|-|was|at|gave)? (only|just)? {count:up} (of|out of|in|from|/) {count:of} <up>? <days-later>?",
    ofMany,
  ],
  [
    "(tested|put|tried|set) {count:of} (<seeds>)? <wetted>? (,|:|;|and|-)? (only|just)? {count:up} <up> <days-later>?",
    ofMany,
  ],
  [
    "(tried|tested|test of|testing) {lot} (:|,|-|gave|and)? (only|just)? {count:up} (of|out of|in|/) {count:of} <up>? <days-later>?",
    ofMany,
  ],
  [
    "(tried|tested|test of|testing) {lot} (:|,|-|gave|at|and)? (only|just)? {number:count} (%|percent|per cent|pct)",
    percent,
  ],
  ["(came up|up|sprouted|germinated) (:)? {count:up} (of|out of|/) {count:of}", ofMany],
  [
    "{count:of} <seeds>? (tested|on test|put to test) (,|:|;|and|-)? (only|just)? {count:up} <up> <days-later>?",
    ofMany,
  ],
  // the day of the test before what it gave: "germ test 3/15: 22 of 25"
  [
    "(tested|test|germination test|germ test) (on|of)? {number:one} / {number:other} (:|,|-) {count:up} (of|out of|from|/) {count:of} <up>?",
    ofMany,
  ],
  ["no germination (at all)? $", nothing],
  ["(of|out of|from) (the)? {count:of} (<seeds>)? (sown|sowed|tested)? (,)? (only|just)? {count:up} <up>", ofMany],
  ["^ {count:up} / {count:of} <seeds>? <wetted>? $", written],
  ["^ {count:up} / {count:of} <wetted>", written],
  ["(only|just)? {number:count} (%|percent|per cent|pct) (germination|germ|up|came up|germinated|sprouted)", percent],
  ["^ (only|just)? {number:count} (%|percent|per cent|pct) (good)? $", aPercentAlone],
  [
    "(germination|germ|germinated|tested|test|tested at|came up|viability) (:|was|at|about|gave|still|now|down to|fell to|dropped to|only|just)? {number:count} (%|percent|per cent|pct)",
    percent,
  ],
  ["(it|they|seed|the seed)? (came up|came|germinated|sprouted|emerged|started) <badly>", bad],
  ["(it|they|seed|the seed)? (came up|germinated|sprouted|emerged|started) <well>", well],
  ["(only)? (a)? <poor> (germination|emergence|come up|coming up|take)", bad],
  ["(a)? <good> (germination|emergence)", well],
  ["(germination|emergence) (was)? (very)? (poor|bad|patchy|low|slow|thin|badly)", bad],
  ["(germination|emergence) (was)? (very)? (good|fine|excellent|high)", well],
  ["(hardly any|hardly anything|very few|few|not many|only a few) (of them)? (came up|germinated|sprouted)", bad],
  [
    "(nearly all|almost all|all|most|every one) (of it|of them|the seed|the seeds)? (came up|germinated|sprouted)",
    well,
  ],
  ["(none|nothing|not one|not a single one|no seed) (of it|of them)? (came up|germinated|sprouted) (at all)?", nothing],
  [
    "(about|only|barely|just|nearly|over)? {share} (of it|of them|of the seed|of the seeds)? (came up|germinated|sprouted|up)",
    share,
  ],
]);

function isPart(up: Count, of: Count): boolean {
  const [most, whole] = [up.value ?? up.high, of.value ?? of.high];
  return (
    most !== null && whole !== null && whole > 0 && most <= whole && Number.isInteger(most) && Number.isInteger(whole)
  );
}
