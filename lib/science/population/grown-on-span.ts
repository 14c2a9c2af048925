import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { ParentShare } from "@/lib/science/lineage/lots";
import type { LineageSpanInput, LotSpan } from "@/lib/science/lineage/span-lots";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { growOutsAhead, madeLots, yearOfStep } from "./lots-ahead";

export interface GrownOnSpanInput {
  /** the lineage that the parents stand in, as far as it is known, as in `lineageSpan` */
  readonly known: LineageSpanInput;
  /** lots sown in the first grow-out, with their shares of the plants; each later one is sown from the harvest before it */
  readonly parents: readonly ParentShare[];
  /** the plants of each grow-out to come, all of them stated */
  readonly plot: PlotParents;
  readonly years: number;
  /** from one grow-out to the next */
  readonly yearsBetween: number;
}

/** What is left from a year on, at the worst and at the best that the records allow. */
export interface GrownOnSpanStep {
  /** years from today; the seed that is sown stands at null */
  readonly year: number | null;
  readonly figures: LotSpan;
}

/**
 * What is left of the diversity when a population is grown on in one way, from seed of which not all was written down: `grownOn` at both ends.
 *
 *     grow-outs t = ⌈years / years between⌉; each followed by the recursion of `lineageSpan`
 *
 * The first step is the seed that is sown (the parents mixed), the others the harvests. The plan itself is known, so the span comes of the records alone and narrows as
 * the plan's own losses grow; where all is known both ends are those of `grownOn`. Refused: what `lineageSpan` and `growOutsAhead` refuse. Limits: as `lineageSpan`.
 * Example: seed parents alike of 10 to 60 plants (θ 0.01875 to 0.05), then two grow-outs of 20 equal plants: 90.3 % to 93.3 %.
 * Source: the coancestry recursion at both ends (see `lineageSpan`).
 */
export function grownOnSpan({
  known: { lots, founderPairs = [] },
  parents,
  plot,
  years,
  yearsBetween,
}: GrownOnSpanInput): Outcome<GrownOnSpanStep[]> {
  const growOuts = growOutsAhead({ years, yearsBetween, parents: parents.length });
  if (!growOuts.ok) return growOuts;
  const among = ancestryOf(
    lots,
    parents.map(({ id }) => id),
  );
  const ids = new Set(among.map(({ id }) => id));
  const made = madeLots(ids, parents, { seedShares: "equal", ...plot }, growOuts.value);
  const followed = lineageSpan({
    lots: [...among, ...made],
    founderPairs: founderPairs.filter(({ a, b }) => ids.has(a) && ids.has(b)),
  });
  if (!followed.ok) return followed;
  const figures = new Map(followed.value.lots.map((lot) => [lot.id, lot]));
  return accepted(
    made.map(({ id }, step) => ({ year: yearOfStep(step, yearsBetween), figures: figures.get(id) as LotSpan })),
  );
}
