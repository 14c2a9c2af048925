import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { plotParentsKeys, plotParentsShape } from "@/lib/schemas/calculations/plot-parents";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { effectiveSize } from "@/lib/science/effective-size/effective-size";

const shape = z.strictObject({
  ...plotParentsShape,
  plantsPerSeedParent: z.int().optional(),
  inbreeding: z.number().optional(),
});

export const effectiveSizeCalculation = calculation(
  {
    name: "effective-size",
    title: "Effective size of a grow-out",
    answers:
      "How many plants, each giving and fathering alike, would keep as much of the variety's diversity as the plants of this grow-out did. " +
      "Forty plants of which ten gave seed count as about twenty-three.",
    whenToDoubt:
      "When the plants that shed pollen were not counted, or the shares of seed are a guess: unequal shares only lower the figure, " +
      "so with equal shares assumed it is a ceiling. It leaves out that chosen plants are often kin.",
    formula: [
      "Ne = 1 / (κ (1 + F))",
      "κ = ¼ [(1 + s)² P_MM + 2 (1 − s²) P_MF + (1 − s)² P_FF]",
      "P_MM = Σ q², P_FF = Σ p², P_MF = Σ q·p",
      "diversity lost = 1 / (2 Ne)",
    ],
    symbols: [
      { symbol: "Ne", meaning: "effective size, plants" },
      { symbol: "κ", meaning: "chance that two genes of two seeds come from one plant" },
      { symbol: "q, p", meaning: "each plant's share of the kept seed, and of the pollen that set it" },
      {
        symbol: "P_MM, P_FF, P_MF",
        meaning: "chance of the same seed parent, the same pollen parent, the one as the other",
      },
      { symbol: "s", meaning: "share of seed from selfing beyond chance" },
      { symbol: "F", meaning: "inbreeding of the parents" },
    ],
    source: [
      "Lindgren & Mullin 1998, Can. J. For. Res. 28:276-283; Crow & Denniston 1988, Evolution 42:482-495 (sum of squared contributions)",
      "Wright 1931, Genetics 16:97-159 (separate sexes)",
      "Pollak 1987, Genetics 117:353-360 (partial selfing)",
    ],
    input: [
      ...plotParentsKeys,
      {
        key: "plantsPerSeedParent",
        shape: "whole number, 1 or more",
        meaning: "families kept apart and exactly so many plants raised from each; needs equal seedShares",
      },
      { key: "inbreeding", shape: "0 to 1", meaning: "inbreeding coefficient F of the parents", usual: "0" },
    ],
    output: [
      {
        key: "effectiveSize",
        shape: "plants, or null",
        meaning: "Ne; null where no two genes can come from one plant",
      },
      { key: "sameParentProbability", shape: "0 to 1", meaning: "κ" },
      { key: "seedParentTerm", shape: "0 to 1", meaning: "P_MM" },
      { key: "pollenParentTerm", shape: "0 to 1", meaning: "P_FF" },
      { key: "crossTerm", shape: "0 to 1", meaning: "P_MF" },
      { key: "diversityLost", shape: "0 to 1", meaning: "share of the gene diversity lost in this grow-out" },
      assumedKey,
    ],
  },
  shape,
  { pollenParents: 40, seedParents: 10 },
  effectiveSize,
);
