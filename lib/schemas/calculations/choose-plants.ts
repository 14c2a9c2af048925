import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { choosePlants } from "@/lib/science/selection/choose-plants";

const shape = z.strictObject({
  plants: z.array(
    z.strictObject({
      id: z.string(),
      cell: z.string().optional(),
      scores: z.record(z.string(), z.number().nullable()),
    }),
  ),
  traits: z.array(
    z.strictObject({
      key: z.string(),
      weight: z.number(),
      better: z.union([z.enum(["higher", "lower"]), z.strictObject({ target: z.number() })]),
    }),
  ),
  keep: z.int(),
  withinCells: z.boolean().optional(),
});

export const choosePlantsCalculation = calculation(
  {
    name: "choose-plants",
    title: "Which marked plants are surely the best",
    answers:
      "Each plant compared with its neighbours in the same block, all traits weighed together: who is surely among those to keep, and who shares the last place. What shares it, a person chooses.",
    whenToDoubt:
      "When blocks hold few scored plants, or when plants beside a gap or at the edge stand among the others. A rank says who is ahead, not by how much: look at the plants beside the cut again in the field.",
    formula: [
      "v = x, −x or −|x − target|;  d = v − mean of the cell",
      "s = √(Σ d²/(plants − cells));  z = d/s, 0 at s = 0",
      "index = Σ weight·z / Σ weight",
    ],
    symbols: [
      { symbol: "x", meaning: "a plant's score or measure" },
      { symbol: "d, s", meaning: "deviation from the cell's mean; spread within cells, all cells together" },
    ],
    source: [
      "Gardner 1961, Crop Sci. 1:241-245 (choosing within cells)",
      "Weighted standardised deviations, cells pooled",
    ],
    input: [
      { key: "plants[].id", shape: "text, each once", meaning: "the plant" },
      { key: "plants[].cell", shape: "text", meaning: "the block it stands in", usual: "no comparison" },
      { key: "plants[].scores", shape: "{trait: number or null}", meaning: "what it was scored; null is not scored" },
      { key: "traits[].key", shape: "text, each once", meaning: "the trait" },
      { key: "traits[].weight", shape: "0 or more, not all 0", meaning: "how much it counts" },
      { key: "traits[].better", shape: '"higher", "lower" or {target}', meaning: "which end is good" },
      { key: "keep", shape: "whole number, 1 to the plants", meaning: "how many to keep" },
      {
        key: "withinCells",
        shape: "true or false",
        meaning: "compare within blocks, or over the whole field",
        usual: "true",
      },
    ],
    output: [
      { key: "ranked", shape: "[{id, index, rank, weightCompared}]", meaning: "the best first; null ranks last" },
      { key: "kept", shape: "ids", meaning: "surely among the best" },
      { key: "tied", shape: "ids", meaning: "share the last place and are more than the places" },
      { key: "placesLeft", shape: "whole number", meaning: "how many of the tied can go in" },
      { key: "proportion", shape: "0 to 1", meaning: "kept of all plants" },
      {
        key: "differential",
        shape: "{trait: number or null}",
        meaning: "mean of the kept less mean of all scored, in the trait's unit",
      },
      assumedKey,
    ],
  },
  shape,
  {
    plants: [
      { id: "12", cell: "A", scores: { height: 182, ears: 2 } },
      { id: "17", cell: "A", scores: { height: 168, ears: 1 } },
      { id: "31", cell: "B", scores: { height: 158, ears: 2 } },
      { id: "34", cell: "B", scores: { height: 144, ears: null } },
    ],
    traits: [
      { key: "height", weight: 1, better: "lower" },
      { key: "ears", weight: 2, better: "higher" },
    ],
    keep: 2,
  },
  choosePlants,
);
