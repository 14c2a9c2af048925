import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { lineageCalculation, lineageLotShape } from "@/lib/schemas/calculations/lineage";
import { plotParentsKeys, plotParentsShape } from "@/lib/schemas/calculations/plot-parents";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import { lineageAssumed } from "@/lib/science/lineage/lineage-assumed";
import { accepted } from "@/lib/science/outcome";
import { grownOn } from "@/lib/science/population/grown-on";

const id = z.string().min(1);

const shape = z.strictObject({
  lots: z.array(lineageLotShape),
  parents: z.array(z.strictObject({ id, share: z.number() })),
  plot: z.strictObject(plotParentsShape),
  years: z.number(),
  yearsBetween: z.number(),
});

export const grownOnCalculation = calculation(
  {
    name: "grown-on",
    title: "What a way of growing leaves over the years",
    answers:
      "How much of the diversity is left after each grow-out if a population is grown on in one way: from these lots now, with so many plants, and " +
      "again every so many years.",
    whenToDoubt: "It knows no selection and no foreign pollen, and no seed of other years is mixed in between.",
    formula: ["grow-outs t = ⌈years / years between⌉, each by the recursion of lineage"],
    symbols: [{ symbol: "t", meaning: "number of grow-outs, the first of them now" }],
    source: ["Cockerham 1967, Genetics 56:89-104 (the recursion of lineage)"],
    input: [
      ...lineageCalculation.input.filter(({ key }) => key.startsWith("lots[]")),
      { key: "parents", shape: "list of {id, share}", meaning: "lots sown now, with their shares of the plants" },
      ...plotParentsKeys.map((each) => ({ ...each, key: `plot.${each.key}` })),
      { key: "years", shape: "above 0", meaning: "how far ahead" },
      { key: "yearsBetween", shape: "above 0", meaning: "from one grow-out to the next" },
    ],
    output: [
      {
        key: "steps[]",
        shape: "{year, figures}",
        meaning: "the seed that is sown (year null), then each harvest with its figures as in lineage",
      },
      assumedKey,
    ],
  },
  shape,
  {
    lots: [{ id: "from my aunt", kind: "founder", inbreeding: 0, coancestry: 0 }],
    parents: [{ id: "from my aunt", share: 1 }],
    plot: { pollenParents: 20, seedParents: 20, seedShares: "equal", pollenShares: "equal", selfingRate: 0 },
    years: 30,
    yearsBetween: 3,
  },
  (input) => {
    const steps = grownOn(input);
    if (!steps.ok) return steps;
    const { lots, parents, plot } = input;
    const sown = ancestryOf(
      lots,
      parents.map(({ id }) => id),
    );
    const grown = { ...plot, id: "each grow-out", kind: "grow-out", parents } as const;
    return accepted({ steps: steps.value, assumed: lineageAssumed([...sown, grown]) });
  },
);
