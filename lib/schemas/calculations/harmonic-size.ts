import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { harmonicMeanSize } from "@/lib/science/effective-size/harmonic-mean-size";
import { faultsIn, positiveFault } from "@/lib/science/limits";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

const shape = z.strictObject({ sizes: z.array(z.strictObject({ low: z.number(), high: z.number().nullable() })) });

function checked({ sizes }: z.output<typeof shape>): Outcome<object> {
  const faults = faultsIn(
    sizes.flatMap(({ low, high }, place) => [
      positiveFault(["sizes", place], "low", low),
      positiveFault(["sizes", place], "high", high ?? undefined),
    ]),
  );
  sizes.forEach(({ low, high }, place) => {
    if (high !== null && high < low)
      faults.push(
        refusal("ends-turned", ["sizes", place, "high"], high, `is below ${low}`, "the higher end comes second"),
      );
  });
  if (sizes.length === 0)
    faults.push(refusal("no-sizes", ["sizes"], sizes, "holds no grow-out", "give the effective size of one or more"));
  return faults.length > 0 ? refused(...faults) : accepted({ ...harmonicMeanSize(sizes), assumed: [] });
}

export const harmonicSizeCalculation = calculation(
  {
    name: "harmonic-size",
    title: "The one effective size of many grow-outs",
    answers:
      "What grow-outs of different size come to together: as much is lost as if each had had this one effective size. A single grow-out of ten " +
      "plants outweighs nine of a thousand.",
    whenToDoubt:
      "It is an approximation, good for sizes above about five. Years in the jar do not count, grow-outs do.",
    formula: ["Ne_h = t / Σ (1/Ne)"],
    symbols: [
      { symbol: "t", meaning: "number of grow-outs" },
      { symbol: "Ne", meaning: "effective size of each, plants" },
    ],
    source: ["Wright 1938, Science 87:430-431"],
    input: [
      {
        key: "sizes[]",
        shape: "{low, high}, above 0; high null: not bounded",
        meaning: "effective size of each grow-out, both ends alike where it is known",
      },
    ],
    output: [
      { key: "low", shape: "plants", meaning: "from the low ends" },
      { key: "high", shape: "plants or null", meaning: "from the high ends; null where nothing bounds it" },
      assumedKey,
    ],
  },
  shape,
  {
    sizes: [
      { low: 10, high: 10 },
      { low: 100, high: 100 },
      { low: 20, high: 40 },
    ],
  },
  checked,
);
