import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { thousandSeedWeight } from "@/lib/science/seed-weight/thousand-seed-weight";

const shape = z.strictObject({ counts: z.array(z.strictObject({ seeds: z.int(), grams: z.number() })) });

export const thousandSeedWeightCalculation = calculation(
  {
    name: "thousand-seed-weight",
    title: "Thousand-seed weight",
    answers: "What a thousand seeds of this lot weigh, how many go to a gram, and how far the weighings differ.",
    whenToDoubt:
      "When the seed was not cleaned, or the balance shows too few digits for so few seeds. A spread above 4 % (6 % for chaffy seed) asks for more samples. " +
      "Varieties of one crop differ two-fold: never take the weight from a book.",
    formula: ["thousandSeedGrams = 1000 Σ grams / Σ seeds", "cvPercent = 100 s/m"],
    symbols: [{ symbol: "m, s", meaning: "mean and standard deviation (n − 1) of the samples' weights a seed" }],
    source: ["Eight replicates of 100 seeds, as in the AOSA weight tutorial of 2001"],
    input: [
      { key: "counts[].seeds", shape: "whole number, 1 or more", meaning: "seeds counted" },
      { key: "counts[].grams", shape: "above 0", meaning: "their weight" },
    ],
    output: [
      { key: "thousandSeedGrams", shape: "grams", meaning: "weight of 1000 seeds" },
      { key: "cvPercent", shape: "percent, or null", meaning: "spread of the samples; null for one" },
      { key: "seedsPerGram", shape: "number", meaning: "seeds in a gram" },
      assumedKey,
    ],
  },
  shape,
  {
    counts: [
      { seeds: 100, grams: 0.2224 },
      { seeds: 100, grams: 0.2134 },
    ],
  },
  thousandSeedWeight,
);
