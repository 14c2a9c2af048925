import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey, confidenceKey, intervalKey } from "@/lib/schemas/calculations/shared-keys";
import { foreignPollenSeen } from "@/lib/science/off-types/foreign-pollen-seen";

const shape = z.strictObject({
  sampled: z.int(),
  found: z.int(),
  carrying: z.number().optional(),
  confidence: z.number().optional(),
});

export const foreignPollenSeenCalculation = calculation(
  {
    name: "foreign-pollen-seen",
    title: "How much foreign pollen the seed shows",
    answers:
      "From seeds or seedlings looked at and those that show a mark of the neighbour: the share with a foreign father, and how large it may be in truth. It is what a grow-out's foreign pollen is written down as.",
    whenToDoubt:
      "When the mark is recessive, or the variety has it too: then it shows nothing, and none seen is no proof of none. " +
      "Seeds of one ear share their pollen, so a few ears say less than their many kernels: take them from many plants. " +
      "The margin of a plot shows far more than its middle; sample both and weigh them by the harvest.",
    formula: [
      "m = found/(sampled · g)",
      "interval = [BetaInv(α/2; x, n − x + 1), BetaInv(1 − α/2; x + 1, n − x)]/g",
      "upper bound = BetaInv(confidence; x + 1, n − x)/g;  none seen: (1 − (1 − confidence)^(1/n))/g",
    ],
    symbols: [
      { symbol: "m", meaning: "share of the seeds with a foreign father" },
      { symbol: "g", meaning: "share of the foreign pollen that carries the mark" },
      { symbol: "n, x", meaning: "sampled, found" },
      { symbol: "BetaInv(p; a, b)", meaning: "the value below which a Beta(a, b) draw stays with chance p" },
    ],
    source: ["The binomial taken directly", "Clopper & Pearson 1934, Biometrika 26:404-413"],
    input: [
      { key: "sampled", shape: "whole number, 1 or more", meaning: "seeds or seedlings looked at" },
      { key: "found", shape: "whole number, 0 to sampled", meaning: "those that show the mark" },
      {
        key: "carrying",
        shape: "above 0, at most 1",
        meaning: "share of the foreign pollen that carries the mark",
        usual: "1: a uniform neighbour",
      },
      confidenceKey,
    ],
    output: [
      {
        key: "share",
        shape: "0 to 1, or null",
        meaning: "m; null where more show the mark than such pollen could give",
      },
      intervalKey("interval", "where the true share lies (two-sided, exact)"),
      { key: "upperBound", shape: "0 to 1", meaning: "the true share is hardly above this (one-sided, exact)" },
      assumedKey,
    ],
  },
  shape,
  { sampled: 400, found: 6 },
  foreignPollenSeen,
);
