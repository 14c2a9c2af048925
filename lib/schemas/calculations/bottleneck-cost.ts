import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { lineageCalculation, lineageLotShape } from "@/lib/schemas/calculations/lineage";
import { plotParentsShape } from "@/lib/schemas/calculations/plot-parents";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import { costsOfSize } from "@/lib/science/lineage/cost-of-size";
import { lineageAssumed } from "@/lib/science/lineage/lineage-assumed";
import { accepted } from "@/lib/science/outcome";

const id = z.string().min(1);
const { pollenParents, seedParents, seedShares } = plotParentsShape;

const shape = z.strictObject({
  lots: z.array(lineageLotShape),
  lot: id,
  others: z.array(z.strictObject({ id, pollenParents, seedParents, seedShares })),
});

export const bottleneckCostCalculation = calculation(
  {
    name: "bottleneck-cost",
    title: "What a small grow-out cost",
    answers:
      "How much more of its diversity a lot of today would keep had one grow-out behind it been of another size (as large as it was planned), all " +
      "the others as they were.",
    whenToDoubt: "Costs of several grow-outs do not add up: each is told as if it alone had been larger.",
    formula: ["cost = (1 − θ with the other plants in that grow-out) − (1 − θ as it was)"],
    symbols: [{ symbol: "θ", meaning: "coancestry of the lot, as in lineage" }],
    source: ["Cockerham 1967, Genetics 56:89-104 (the recursion of lineage, once as it was and once otherwise)"],
    input: [
      ...lineageCalculation.input.filter(({ key }) => key.startsWith("lots")),
      { key: "lot", shape: "id", meaning: "the lot of today" },
      {
        key: "others[]",
        shape: "{id, pollenParents, seedParents, seedShares?}",
        meaning: "grow-outs it comes from, each with the plants that it might have had; shares equal unless told",
      },
    ],
    output: [
      { key: "today", shape: "as a lot of lineage", meaning: "the lot as it is" },
      {
        key: "costs[]",
        shape: "{id, diversityRetained, cost, nativeCost}",
        meaning:
          "what would be kept with that grow-out otherwise, that less what is kept, and the same of native genes alone",
      },
      assumedKey,
    ],
  },
  shape,
  {
    lots: [
      { id: "from my aunt", kind: "founder", inbreeding: 0, coancestry: 0 },
      {
        id: "of 1994",
        kind: "grow-out",
        parents: [{ id: "from my aunt", share: 1 }],
        pollenParents: 10,
        seedParents: 4,
      },
      { id: "my jar", kind: "grow-out", parents: [{ id: "of 1994", share: 1 }], pollenParents: 20, seedParents: 20 },
    ],
    lot: "my jar",
    others: [{ id: "of 1994", pollenParents: 60, seedParents: 60 }],
  },
  ({ lots, lot, others }) => {
    const found = costsOfSize(lots, lot, others);
    return found.ok ? accepted({ ...found.value, assumed: lineageAssumed(ancestryOf(lots, [lot])) }) : found;
  },
);
