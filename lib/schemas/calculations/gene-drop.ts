import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { lineageLotShape } from "@/lib/schemas/calculations/lineage";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { geneDrop } from "@/lib/science/gene-drop/gene-drop";

const shape = z.strictObject({
  lots: z.array(lineageLotShape),
  pairs: z.array(z.tuple([z.string(), z.string()])).optional(),
  replicates: z.int(),
  seed: z.int(),
});

export const geneDropCalculation = calculation(
  {
    name: "gene-drop",
    title: "The lineage, tried out by chance",
    answers:
      "The same figures as the lineage by another road: founders’ genes are passed down plant by plant, many times over. Where the two disagree by more than a few standard errors, one of them is wrong.",
    whenToDoubt:
      "With few runs the standard error is wide. It knows no more of the plants than the records do, and no selection.",
    formula: ["mean = Σ x_r/R", "standard error = √(Σ (x_r − mean)²/(R(R − 1)))"],
    symbols: [
      { symbol: "R", meaning: "runs" },
      { symbol: "x_r", meaning: "coancestry or inbreeding of a lot in one run" },
    ],
    source: ["MacCluer, VandeBerg, Read & Ryder 1986, Zoo Biol. 5:147-160"],
    input: [
      { key: "lots", shape: "as in lineage", meaning: "the tree" },
      { key: "pairs", shape: "list of [id, id]", meaning: "two lots each whose coancestry is asked", usual: "none" },
      { key: "replicates", shape: "whole number, 2 or more", meaning: "R" },
      { key: "seed", shape: "whole number", meaning: "fixes what chance does: the same number gives the same answer" },
    ],
    output: [
      {
        key: "lots[]",
        shape: "{id, coancestry: {mean, standardError}, inbreeding: {mean, standardError}}",
        meaning: "of each lot, in input order",
      },
      { key: "pairs[]", shape: "{a, b, coancestry: {mean, standardError}}", meaning: "of each pair" },
      assumedKey,
    ],
  },
  shape,
  {
    lots: [
      { id: "from my aunt", kind: "founder" },
      { id: "1994", kind: "grow-out", parents: [{ id: "from my aunt", share: 1 }], pollenParents: 40, seedParents: 12 },
    ],
    replicates: 200,
    seed: 1,
  },
  geneDrop,
);
