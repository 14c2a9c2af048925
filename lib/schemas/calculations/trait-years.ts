import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { traitYears } from "@/lib/science/trait-years/trait-years";

const shape = z.strictObject({
  years: z.array(
    z.strictObject({
      year: z.int(),
      values: z.array(z.number()),
      check: z.array(z.number()).optional(),
    }),
  ),
});

export const traitYearsCalculation = calculation(
  {
    name: "trait-years",
    title: "Did the variety change, or the weather",
    answers:
      "The mean of each year’s scored plants with its interval, and, where the same check stood beside them, how far above it they were: the difference alone tells of the variety.",
    whenToDoubt:
      "Without a check a change of the mean is the weather, the place and the scorer as much as the variety. A check that changed itself, or stood in another field, is none. With four years no trend can be surer than 2 in 24.",
    formula: [
      "mean ± t(0.975; n − 1)·s/√n",
      "D = V − K;  standard error √(s_v²/n_v + s_k²/n_k)",
      "S = Σ sign(D_j − D_i);  slope = median of (D_j − D_i)/(year_j − year_i)",
    ],
    symbols: [
      { symbol: "V, K", meaning: "means of the variety and of the check in one year" },
      { symbol: "S", meaning: "pairs of years that rise less pairs that fall" },
    ],
    source: [
      "Student 1908, Biometrika 6:1-25",
      "Welch 1938, Biometrika 29:350-362 (difference)",
      "Mann 1945, Econometrica 13:245-259; Sen 1968, JASA 63:1379-1389 (trend)",
    ],
    input: [
      { key: "years[].year", shape: "whole number, each once", meaning: "the year" },
      { key: "years[].values", shape: "numbers", meaning: "of the variety’s plants" },
      { key: "years[].check", shape: "numbers", meaning: "of the check’s plants beside them", usual: "no check" },
    ],
    output: [
      { key: "years[]", shape: "{year, plants, mean, sd, interval, quarters, toCheck}", meaning: "in input order" },
      { key: "years[].toCheck", shape: "{difference, standardError}, or null", meaning: "variety less check" },
      { key: "trend", shape: "{s, pValue, slope}, or null", meaning: "of the differences; null below four years" },
      assumedKey,
    ],
  },
  shape,
  {
    years: [
      { year: 2001, values: [61, 63, 62], check: [60, 59, 61] },
      { year: 2008, values: [70, 72, 71], check: [70, 69, 71] },
    ],
  },
  traitYears,
);
