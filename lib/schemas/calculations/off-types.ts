import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey, confidenceKey, intervalKey } from "@/lib/schemas/calculations/shared-keys";
import { offTypesFound } from "@/lib/science/off-types/off-types-found";
import { plantsToSeeOne } from "@/lib/science/off-types/plants-to-see-one";
import type { Outcome } from "@/lib/science/outcome";

const confidence = z.number().optional();
const found = z.strictObject({ sampled: z.int(), found: z.int(), confidence });
const wanted = z.strictObject({ frequency: z.number(), confidence });
const shape = z.union([found, wanted]);

function offTypes(input: z.infer<typeof shape>): Outcome<object> {
  return "frequency" in input ? plantsToSeeOne(input) : offTypesFound(input);
}

export const offTypesCalculation = calculation(
  {
    name: "off-types",
    title: "What a look at the plants can say of off-types",
    answers:
      "From plants looked at and off-types found: the share, and how large it may be in truth. Or the other way: how many plants to look at so that an off-type of a given share would hardly be missed.",
    whenToDoubt:
      "When the plants were not picked at random, or stood together: off-types come in clumps. None found is no proof of none. " +
      "An off-type that shows late cannot be found early.",
    formula: [
      "share = found/sampled;  upper bound = BetaInv(confidence; found + 1, sampled − found)",
      "plants = ⌈ln(1 − confidence) / ln(1 − frequency)⌉",
    ],
    symbols: [{ symbol: "BetaInv(p; a, b)", meaning: "the value below which a Beta(a, b) draw stays with chance p" }],
    source: ["Clopper & Pearson 1934, Biometrika 26:404-413", "The chance (1 − f)ⁿ that n plants show none"],
    input: [
      { key: "sampled", shape: "whole number, 1 or more", meaning: "plants or seeds looked at" },
      { key: "found", shape: "whole number, 0 to sampled", meaning: "off-types among them" },
      {
        key: "frequency",
        shape: "above 0, at most 1; in place of the two above",
        meaning: "share that must not be missed",
      },
      confidenceKey,
    ],
    output: [
      { key: "share", shape: "0 to 1", meaning: "found/sampled" },
      { key: "upperBound", shape: "0 to 1", meaning: "the true share is hardly above this (one-sided, exact)" },
      intervalKey("interval", "where the true share lies (two-sided, exact)"),
      { key: "plants", shape: "plants", meaning: "the fewest to look at, where a frequency was given" },
      assumedKey,
    ],
  },
  shape,
  { sampled: 300, found: 0 },
  offTypes,
);
