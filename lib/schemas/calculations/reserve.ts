import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { reserve } from "@/lib/science/reserve/reserve";

const shape = z.strictObject({
  seedsPerGrowOut: z.int(),
  growOuts: z.int().optional(),
  tests: z.int().optional(),
  seedsPerTest: z.int().optional(),
  duplicates: z.int().optional(),
  archive: z.int().optional(),
});

export const reserveCalculation = calculation(
  {
    name: "reserve",
    title: "What to keep back",
    answers:
      "How many seeds of a variety never leave the jar: enough to grow it once more, to test it till then, for a second place, and a few never touched. One reserve a variety and holder, over all its good lots.",
    whenToDoubt: "When the germination behind the sowing number is old: the reserve grows as the seed ages.",
    formula: ["seeds = growOuts·S + tests·seedsPerTest + duplicates·S + archive"],
    symbols: [{ symbol: "S", meaning: "seeds to sow for one population, from sowing-count" }],
    source: [
      "FAO 2014, Genebank Standards (three sowings kept, 50 seeds of the original sample)",
      "Hanson 1985, Procedures for handling seeds in genebanks; one grow-out for a home holder is this registry's choice",
    ],
    input: [
      { key: "seedsPerGrowOut", shape: "whole number, 1 or more", meaning: "S, seeds to sow for one population" },
      { key: "growOuts", shape: "whole number", meaning: "sowings kept; a genebank keeps 3", usual: "1" },
      { key: "tests", shape: "whole number", meaning: "germination tests till then", usual: "2" },
      { key: "seedsPerTest", shape: "whole number, 1 or more", meaning: "seeds that each test uses up", usual: "50" },
      {
        key: "duplicates",
        shape: "whole number",
        meaning: "sowings kept for another place; 0 where two other places are confirmed",
        usual: "1",
      },
      { key: "archive", shape: "whole number", meaning: "seeds never touched", usual: "50" },
    ],
    output: [
      { key: "seeds", shape: "seeds", meaning: "to keep back in all" },
      { key: "parts", shape: "{growOuts, tests, duplicates, archive}, seeds each", meaning: "what they are for" },
      assumedKey,
    ],
  },
  shape,
  { seedsPerGrowOut: 97 },
  reserve,
);
