import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { alleleCapture } from "@/lib/science/population/allele-capture";

const shape = z.strictObject({
  frequency: z.number(),
  probability: z.number(),
  loci: z.int().optional(),
  inbreeding: z.number().optional(),
});

export const alleleCaptureCalculation = calculation(
  {
    name: "allele-capture",
    title: "Plants to catch what is rare",
    answers: "How many plants to take seed from, so that the rare forms of the variety's genes are surely among them.",
    whenToDoubt:
      "When the plants were kin, or chosen by their looks. Having it once is not keeping it: a rare form is easily lost again in the next small grow-out.",
    formula: ["the smallest n with [1 − (1 − p)^(2n/(1 + F))]^loci ≥ P"],
    symbols: [
      { symbol: "p", meaning: "share of the genes that are the rare form" },
      { symbol: "P", meaning: "how sure to have it" },
      { symbol: "F", meaning: "inbreeding: 0 for an outbreeder, near 1 for a selfer" },
    ],
    source: [
      "Marshall & Brown 1975, in Crop Genetic Resources for Today and Tomorrow",
      "Brown & Marshall 1995 (30 plants of an outbreeder, 59 of a selfer)",
    ],
    input: [
      { key: "frequency", shape: "above 0, at most 1", meaning: "p" },
      { key: "probability", shape: "between 0 and 1", meaning: "P" },
      { key: "loci", shape: "whole number, 1 or more", meaning: "genes that must all be caught", usual: "1" },
      { key: "inbreeding", shape: "0 to 1", meaning: "F", usual: "0" },
    ],
    output: [{ key: "plants", shape: "plants", meaning: "to take" }, assumedKey],
  },
  shape,
  { frequency: 0.05, probability: 0.95 },
  alleleCapture,
);
