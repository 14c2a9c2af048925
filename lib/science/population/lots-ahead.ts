import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { countFault, faultsAmong, positiveFault } from "@/lib/science/limits";
import type { BlendLot, GrowOutLot, ParentShare } from "@/lib/science/lineage/lots";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { guardedCeiling } from "@/lib/science/whole-steps";

/** More grow-outs than any plan has; it keeps the list finite. */
const MOST_GROW_OUTS = 1000;

/** How many grow-outs lie ahead: ⌈years / years between⌉, the first of them now. Refused: years or a distance not above 0, no parents, more than a thousand. */
export function growOutsAhead({
  years,
  yearsBetween,
  parents,
}: {
  readonly years: number;
  readonly yearsBetween: number;
  /** number of lots that are sown */
  readonly parents: number;
}): Outcome<number> {
  const faults = faultsAmong(
    positiveFault([], "years", years),
    positiveFault([], "yearsBetween", yearsBetween),
    countFault(["parents"], "length", parents, 1),
  );
  if (faults.length > 0) return refused(...faults);
  const growOuts = guardedCeiling(years / yearsBetween);
  if (growOuts <= MOST_GROW_OUTS) return accepted(growOuts);
  const needed = `at most ${MOST_GROW_OUTS} are followed: fewer years, or more years between them`;
  return refused(refusal("too-many-grow-outs", ["yearsBetween"], yearsBetween, `gives ${growOuts} grow-outs`, needed));
}

/** Years from today of a step; the seed that is sown, the first step, stands at null. */
export function yearOfStep(step: number, yearsBetween: number): number | null {
  return step === 0 ? null : (step - 1) * yearsBetween;
}

/** The seed that is sown, and the harvests to come; named so that they are no other lot. */
export function madeLots(
  taken: ReadonlySet<string>,
  parents: readonly ParentShare[],
  plot: PlotParents,
  growOuts: number,
): (BlendLot | GrowOutLot)[] {
  let prefix = "step";
  while (taken.has(`${prefix} 0`)) prefix += "'";
  const made: (BlendLot | GrowOutLot)[] = [{ id: `${prefix} 0`, kind: "blend", parents }];
  for (let step = 1; step <= growOuts; step++) {
    const from = step === 1 ? parents : [{ id: `${prefix} ${step - 1}`, share: 1 }];
    made.push({ id: `${prefix} ${step}`, kind: "grow-out", parents: from, ...plot });
  }
  return made;
}
