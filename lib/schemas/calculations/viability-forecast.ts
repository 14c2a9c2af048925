import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { viabilityForecast } from "@/lib/science/seed-life/viability-forecast";

const spread = z.strictObject({ mean: z.number(), sd: z.number() });
const shape = z.strictObject({
  tests: z.array(z.strictObject({ years: z.number(), sown: z.int(), normal: z.int() })),
  prior: z.strictObject({ Ki: spread, lnSigmaYears: spread }),
  threshold: z.union([z.number(), z.strictObject({ ofInitial: z.number() })]),
  ceiling: z.number().optional(),
});

export const viabilityForecastCalculation = calculation(
  {
    name: "viability-forecast",
    title: "Until when is this lot good",
    answers:
      "In how many years the lot falls to a line that you draw, from its own germination tests joined with what is known of its kind, with the span that is left open.",
    whenToDoubt:
      "With no test, or one, it is the kind that speaks and not the lot. It takes a steady, dry, cool place; a jar that was opened often or stood warm ages faster. " +
      "A rise in the first months is dormancy wearing off. Read one digit of the years, and test again before you trust it.",
    formula: [
      "normal ~ Binomial(sown, ceiling·Φ(Ki − years/σ))",
      "Ki and ln σ: independent normal before the tests",
      "years to threshold = (Ki − Φ⁻¹(v))·σ,  v = threshold/ceiling or c·Φ(Ki)",
    ],
    symbols: [
      { symbol: "Ki", meaning: "initial viability as a normal deviate: 1.65 is 95 %" },
      { symbol: "σ", meaning: "years in which viability falls by one normal deviate" },
      { symbol: "ceiling", meaning: "share of the seeds that could ever germinate" },
      { symbol: "c", meaning: "part of the initial viability that is the line" },
    ],
    source: ["Ellis & Roberts 1980, Ann. Bot. 45:13-30 (viability equation)", "Posterior integrated over Ki and ln σ"],
    input: [
      { key: "tests[].years", shape: "0 or more", meaning: "years from one beginning: the harvest, or the first test" },
      { key: "tests[].sown, tests[].normal", shape: "whole numbers", meaning: "the test" },
      {
        key: "prior.Ki",
        shape: "{mean, sd}, sd above 0",
        meaning: "what is known of the initial viability of such seed",
      },
      {
        key: "prior.lnSigmaYears",
        shape: "{mean, sd}, sd above 0",
        meaning: "what is known of how fast such seed ages",
      },
      {
        key: "threshold",
        shape: "above 0, at most 1; or {ofInitial: the same}",
        meaning: "the line: a share of all seeds, or a part of what the lot began with",
      },
      { key: "ceiling", shape: "above 0, at most 1", meaning: "share that could ever germinate", usual: "1" },
    ],
    output: [
      { key: "Ki", shape: "{mean, sd}", meaning: "after the tests" },
      { key: "lnSigmaYears", shape: "{mean, sd}", meaning: "after the tests" },
      {
        key: "yearsToThreshold",
        shape: "{median, low, high}, years",
        meaning: "from the beginning; 5 % lie below low and above high; 0 where already below",
      },
      {
        key: "probabilityBelowNow",
        shape: "0 to 1",
        meaning: "chance of being below the line at the last test; at 0 without tests",
      },
      assumedKey,
    ],
  },
  shape,
  {
    tests: [
      { years: 0, sown: 50, normal: 48 },
      { years: 4, sown: 50, normal: 43 },
    ],
    prior: { Ki: { mean: 1.65, sd: 0.5 }, lnSigmaYears: { mean: 1.61, sd: 0.8 } },
    threshold: 0.75,
  },
  viabilityForecast,
);
