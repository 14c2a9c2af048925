import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { offTypeTrend } from "@/lib/science/off-types/off-type-trend";

const shape = z.strictObject({
  years: z.array(z.strictObject({ year: z.int(), looked: z.int(), found: z.int() })),
});

export const offTypeTrendCalculation = calculation(
  {
    name: "off-type-trend",
    title: "Are off-types becoming more or fewer",
    answers: "Whether the share of off-types really rises or falls over the years, or only as chance moves it.",
    whenToDoubt:
      "When another person looked, at another stage, or in another field: then the years differ for other reasons. With few off-types the chance may be off two-fold. " +
      "A rise after years of roguing means a new source: foreign pollen, a mix-up, volunteers.",
    formula: ["z = Σ x (k − n·f) / √( f (1 − f) Σ n (x − x̄)² )"],
    symbols: [
      { symbol: "x", meaning: "year" },
      { symbol: "n, k", meaning: "plants looked at, off-types found" },
      { symbol: "f, x̄", meaning: "share over all years; mean year, each plant counting once" },
    ],
    source: ["Cochran 1954, Biometrics 10:417-451", "Armitage 1955, Biometrics 11:375-386"],
    input: [
      { key: "years[].year", shape: "whole number", meaning: "the year; two or more" },
      { key: "years[].looked", shape: "whole number, 1 or more", meaning: "plants looked at" },
      { key: "years[].found", shape: "whole number, 0 to looked", meaning: "off-types among them" },
    ],
    output: [
      { key: "share", shape: "0 to 1", meaning: "over all years" },
      { key: "z", shape: "number, or null", meaning: "above 0: more from year to year; null where nothing varies" },
      { key: "pValue", shape: "0 to 1, or null", meaning: "how often chance alone shows such a trend" },
      assumedKey,
    ],
  },
  shape,
  {
    years: [
      { year: 2019, looked: 180, found: 9 },
      { year: 2021, looked: 220, found: 6 },
      { year: 2025, looked: 210, found: 2 },
    ],
  },
  offTypeTrend,
);
