import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { lineageCalculation, lineageLotShape } from "@/lib/schemas/calculations/lineage";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { blendAdvice } from "@/lib/science/blend/blend-advice";

const id = z.string().min(1);

const shape = z.strictObject({
  lots: z.array(lineageLotShape),
  candidates: z.array(id),
  minShare: z.number().optional(),
});

export const blendAdviceCalculation = calculation(
  {
    name: "blend-advice",
    title: "The mix of lots that keeps most",
    answers:
      "Which lots to mix, and in what shares of their living seeds, so that the blend holds as much of the founders' diversity as can be had of " +
      "them, and how much the best single lot would hold.",
    whenToDoubt:
      "When ancestors' plants were not counted or founders were kin. It looks at coancestry alone: not at vigour, age, health or trueness to type. " +
      "Foreign pollen makes a lot look good: leave such lots out. Where several mixes are equally good it names one of them.",
    formula: ["θ = ΣΣ w w' Θ → least,  Σ w = 1,  each w 0 or ≥ the smallest share", "diversity retained = 1 − θ"],
    symbols: [
      { symbol: "w", meaning: "a lot's share of the living seeds of the blend" },
      { symbol: "Θ", meaning: "coancestry of two lots; of a lot with itself, of two of its seeds" },
      { symbol: "θ", meaning: "coancestry of two seeds of the blend" },
    ],
    source: [
      "Caballero & Toro 2000, Genet. Res. 75:331-343 (least coancestry as the rule of management)",
      "Wolfe 1976, Mathematical Programming 11:128-149 (the search)",
    ],
    input: [
      ...lineageCalculation.input.filter(({ key }) => key.startsWith("lots")),
      { key: "candidates", shape: "list of ids, each once", meaning: "the lots that could be mixed" },
      {
        key: "minShare",
        shape: "0 to 1",
        meaning: "a lot that goes in makes up this share of the living seeds at least",
        usual: "0",
      },
    ],
    output: [
      {
        key: "shares[]",
        shape: "{id, share}",
        meaning: "the lots that go in, in the candidates' order; shares of sum 1",
      },
      { key: "coancestry", shape: "0 to 1", meaning: "θ of the blend" },
      { key: "diversityRetained", shape: "0 to 1", meaning: "1 − θ" },
      { key: "bestSingle", shape: "{id, diversityRetained}", meaning: "the candidate that holds most by itself" },
      assumedKey,
    ],
  },
  shape,
  {
    lots: [
      { id: "from my aunt", kind: "founder" },
      { id: "1994", kind: "grow-out", parents: [{ id: "from my aunt", share: 1 }], pollenParents: 40, seedParents: 12 },
      { id: "2003", kind: "grow-out", parents: [{ id: "1994", share: 1 }], pollenParents: 25, seedParents: 10 },
      { id: "2004", kind: "grow-out", parents: [{ id: "1994", share: 1 }], pollenParents: 60, seedParents: 8 },
    ],
    candidates: ["2003", "2004"],
    minShare: 0.1,
  },
  blendAdvice,
);
