import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { viability } from "@/lib/science/viability/viability";

const shape = z.strictObject({
  constants: z.strictObject({ KE: z.number(), CW: z.number(), CH: z.number(), CQ: z.number() }),
  moisturePercent: z.number(),
  temperatureC: z.number(),
  initialViability: z.number().optional(),
  Ki: z.number().optional(),
  days: z.number().optional(),
  threshold: z.number().optional(),
});

export const viabilityCalculation = calculation(
  {
    name: "viability",
    title: "How long seed lives in that place",
    answers:
      "How quickly sealed seed of a kind loses life at a constant moisture and temperature: to rank one shelf against another.",
    whenToDoubt:
      "As a date, always: one standard error of its constants is a factor of two or three in years, cold stores lasted shorter and open shelves longer than it says. Only a dozen crops have constants that were checked; a lot’s own tests say more.",
    formula: [
      "log₁₀ σ = KE − CW·log₁₀ m − CH·t − CQ·t²",
      "v = Φ(Ki − days/σ),  Ki = Φ⁻¹(initial viability)",
      "days to c = (Ki − Φ⁻¹(c))·σ",
    ],
    symbols: [
      { symbol: "σ", meaning: "days in which viability falls by one normal deviate" },
      { symbol: "m, t", meaning: "moisture, percent wet basis; degrees Celsius" },
      { symbol: "KE, CW, CH, CQ", meaning: "constants of the species" },
      { symbol: "Φ", meaning: "the normal curve, summed from the left" },
    ],
    source: [
      "Ellis & Roberts 1980, Ann. Bot. 45:13-30",
      "Ellis & Hong 2007, Seed Sci. Technol. 35:432-444 (constants)",
    ],
    input: [
      { key: "constants", shape: "{KE, CW, CH, CQ}", meaning: "of the species" },
      { key: "moisturePercent", shape: "above 0, below 100", meaning: "moisture, wet basis" },
      { key: "temperatureC", shape: "degrees Celsius", meaning: "temperature of the store" },
      { key: "initialViability", shape: "between 0 and 1", meaning: "share alive at the start; or Ki in its place" },
      { key: "Ki", shape: "number", meaning: "the same as a normal deviate" },
      { key: "days", shape: "0 or more", meaning: "time in store", usual: "not asked" },
      { key: "threshold", shape: "between 0 and 1", meaning: "a share alive", usual: "not asked" },
    ],
    output: [
      { key: "Ki", shape: "number", meaning: "normal deviate of the share alive at the start" },
      { key: "sigmaDays", shape: "days", meaning: "σ" },
      { key: "viabilityAfter", shape: "0 to 1, or null", meaning: "share alive after those days" },
      {
        key: "daysToThreshold",
        shape: "days, or null",
        meaning: "until the share falls to the threshold; 0 where already below",
      },
      assumedKey,
    ],
  },
  shape,
  {
    constants: { KE: 8.498, CW: 4.836, CH: 0.0322, CQ: 0.000454 },
    moisturePercent: 12,
    temperatureC: 20,
    initialViability: 0.95,
    days: 730,
    threshold: 0.85,
  },
  viability,
);
