import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { offTypeFrequency } from "@/lib/science/off-types/off-type-frequency";

const shape = z.strictObject({
  frequency: z.number(),
  generations: z.int(),
  kind: z.enum(["recessive", "dominant"]),
  rogued: z.enum(["before-pollen", "after-pollen"]),
});

export const offTypeFrequencyCalculation = calculation(
  {
    name: "off-type-frequency",
    title: "How fast roguing cleans a variety",
    answers:
      "What share of off-types is to be expected after each grow-out, when every one that shows is pulled before it sheds pollen, or only after.",
    whenToDoubt:
      "When off-types are overlooked, or foreign pollen still comes in. A recessive hides in plants that look true: roguing holds it down and never quite removes it; only progeny rows find the carriers.",
    formula: [
      "recessive: q_f = (Aa/2)/(1 − aa);  q_m = q_f before pollen, aa + Aa/2 after",
      "aa' = q_f q_m,  Aa' = q_f (1 − q_m) + q_m (1 − q_f)",
      "dominant: before pollen none is left; after pollen carriers = q_m, q' = q_m/2",
    ],
    symbols: [
      { symbol: "q", meaning: "share of the genes that are the unwanted form" },
      { symbol: "aa, Aa", meaning: "share of the plants that show a recessive, that hide it" },
      { symbol: "q_f, q_m", meaning: "q among the genes of the seed parents, of the pollen" },
    ],
    source: [
      "Crow & Kimura 1970, An Introduction to Population Genetics Theory (selection against a recessive)",
      "Roguing on the seed side alone: derived here, checked by simulation",
    ],
    input: [
      {
        key: "frequency",
        shape: "0 to below 1",
        meaning: "q at the start; for a recessive the root of the off-type share",
      },
      { key: "generations", shape: "whole number", meaning: "grow-outs with roguing" },
      { key: "kind", shape: '"recessive" or "dominant"', meaning: "how the trait is inherited" },
      { key: "rogued", shape: '"before-pollen" or "after-pollen"', meaning: "when off-types are pulled" },
    ],
    output: [
      { key: "alleleFrequency", shape: "list, one more than generations", meaning: "q₀, q₁, ..." },
      {
        key: "offTypeShare",
        shape: "list, one more than generations",
        meaning: "share of the plants that show it, before roguing",
      },
      assumedKey,
    ],
  },
  shape,
  { frequency: 0.2, generations: 5, kind: "recessive", rogued: "before-pollen" },
  offTypeFrequency,
);
