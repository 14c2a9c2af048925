import type { Found } from "../pattern";
import type { Counted } from "../reading";
import { doubtful, likely, type Reading, rule, sure, withCount } from "./rule";

const plants =
  (read: typeof sure) =>
  (found: Found): Reading | null =>
    withCount(found, (count) => {
      // seed has at least one parent; "kept a few" names no number, but plants were kept
      if (count.high === 0 || isYear(count.words)) return null;
      return read({ kind: "seed-parents", value: { count, all: false, counted: "plants", of: found.count("of") } });
    });

/** "seed from 2003": that is a year, nobody keeps seed of so many plants by chance. */
function isYear(words: string): boolean {
  return /^(?:19|20)\d{2}$/.test(words);
}

/** Ears, pods and fruits are not plants: one plant may carry several. */
const parts =
  (counted: Counted) =>
  (found: Found): Reading | null =>
    withCount(found, (count) => doubtful({ kind: "seed-parents", value: { count, all: false, counted, of: null } }));

const all = (found: Found): Reading => {
  const count = found.count();
  return sure({ kind: "seed-parents", value: { count, all: true, counted: "plants", of: null } });
};

/** Seed was kept, of how many is not said. */
const someKept = sure({ kind: "seed-parents", value: { count: null, all: false, counted: "plants", of: null } });

/** "the earliest 12 and the latest 5": 17 together. */
const together = (found: Found): Reading | null => {
  const [one, other] = [found.count(), found.count("more")];
  if (one === null || other === null) return null;
  const add = (part: "value" | "low" | "high") =>
    one[part] === null || other[part] === null ? null : (one[part] ?? 0) + (other[part] ?? 0);
  const count = {
    words: `${one.words} and ${other.words}`,
    value: add("value"),
    low: add("low"),
    high: add("high"),
    approximate: one.approximate || other.approximate,
  };
  return sure({ kind: "seed-parents", value: { count, all: false, counted: "plants", of: null } });
};

/** How many plants gave the seed: "kept from 12", "saved from the best 9", "seed off six plants", "12 mothers", "kept all". */
export const seedParentsRule = rule("seed-parents", [
  ["<keep> (from|off|of) (only|just|all)? (the)? <best>? {bare}", plants(sure)],
  ["<keep> (from|off|of) (only|just|all)? (the)? <best>? {count} <best>? (<plants>|<mothers>|of them)", plants(sure)],
  ["(<seed>|all the seed)? (from|off) (only|just)? (the)? <best>? {count} <best>? (<plants>|<mothers>)", plants(sure)],
  ["<seed> (from|off) (only|just|all)? (the)? <best>? {bare}", plants(likely)],
  ["<choose> (only|just)? (the)? <best>? {bare}", plants(likely)],
  ["<keep> (only|just)? (the)? <best>? {count} <best>? (<plants>|<mothers>|plants for seed)", plants(sure)],
  ["(only|just)? {count} (<mothers>|seed bearers) (kept)? $", plants(sure)],
  ["(only|just)? {count} <best> <plants>? (kept|saved|selected|chosen) (for seed)? $", plants(sure)],
  ["(only|just)? {count} <plants>? for seed $", plants(sure)],
  ["(only|just)? {count} <plants>? (seeded|set seed|made seed|gave seed|ripened seed|bore seed) $", plants(likely)],
  ["(only|just)? {count} <plants>? (kept|saved|selected|chosen|left) for seed", plants(sure)],
  ["<choose> {count} for seed", plants(sure)],
  ["(only|just)? {count} <plants>? (kept|saved|selected|chosen) $", plants(sure)],
  ["<keep> (from|off) (only|just)? (the)? {count} <best> $", plants(sure)],
  ["<choose> (only|just)? (the)? {count} <best> $", plants(sure)],
  ["(<keep>|<seed>) (from|off)? (the)? <best> {count} <plants>? and (the)? <best> {count:more} <plants>? $", together],
  [
    "(<keep>|<seed>) (from|off) {count} of (hers|his|theirs|mine|ours|{loose}) and {count:more} of (hers|his|theirs|mine|ours|{loose:second})",
    together,
  ],
  ["(<keep>|<seed>) (from|off|of) (the|my|our) {count} {adjectives} <plants>", plants(sure)],
  ["(<mothers>) (:|=)? {bare}", (found) => (found.count()?.value == null ? null : plants(sure)(found))],
  ["<keep> (the)? <best>? {count} <plants> (of|out of|from) (the)? {count:of} <plants>?", plants(sure)],
  ["<seed> (from|off) {count} <plants>? (of|out of) (the)? {count:of} <plants>?", plants(sure)],
  [
    "^ (kept|saved|took|gathered|collected|got) (some|the|some of the|a little)? seed (again|as usual|anyway|all the same|too|as well|for next year|from them|off them|of it|from those|off those)? $",
    () => someKept,
  ],
  ["^ (saved|kept some|saved some|saved again|seed saved|seed kept) $", () => someKept],
  ["<keep> (from|off) the rest $", () => someKept],
  ["<keep> (from)? (all|every one|every plant|all of them|all the plants) (but|except|save) {count}", () => someKept],
  [
    "<keep> (from)? {count} (of|out of|from|/) (the|my|about)? {count:of} <plants>?",
    (found) => (isShare(found) ? null : plants(sure)(found)),
  ],
  ["(from|seed from) {count} (of|out of) (the)? {count:of} <plants>", plants(sure)],
  [
    "{count} (of|out of|/) (the)? {count:of} <plants>? (kept|saved|selected) (for seed)?",
    (found) => (isShare(found) ? null : plants(sure)(found)),
  ],
  ["(<seed>)? (from|off) one single <plants>?", () => oneOnly],
  [
    "<keep> (from)? (all|every one|every plant|each plant|all of them|them all|all the plants|all plants|the whole row|the whole plot|everything) (for seed)? $",
    all,
  ],
  ["<keep> (from|off)? all {count} <plants>?", all],
  ["all (of them)? (kept|saved) (for seed)? $", all],
  ["(<keep>|<seed>)? (from|off) (only|just)? (the)? <best>? {count} <best>? <ears>", parts("ears")],
  ["<choose> (only|just)? (the)? <best>? {count} <best>? <ears>", parts("ears")],
  ["(picked|took|harvested) (only|just)? (the)? <best> {count} <ears> (of {number:whole})?", parts("ears")],
  ["{count} <ears> (kept|saved|selected|chosen) (for seed)?", parts("ears")],
  ["(<keep>|<seed>)? (from|off) (only|just)? (the)? <best>? {count} <best>? <heads>", parts("heads")],
  ["<choose> (only|just)? (the)? <best>? {count} <best>? <heads>", parts("heads")],
  ["(<keep>|<seed>)? (from|off) (only|just)? (the)? <best>? {count} <best>? <pods>", parts("pods")],
  ["<choose> (only|just)? (the)? <best>? {count} <best>? <pods>", parts("pods")],
  ["(<keep>|<seed>)? (from|off) (only|just)? (the)? <best>? {count} <best>? <fruits>", parts("fruits")],
  ["<choose> (only|just)? (the)? <best>? {count} <best>? <fruits>", parts("fruits")],
]);

/** "kept 1/2" is half of it. */
function isShare(found: Found): boolean {
  return found.words.includes("/") && (found.count("of")?.value ?? 0) <= 4;
}

const oneOnly = sure({
  kind: "seed-parents",
  value: {
    count: { words: "one single", value: 1, low: 1, high: 1, approximate: false },
    all: false,
    counted: "plants",
    of: null,
  },
});

/** How even the shares of the seed parents are: "same from each", "20 seeds from each", "mostly from three", "kept apart". */
export const sharesRule = rule("shares", [
  [
    "(the)? (same|equal|even) (amount|number|share|shares|parts|handful|weight)? (from|of|off) (each|every one|all|every plant|each plant|each ear|every ear) (<plants>)?",
    () => equal(null),
  ],
  [
    "(the)? (same|equal) number (of seeds|of seed)? (from|of|off) (each|every) (<plants>|<ears>)?",
    () => equal("equal seeds"),
  ],
  ["(the)? (same|equal) weight (of seed)? (from|of|off) (each|every) (<plants>|<ears>)?", () => equal("equal weight")],
  [
    "(equal|even) (shares|parts|lots|seeds|seed|numbers|amounts) ((from|of|off) (each|every) (one|<plants>|<ears>)?|from every one|each)? $",
    () => equal(null),
  ],
  [
    "(took|kept|saved)? {count} (<seeds>|of seed)? (from|of|off) (each|every) (<plants>|<ears>|<heads>|<pods>|<fruits>|one|of them)?",
    (found) => equal(found.count()?.low == null ? null : "equal seeds"),
  ],
  [
    "(took|kept|saved)? {amount} (from|of|off) (each|every) (<plants>|<ears>|<heads>|<pods>|<fruits>|one|of them)?",
    (found) => equal(EQUAL_BY[found.amount()?.unit ?? ""] ?? null),
  ],
  ["(took|kept)? {count} <seeds> each $", () => equal("equal seeds")],
  ["(bulked|bulk) (the)? seed", () => likely({ kind: "shares", value: { shares: null, bulked: "all together" } })],
  [
    "(mostly|mainly|nearly all|almost all|most|most of it|most of the seed|chiefly) (seed)? (from|off) (just|only)? {count} (<plants>|<ears>|of them)?",
    () => unequal,
  ],
  [
    "(mostly|mainly|nearly all|almost all|most|most of it|chiefly) (seed)? (from|off) (one|a single one|the biggest|the best|a few)",
    () => unequal,
  ],
  [
    "(all)? (bulked|bulked up|bulked together|tipped together|all together in one jar|all in one jar|seed bulked) $",
    () => likely({ kind: "shares", value: { shares: null, bulked: "all together" } }),
  ],
  [
    "(kept|saved|stored|bagged) (each|them|the seed|every plant|each plant|them all)? (apart|separate|separately|plant by plant|one by one|by plant)",
    () => sure({ kind: "shares", value: { shares: null, bulked: "kept apart" } }),
  ],
]);

/** "20 seeds from each", "30 g from each": anything else from each ("a handful") is equal only roughly. */
const EQUAL_BY: Record<string, "equal seeds" | "equal weight"> = { seeds: "equal seeds", g: "equal weight" };

const unequal = sure({ kind: "shares", value: { shares: "unequal", bulked: null } });

function equal(bulked: "equal seeds" | "equal weight" | null): Reading {
  return bulked === null
    ? likely({ kind: "shares", value: { shares: "equal", bulked } })
    : sure({ kind: "shares", value: { shares: "equal", bulked } });
}
