import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { lineageLotShape } from "@/lib/schemas/calculations/lineage";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { outcomeSpread } from "@/lib/science/gene-drop/outcome-spread";

const shape = z.strictObject({
  lots: z.array(lineageLotShape),
  of: z.string().min(1),
  frequency: z.number(),
  replicates: z.int(),
  seed: z.int(),
});

export const outcomeSpreadCalculation = calculation(
  {
    name: "outcome-spread",
    title: "What chance makes of a plan",
    answers:
      "How far the diversity kept at single places in the genome spreads around what is to be expected, and how likely a rare form of a gene is " +
      "still there at the end. The same plants keep much at one place and little at another.",
    whenToDoubt:
      "It knows no more than the plan: no selection, no foreign pollen, unlinked genes. With few runs its ends are rough.",
    formula: ["kept at one place = 1 − Σ f²", "rare form kept = mean of 1 − (1 − p)^k"],
    symbols: [
      { symbol: "f", meaning: "shares of the founders' genes in the pool of seed, at one place in the genome" },
      { symbol: "p", meaning: "share of the founders' genes that are the rare form" },
      { symbol: "k", meaning: "founders' genes that are still in the pool" },
    ],
    source: ["MacCluer, VandeBerg, Read & Ryder 1986, Zoo Biol. 5:147-160 (gene dropping)"],
    input: [
      { key: "lots", shape: "as in lineage", meaning: "the tree, without foreign pollen" },
      { key: "of", shape: "id of a grow-out", meaning: "the lot whose seed is looked at" },
      { key: "frequency", shape: "above 0, to 1", meaning: "p" },
      { key: "replicates", shape: "whole number, 2 or more", meaning: "places in the genome that are followed" },
      { key: "seed", shape: "whole number", meaning: "fixes what chance does: the same number gives the same answer" },
    ],
    output: [
      {
        key: "retained",
        shape: "{mean, standardError, low, median, high}",
        meaning: "diversity kept at one place: on average, and at 5 %, 50 % and 95 % of the places in their order",
      },
      { key: "rareKept", shape: "{probability, standardError}", meaning: "that the rare form is still there" },
      assumedKey,
    ],
  },
  shape,
  {
    lots: [
      { id: "sown now", kind: "founder", inbreeding: 0, coancestry: 0 },
      { id: "first", kind: "grow-out", parents: [{ id: "sown now", share: 1 }], pollenParents: 40, seedParents: 12 },
    ],
    of: "first",
    frequency: 0.05,
    replicates: 400,
    seed: 1,
  },
  outcomeSpread,
);
