import { NOTHING_SAID } from "../line";
import type { Found } from "../pattern";
import type { Amount } from "../reading";
import { doubtful, likely, type Reading, rule, sure } from "./rule";

type Kind = "harvested" | "amount" | "on-hand";

const taken =
  (kind: Kind, read: typeof sure) =>
  (found: Found): Reading | null => {
    const amount = found.amount();
    // "mice got in the jar": that jar was there before
    if (amount === null || (kind === "harvested" && /^the\b/i.test(amount.words))) return null;
    return read({ kind, value: { amount } });
  };

/** A weight or a count of seed; a bare one ("300 g") doesn't say whether it was sown, saved or found in the jar. */
export const harvestRule = rule("harvested", [
  [
    "(<got>|have|had) (only|just|in all|altogether)? {amount} (in all|altogether|in the end|clean|cleaned|dry|of it|of them)?",
    taken("harvested", sure),
  ],
  ["(gave|gave me|gave us) (only|just)? {amount} $", taken("harvested", likely)],
  ["(a)? (harvest|yield|crop) (of|was|:)? {amount}", taken("harvested", sure)],
  ["(harvested|harvest|picked|threshed) (on|in)? (the)? {day} (,|:|-|/) {amount}", taken("harvested", sure)],
  [
    "{amount} (harvested|threshed|cleaned|saved|gathered|in the end|in all|altogether|from the lot)",
    taken("harvested", sure),
  ],
  [
    "(a)? (good|poor|fair|fine|heavy|thin|small|big|tiny|bumper|light|bad) (harvest|crop|yield) (of seed)?",
    (found) => sure({ kind: "harvested", value: { amount: wordsOnly(found.words) } }),
  ],
  [
    "(very)? (little|not much|plenty of|lots of|enough) seed $",
    (found) => likely({ kind: "harvested", value: { amount: wordsOnly(found.words) } }),
  ],
  ["^ (only|just)? {amount} $", taken("amount", doubtful)],
]);

function wordsOnly(words: string): Amount {
  return { ...NOTHING_SAID, words, unit: null, givenUnit: null, grams: null };
}

/** What is in the jar: "weighed 120 g", "120 g left", "none left", "jar empty". */
export const onHandRule = rule("on-hand", [
  ["(<weigh>|jar) (at|:|,|=|is)? (still|only|now|just)? {amount} (left)?", taken("on-hand", sure)],
  [
    "(only|just|still)? {amount} (left|left over|left in the jar|remaining|in the jar|still there|on hand)",
    taken("on-hand", sure),
  ],
  ["(none|nothing|no seed) left", empty],
  ["(none|nothing|no seed) left (but|except|bar|save) {amount}", taken("on-hand", sure)],
  ["(jar|seed|stock|lot) (is|was)? (now)? down to {amount}", taken("on-hand", sure)],
  ["(the)? (jar|tin|packet) (is|was)? (empty|finished|used up)", empty],
  ["(the)? last of it (sown|gone|used|given away)", empty],
]);

function empty(found: Found): Reading {
  const none: Amount = {
    words: found.words,
    value: 0,
    low: 0,
    high: 0,
    approximate: false,
    unit: "g",
    givenUnit: null,
    grams: { value: 0, low: 0, high: 0 },
  };
  return sure({ kind: "on-hand", value: { amount: none } });
}

/** Seed thrown away: "threw away the old jar", "binned 40 g", "fed the rest to the hens". */
export const discardedRule = rule("discarded", [
  ["(threw away|threw out|binned|burnt|burned|composted|dumped|discarded|tipped out|got rid of) {part}", thrown],
  [
    "^ (all)? (thrown out|thrown away|binned|burnt|composted|dumped) $",
    () => sure({ kind: "discarded", value: { amount: null } }),
  ],
  ["fed {part} to {name}", thrown],
  [
    "(threw away|threw out|binned|burnt|burned|composted|dumped|discarded|tipped out|got rid of) (the)? (old|whole|bad|mouldy|dead)? (jar|seed|lot|tin|packet)",
    () => sure({ kind: "discarded", value: { amount: null } }),
  ],
]);

function thrown(found: Found): Reading {
  return sure({ kind: "discarded", value: { amount: found.amount() } });
}

/** Seeds counted and weighed: "100 seeds weighed 31 g", "100 weigh 31 g". */
export const seedWeightRule = rule("seed-weight", [
  [
    "(tsw|tgw|tkw|thousand-seed weight|thousand seed weight|thousand-grain weight|thousand grain weight|thousand-kernel weight|weight of a thousand seeds|weight of 1000 seeds) (:|=|was|is|of)? {amount}",
    (found) => ofThousand(found.amount()?.grams?.value ?? null),
  ],
  [
    "(seed|seeds)? (weighed|weighs|weigh) {amount} (per|a|for|the) (1000|thousand|100|hundred) <seeds>?",
    (found) => {
      const [grams, seeds] = [found.amount()?.grams?.value ?? null, /100\b|hundred/i.test(found.words) ? 100 : 1000];
      return grams === null || grams <= 0 ? null : sure({ kind: "seed-weight", value: { seeds, grams } });
    },
  ],
  // it is told in grams everywhere
  [
    "(tsw|tgw|tkw|thousand-seed weight|thousand seed weight|thousand-grain weight) (:|=|was|is|of)? {number} $",
    (found) => {
      const reading = ofThousand(found.count("number")?.value ?? null);
      return reading === null ? null : { ...reading, certainty: "likely" };
    },
  ],
  [
    "{count} (<seeds>)? (weighed|weigh|weighs|=) {amount}",
    (found) => {
      const [seeds, grams] = [found.count()?.value ?? null, found.amount()?.grams?.value ?? null];
      if (seeds === null || grams === null || !Number.isInteger(seeds) || seeds < 1 || grams <= 0) return null;
      return sure({ kind: "seed-weight", value: { seeds, grams } });
    },
  ],
]);

function ofThousand(grams: number | null): Reading | null {
  return grams === null || grams <= 0 ? null : sure({ kind: "seed-weight", value: { seeds: 1000, grams } });
}
