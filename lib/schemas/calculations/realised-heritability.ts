import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { realisedHeritability } from "@/lib/science/selection/realised-heritability";

const shape = z.strictObject({
  cycles: z.array(z.strictObject({ differential: z.number().optional(), mean: z.number() })),
  drift: z
    .strictObject({
      additiveVariance: z.number(),
      effectiveSize: z.number(),
      phenotypicVariance: z.number(),
      measured: z.array(z.number()),
    })
    .optional(),
});

export const realisedHeritabilityCalculation = calculation(
  {
    name: "realised-heritability",
    title: "What came of the choosing",
    answers:
      "What share of all that was chosen for really stayed in the variety, over three years of choosing or more.",
    whenToDoubt:
      "When the years were not grown side by side or against the same check: then the weather is in it. The plain standard error is too small, often ten times; read the one with drift.",
    formula: [
      "S_t = Σ differentials before t;  R_t = mean_t − mean_0",
      "h² = Σ S R / Σ S²",
      "with drift: h² = S'V⁻¹R / S'V⁻¹S,  standard error 1/√(S'V⁻¹S)",
      "V_tu = min(t, u)·V_A/Ne + V_P/M₀ + [t = u]·V_P/M_t",
    ],
    symbols: [
      { symbol: "S, R", meaning: "cumulative differential (times the control factor) and response" },
      { symbol: "V_A, V_P", meaning: "additive and phenotypic variance" },
      { symbol: "M_t", meaning: "plants measured in cycle t" },
    ],
    source: ["Hill 1972, Biometrics 28:747-765", "Falconer & Mackay 1996, ch. 11"],
    input: [
      {
        key: "cycles[].differential",
        shape: "number; the last may be left out",
        meaning: "what was chosen, times the control factor",
      },
      { key: "cycles[].mean", shape: "number", meaning: "mean of the cycle; the first is the base, three or more" },
      {
        key: "drift",
        shape: "{additiveVariance, effectiveSize, phenotypicVariance, measured}",
        meaning: "to count drift in",
        usual: "left out",
      },
    ],
    output: [
      { key: "heritability", shape: "number", meaning: "h²" },
      { key: "standardError", shape: "number", meaning: "too small where drift counts" },
      { key: "cumulative", shape: "[{differential, response}]", meaning: "the points, one a cycle after the base" },
      { key: "withDrift", shape: "{heritability, standardError} or null", meaning: "with drift and the base's error" },
      assumedKey,
    ],
  },
  shape,
  {
    cycles: [
      { differential: 0.3, mean: 1.2 },
      { differential: 0.28, mean: 1.25 },
      { differential: 0.32, mean: 1.33 },
      { mean: 1.36 },
    ],
    drift: { additiveVariance: 0.04, effectiveSize: 30, phenotypicVariance: 0.2, measured: [200, 200, 200, 200] },
  },
  realisedHeritability,
);
