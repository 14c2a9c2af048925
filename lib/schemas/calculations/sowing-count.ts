import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { sowingCount } from "@/lib/science/sowing/sowing-count";

const shape = z.strictObject({
  test: z.strictObject({ sown: z.int(), normal: z.int() }),
  emergence: z.number().optional(),
  plantsWanted: z.int(),
  confidence: z.number().optional(),
});

export const sowingCountCalculation = calculation(
  {
    name: "sowing-count",
    title: "How many seeds to sow",
    answers:
      "How many seeds to sow so that, as sure as you wish, the plants you want will stand. Plants divided by germination falls short about every second time.",
    whenToDoubt:
      "When the test is old, or the emergence a guess: learn it from your own ground. Plants that will be rogued or not chosen come on top of the plants wanted.",
    formula: [
      "the smallest m with P(Binomial(m, e·π) ≥ N) ≥ confidence",
      "π ~ Beta(x + ½, n − x + ½)",
      "expected plants = m·e·(x + ½)/(n + 1)",
    ],
    symbols: [
      { symbol: "N", meaning: "plants wanted" },
      { symbol: "m", meaning: "seeds to sow" },
      { symbol: "x, n", meaning: "normal seedlings and seeds of the test" },
      { symbol: "e", meaning: "emergence: plants standing for each germinable seed sown" },
    ],
    source: [
      "Skellam 1948, J. R. Stat. Soc. B 10:257-261 (beta-binomial)",
      "Brown, Cai & DasGupta 2001, Stat. Sci. 16:101-133 (what a test leaves)",
    ],
    input: [
      { key: "test.sown, test.normal", shape: "whole numbers", meaning: "the lot's germination test" },
      {
        key: "emergence",
        shape: "above 0, at most 1",
        meaning: "share of germinable seeds that come up and stand",
        usual: "1",
      },
      { key: "plantsWanted", shape: "whole number, 1 or more", meaning: "N" },
      { key: "confidence", shape: "between 0 and 1", meaning: "how sure the plants should be", usual: "0.9" },
    ],
    output: [
      { key: "seeds", shape: "seeds", meaning: "to sow" },
      { key: "expectedPlants", shape: "plants", meaning: "to expect on average" },
      {
        key: "plainDivision",
        shape: "seeds, or null",
        meaning: "what plain division would say; null where nothing germinated",
      },
      { key: "probability", shape: "0 to 1", meaning: "chance of at least the plants wanted" },
      assumedKey,
    ],
  },
  shape,
  { test: { sown: 20, normal: 18 }, emergence: 0.8, plantsWanted: 20 },
  sowingCount,
);
