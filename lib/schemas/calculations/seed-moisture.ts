import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { seedMoisture } from "@/lib/science/seed-moisture/seed-moisture";

const shape = z.strictObject({
  relativeHumidityPercent: z.number(),
  temperatureC: z.number(),
  oilPercent: z.number(),
});

export const seedMoistureCalculation = calculation(
  {
    name: "seed-moisture",
    title: "How moist seed is, from the air it rests in",
    answers:
      "The moisture of seed that has rested a day or two in a closed jar, from the humidity card or gauge in that jar. Oily seed holds less water in the same air.",
    whenToDoubt:
      "When the seed has not come to rest with its air, or the gauge is a cheap one; drying seed stays one or two points above this. Ten points of oil more or less move it by about one.",
    formula: ["Me = (1 − Do)/(1.1 + T/90) · √(−440 ln(1 − RH))", "m = 100 Me/(100 + Me)"],
    symbols: [
      { symbol: "Me", meaning: "moisture, percent of the dry weight" },
      { symbol: "Do", meaning: "oil, share of the dry weight" },
      { symbol: "RH, T", meaning: "relative humidity 0..1; degrees Celsius" },
      { symbol: "m", meaning: "moisture, percent of the wet weight" },
    ],
    source: ["Cromarty, Ellis & Roberts 1982, The Design of Seed Storage Facilities for Genetic Conservation"],
    input: [
      { key: "relativeHumidityPercent", shape: "0 to below 100", meaning: "humidity of the air in the jar" },
      { key: "temperatureC", shape: "degrees Celsius", meaning: "temperature of the jar" },
      {
        key: "oilPercent",
        shape: "0 to below 100",
        meaning: "oil of the dry seed: maize about 5, beans about 2, squash about 40",
      },
    ],
    output: [{ key: "moisturePercent", shape: "percent", meaning: "moisture, wet basis" }, assumedKey],
  },
  shape,
  { relativeHumidityPercent: 35, temperatureC: 20, oilPercent: 5 },
  seedMoisture,
);
