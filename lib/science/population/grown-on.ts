import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageLot, LotLineage, ParentShare } from "@/lib/science/lineage/lots";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { growOutsAhead, madeLots, yearOfStep } from "@/lib/science/population/lots-ahead";

export interface GrownOnInput {
  /** the lineage that the parents stand in, as in `lineage` */
  readonly lots: readonly LineageLot[];
  /** lots sown in the first grow-out, with their shares of the plants; each later one is sown from the harvest before it */
  readonly parents: readonly ParentShare[];
  /** the plants of each grow-out */
  readonly plot: PlotParents;
  readonly years: number;
  /** from one grow-out to the next */
  readonly yearsBetween: number;
}

/** What is left from a year on; year 0 is the first grow-out. */
export interface GrownOnStep {
  /** years from today; the seed that is sown stands at null */
  readonly year: number | null;
  readonly figures: LotLineage;
}

/**
 * What is left of the diversity when a population is grown on in one way: one grow-out now, and one every so many years.
 *
 *     grow-outs t = ⌈years / years between⌉, at years 0, b, 2b, ...; each followed by the recursion of `lineage`
 *
 * The first step is the seed that is sown (the parents mixed), the others the harvests. Refused: what `lineage` refuses of parents and plants,
 * years or a distance not above 0, more than a thousand grow-outs. Limits: as `lineage`; no seed of other years is mixed in between.
 * Example: 20 equal plants every 3 years for 30 from an unrelated founder: ten grow-outs, 0.975¹⁰ = 0.776 retained.
 * Source: the coancestry recursion (see `lineage`).
 */
export function grownOn({ lots, parents, plot, years, yearsBetween }: GrownOnInput): Outcome<GrownOnStep[]> {
  const growOuts = growOutsAhead({ years, yearsBetween, parents: parents.length });
  if (!growOuts.ok) return growOuts;
  const among = ancestryOf(
    lots,
    parents.map(({ id }) => id),
  );
  const made = madeLots(new Set(among.map(({ id }) => id)), parents, plot, growOuts.value);
  const followed = lineage({ lots: [...among, ...made] });
  if (!followed.ok) return followed;
  const figures = new Map(followed.value.lots.map((lot) => [lot.id, lot]));
  return accepted(
    made.map(({ id }, step) => ({ year: yearOfStep(step, yearsBetween), figures: figures.get(id) as LotLineage })),
  );
}
