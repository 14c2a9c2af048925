import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { countFault, faultsAmong, positiveFault } from "@/lib/science/limits";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageLot, LotLineage, ParentShare } from "@/lib/science/lineage/lots";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { guardedCeiling } from "@/lib/science/whole-steps";

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

/** More grow-outs than any plan has; it keeps the list finite. */
const MOST_GROW_OUTS = 1000;

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
  const faults = faultsAmong(
    positiveFault([], "years", years),
    positiveFault([], "yearsBetween", yearsBetween),
    countFault(["parents"], "length", parents.length, 1),
  );
  if (faults.length > 0) return refused(...faults);
  const growOuts = guardedCeiling(years / yearsBetween);
  if (growOuts > MOST_GROW_OUTS) {
    const needed = `at most ${MOST_GROW_OUTS} are followed: fewer years, or more years between them`;
    return refused(
      refusal("too-many-grow-outs", ["yearsBetween"], yearsBetween, `gives ${growOuts} grow-outs`, needed),
    );
  }
  const among = ancestryOf(
    lots,
    parents.map(({ id }) => id),
  );
  const made = madeLots(new Set(among.map(({ id }) => id)), parents, plot, growOuts);
  const followed = lineage({ lots: [...among, ...made] });
  if (!followed.ok) return followed;
  const figures = new Map(followed.value.lots.map((lot) => [lot.id, lot]));
  return accepted(
    made.map(({ id }, step) => ({
      year: step === 0 ? null : (step - 1) * yearsBetween,
      figures: figures.get(id) as LotLineage,
    })),
  );
}

/** The seed that is sown, and the harvests to come; named so that they are no other lot. */
function madeLots(
  taken: ReadonlySet<string>,
  parents: readonly ParentShare[],
  plot: PlotParents,
  growOuts: number,
): LineageLot[] {
  let prefix = "step";
  while (taken.has(`${prefix} 0`)) prefix += "'";
  const made: LineageLot[] = [{ id: `${prefix} 0`, kind: "blend", parents }];
  for (let step = 1; step <= growOuts; step++) {
    const from = step === 1 ? parents : [{ id: `${prefix} ${step - 1}`, share: 1 }];
    made.push({ id: `${prefix} ${step}`, kind: "grow-out", parents: from, ...plot });
  }
  return made;
}
