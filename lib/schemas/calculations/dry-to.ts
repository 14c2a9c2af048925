import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { dryTo } from "@/lib/science/seed-moisture/dry-to";

const shape = z.strictObject({ grams: z.number(), moisturePercent: z.number(), targetPercent: z.number() });

export const dryToCalculation = calculation(
  {
    name: "dry-to",
    title: "What dry seed will weigh",
    answers:
      "What the lot weighs when it has dried to the moisture you want, so that a balance tells you when to close the jar.",
    whenToDoubt:
      "When the moisture now is a guess. Dry in moving air, never above 35 °C; very dry beans and peas crack when sown at once. " +
      "Seed that dies when dried (avocado, citrus, cocoa and their like) must not be dried at all.",
    formula: ["targetGrams = grams · (100 − m) / (100 − target)"],
    symbols: [{ symbol: "m, target", meaning: "moisture now and wanted, percent of the wet weight" }],
    source: ["The dry matter stays the same"],
    input: [
      { key: "grams", shape: "above 0", meaning: "weight now" },
      { key: "moisturePercent", shape: "0 to below 100", meaning: "moisture now, wet basis" },
      { key: "targetPercent", shape: "0 to below moisturePercent", meaning: "moisture wanted, wet basis" },
    ],
    output: [{ key: "targetGrams", shape: "grams", meaning: "weight when dry enough" }, assumedKey],
  },
  shape,
  { grams: 200, moisturePercent: 12, targetPercent: 6 },
  dryTo,
);
