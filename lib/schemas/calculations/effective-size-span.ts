import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { plotParentsKeys, plotParentsShape } from "@/lib/schemas/calculations/plot-parents";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { type EffectiveSizeSpanInput, effectiveSizeSpan } from "@/lib/science/effective-size/effective-size-span";
import { whatNarrows } from "@/lib/science/effective-size/what-narrows";
import { accepted, type Outcome } from "@/lib/science/outcome";

const bounds = z.strictObject({ low: z.int(), high: z.int().nullable() });

const { sexes, selfingRate, selfIncompatible, seedShares } = plotParentsShape;
const shape = z.strictObject({
  pollenParents: bounds,
  seedParents: bounds,
  sexes,
  selfingRate,
  selfIncompatible,
  seedShares: z.union([seedShares.unwrap(), z.literal("unknown"), z.strictObject({ largest: z.number() })]).optional(),
  seedParentsMayNotShed: z.boolean().optional(),
  inbreeding: z.number().optional(),
});

function withWhatNarrows(input: EffectiveSizeSpanInput): Outcome<object> {
  const span = effectiveSizeSpan(input);
  return span.ok ? accepted({ ...span.value, narrows: whatNarrows(input) }) : span;
}

const keyOf = (name: string) => plotParentsKeys.filter(({ key }) => key === name);

export const effectiveSizeSpanCalculation = calculation(
  {
    name: "effective-size-span",
    title: "Effective size where something was not counted",
    answers:
      "From the worst to the best that the records of a grow-out allow, and which missing count would narrow it most. " +
      "Ten plants gave seed, and between ten and sixty shed pollen: it counts as between ten and twenty-seven.",
    whenToDoubt:
      "When the bounds themselves are a guess. Pollen is taken as shared alike, and unequal pollen only lowers both ends. " +
      "What nothing bounds has no figure.",
    formula: [
      "Ne = 1 / (κ (1 + F)), at the greatest κ and at the least; κ as in effective-size",
      "worst: fewest seed parents, fewest pollen parents, P_MM largest; best: the most of both, P_MM least",
      "P_MM of unknown shares: from 1/seed parents to 1; of a largest share q among n: from q² + (1 − q)²/(n − 1) to r q² + (1 − r q)², r = ⌊1/q⌋",
    ],
    symbols: [
      { symbol: "Ne", meaning: "effective size, plants" },
      { symbol: "κ", meaning: "chance that two genes of two seeds come from one plant" },
      { symbol: "P_MM", meaning: "chance that two seeds have the same seed parent" },
      { symbol: "F", meaning: "inbreeding of the parents" },
    ],
    source: [
      "Derived from the sum of squared contributions: Lindgren & Mullin 1998, Can. J. For. Res. 28:276-283",
      "Wright 1931, Genetics 16:97-159 (separate sexes)",
    ],
    input: [
      {
        key: "pollenParents",
        shape: "{low, high}, whole numbers, 1 or more; high null where nothing bounds it",
        meaning: "plants that shed pollen; males where the sexes are separate",
      },
      {
        key: "seedParents",
        shape: "{low, high}, whole numbers, 1 or more; high null where nothing bounds it",
        meaning: "plants whose seed was kept; among the pollen parents, or females where the sexes are separate",
      },
      ...["sexes", "selfingRate", "selfIncompatible"].flatMap(keyOf),
      {
        key: "seedShares",
        shape: '"equal", {"cv": number}, one number a plant, {"largest": share} or "unknown"',
        meaning: "how much of the seed each seed parent gave, as far as it is known",
        usual: "unknown",
      },
      {
        key: "seedParentsMayNotShed",
        shape: "true or false",
        meaning: "plants lost their tassels, and nobody wrote whether the seed parents did",
        usual: "false",
      },
      { key: "inbreeding", shape: "0 to 1", meaning: "inbreeding coefficient F of the parents", usual: "0" },
    ],
    output: [
      { key: "low", shape: "plants", meaning: "Ne at the worst" },
      { key: "high", shape: "plants, or null", meaning: "Ne at the best; null where nothing bounds it" },
      {
        key: "narrows[]",
        shape: "list of {missing, atLeast: {count, span}, atMost: {count, span}}",
        meaning: "each missing count and the spans that it would leave at either end of what it can be, the best first",
      },
      assumedKey,
    ],
  },
  shape,
  { pollenParents: { low: 10, high: 60 }, seedParents: { low: 10, high: 10 }, seedShares: "equal" },
  withWhatNarrows,
);
