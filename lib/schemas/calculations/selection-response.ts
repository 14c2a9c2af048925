import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { selectionResponse } from "@/lib/science/selection/selection-response";

const shape = z.strictObject({
  candidates: z.int(),
  kept: z.int(),
  heritability: z.number(),
  phenotypicSd: z.number(),
  control: z.enum(["seed-parents", "both-parents"]),
  selfingRate: z.number().optional(),
});

export const selectionResponseCalculation = calculation(
  {
    name: "selection-response",
    title: "What a year of choosing may bring",
    answers: "How far the mean of a trait may move in the next generation when so many of so many plants are kept.",
    whenToDoubt:
      "Nearly always: the heritability is a guess until it has been seen here, and luck moves the mean of one year as much as choosing does. Hard choosing narrows the variety: look at the effective size too.",
    formula: ["R = i·h²·σ·c", "c = (1 + s)/2 where only seed parents were chosen, 1 for both parents"],
    symbols: [
      { symbol: "i", meaning: "how far above the mean the kept stand, in standard deviations" },
      { symbol: "h²", meaning: "share of the differences that is passed on" },
      { symbol: "σ", meaning: "standard deviation of single plants" },
      { symbol: "s", meaning: "selfing rate" },
    ],
    source: [
      "Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 11",
      "Harter 1961, Biometrika 48:151-165 (few plants)",
    ],
    input: [
      { key: "candidates", shape: "whole number, 1 or more", meaning: "plants to choose from" },
      { key: "kept", shape: "whole number, 1 to candidates", meaning: "plants kept" },
      { key: "heritability", shape: "0 to 1", meaning: "h²" },
      { key: "phenotypicSd", shape: "0 or more, in the trait's unit", meaning: "σ" },
      {
        key: "control",
        shape: '"seed-parents" or "both-parents"',
        meaning: "whether the pollen, too, came from chosen plants alone",
      },
      { key: "selfingRate", shape: "0 to 1", meaning: "s", usual: "0" },
    ],
    output: [
      { key: "proportion", shape: "0 to 1", meaning: "kept of all" },
      { key: "intensityInfinite", shape: "standard deviations", meaning: "i of an endless field" },
      { key: "intensity", shape: "standard deviations", meaning: "i of this many plants" },
      { key: "response", shape: "in the trait's unit", meaning: "R" },
      assumedKey,
    ],
  },
  shape,
  { candidates: 200, kept: 20, heritability: 0.3, phenotypicSd: 12, control: "seed-parents", selfingRate: 0 },
  selectionResponse,
);
