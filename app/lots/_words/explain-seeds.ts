import { dateInWords } from "@/lib/display/dates";
import type { Explanation, ExplanationInput } from "@/lib/display/explanation";
import { kOfN, percentSpan, plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { kindInWords } from "./ledger-words";
import { seedsInWords } from "./seeds-in-words";

const clopperPearson = "Clopper and Pearson 1934, Biometrika 26:404, for the exact interval";

/** How what is left in the jar comes about. */
export function onHandExplanation({ lot, balance, figures }: LotRead, units: UnitSettings): Explanation {
  const sums = new Map<string, number>();
  for (const { entry, change } of balance.steps)
    if (change !== null) sums.set(entry.kind, (sums.get(entry.kind) ?? 0) + change);
  const left = balance.withoutWeight.length;
  return {
    title: `What is left of lot ${lot.number}`,
    answer: weight(figures?.gramsOnHand ?? null, units),
    formula: "the sum of the entries: what came in less what left; a weighing sets it to what the scales say",
    inputs: [...sums].map(([kind, grams]) => ({
      name: kind === "weighed" ? "set right by weighing" : kindInWords(kind),
      value: signed(grams, units),
      href: "#ledger",
    })),
    assumed: balance.steps.some(({ entry }) => entry.unit === "seeds")
      ? ["Seeds that were counted are turned into grams by the lot's own seed weight."]
      : [],
    unsure:
      left > 0
        ? `${counted(left, "entry")} ${left === 1 ? "has" : "have"} no weight here and ${left === 1 ? "is" : "are"} not in the sum. Weigh the jar to know.`
        : "It is as right as the last weighing. Scales and spilt seed drift apart from the book by a gram or two.",
    sources: ["the running balance of this lot's ledger"],
    plain: "sum of the ledger",
  };
}

/** How the number of living seeds comes about. */
export function liveExplanation({ lot, live, figures }: LotRead, units: UnitSettings): Explanation {
  const test = figures?.lastTest ?? null;
  const own = lot.thousandSeedGrams !== null;
  return {
    title: `Living seeds in lot ${lot.number}`,
    answer: seedsInWords(live),
    formula: own
      ? "grams × 1000 / weight of a thousand seeds × germination"
      : "grams × seeds in a gram (least and most of the crop) × germination (low and high end)",
    inputs: [
      { name: "on hand", value: weight(figures?.gramsOnHand ?? null, units), href: "#ledger" },
      seedWeightInput(lot),
      ...(test
        ? [
            {
              name: `germination, ${dateInWords(test.date)}`,
              value: `${kOfN(test.normal, test.sown)}, ${percentSpan(test.low, test.high)}`,
              href: `/tests/${test.testId}`,
            },
          ]
        : []),
    ],
    assumed: own
      ? []
      : ["Nobody has counted and weighed seeds of this lot: the crop's usual seeds in a gram are taken."],
    unsure: unsureOfLive(own, test),
    sources: [clopperPearson, ...(own ? [] : ["the crop list, seeds in a gram"])],
    method: "germination-test",
  };
}

/** The lot's own seed weight, or the crop's usual range. */
export function seedWeightInput(lot: LotRead["lot"]): ExplanationInput {
  const { crop } = lot;
  if (lot.thousandSeedGrams !== null) {
    return {
      name: "a thousand seeds weigh",
      value: `${plainNumber(lot.thousandSeedGrams, 2)} g`,
      href: "#seed-weight",
    };
  }
  const range =
    crop.seedsPerGramMin === null || crop.seedsPerGramMax === null
      ? "not known"
      : `${plainNumber(crop.seedsPerGramMin, 2)} to ${plainNumber(crop.seedsPerGramMax, 2)}`;
  return { name: `seeds in a gram of ${crop.commonName}`, value: range, href: `/crops/${crop.cropKey}` };
}

function unsureOfLive(own: boolean, test: { sown: number; date: string } | null): string {
  if (test === null)
    return "Never tested: how many of them live nobody knows. Twenty seeds in a damp cloth would tell.";
  const aged = `The test tells the germination of ${dateInWords(test.date)}; seed has aged since.`;
  return own ? `${aged} A test of more seeds narrows the span.` : `${aged} Count out and weigh 100 seeds to narrow it.`;
}

function signed(grams: number, units: UnitSettings): string {
  return grams < 0 ? weight(grams, units) : `+${weight(grams, units)}`;
}
