import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { populationPlan } from "@/lib/science/population/population-plan";

const shape = z.strictObject({
  retain: z.number(),
  years: z.number(),
  yearsBetweenGrowOuts: z.number(),
  seedParentShare: z.number().optional(),
  sexes: z.enum(["hermaphrodite", "separate"]).optional(),
  selfingRate: z.number().optional(),
  inbreeding: z.number().optional(),
  seedCv: z.number().optional(),
});

export const populationPlanCalculation = calculation(
  {
    name: "population-plan",
    title: "How many plants keep a variety",
    answers:
      "How many plants must flower in each grow-out so that, after so many years, so much of the variety's diversity is still there.",
    whenToDoubt:
      "When every plant will not give seed alike: tell how unlike (seedCv), or the plan is too small. It knows no frost and no deer: plan for losses. " +
      "Growing out less often, from seed kept well, helps as much as more plants.",
    formula: [
      "t = ⌈years / yearsBetweenGrowOuts⌉",
      "needed Ne = 1 / (2 (1 − retain^(1/t)))",
      "the fewest flowering plants whose effective size reaches it",
    ],
    symbols: [
      { symbol: "t", meaning: "grow-outs in those years" },
      { symbol: "Ne", meaning: "effective size of each, as in effective-size" },
    ],
    source: ["Wright 1931, Genetics 16:97-159 (diversity kept (1 − 1/(2Ne))ᵗ), turned round"],
    input: [
      { key: "retain", shape: "0 to below 1", meaning: "share of the diversity to keep" },
      { key: "years", shape: "above 0", meaning: "for how long" },
      { key: "yearsBetweenGrowOuts", shape: "above 0", meaning: "years from one grow-out to the next" },
      {
        key: "seedParentShare",
        shape: "above 0, at most 1",
        meaning: "share of the flowering plants (of the females) that give seed",
        usual: "1",
      },
      {
        key: "sexes",
        shape: '"hermaphrodite" or "separate"',
        meaning: "both on a plant, or male and female plants",
        usual: "hermaphrodite",
      },
      { key: "selfingRate", shape: "0 to 1", meaning: "share of seed from selfing beyond chance", usual: "0" },
      { key: "inbreeding", shape: "0 to 1", meaning: "F of the plants", usual: "0" },
      {
        key: "seedCv",
        shape: "0 or more",
        meaning: "coefficient of variation of the seed the plants give",
        usual: "0",
      },
    ],
    output: [
      { key: "generations", shape: "grow-outs", meaning: "t" },
      { key: "effectiveSizeNeeded", shape: "plants", meaning: "Ne of each grow-out" },
      { key: "floweringPlants", shape: "plants", meaning: "to bring to flower; males and females half each" },
      { key: "seedParents", shape: "plants", meaning: "to keep seed from" },
      assumedKey,
    ],
  },
  shape,
  { retain: 0.9, years: 60, yearsBetweenGrowOuts: 3, seedParentShare: 0.5 },
  populationPlan,
);
