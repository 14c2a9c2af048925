import type { Outcome } from "@/lib/science/outcome";
import { differentialWithinCells } from "@/lib/science/selection/differential-within-cells";
import { type MeanOfYear, meanOfYear } from "@/lib/science/trait-years/mean-of-year";
import { type TraitYears, type TraitYearsInput, traitYears } from "@/lib/science/trait-years/trait-years";
import { grouped } from "../change-set/grouped";
import type { ScoredGrowOut } from "./read-trait-years";

/** A grow-out of the trait's history with what its plants say. */
export interface PointOfTrait extends ScoredGrowOut {
  readonly mean: MeanOfYear | null;
  /** of the plants of which seed was kept */
  readonly kept: MeanOfYear | null;
  /** how far those stood above their neighbours; null where nothing was compared */
  readonly differential: number | null;
}

export function pointsOfTrait(growOuts: readonly ScoredGrowOut[]): PointOfTrait[] {
  return growOuts.map((growOut) => {
    const { plants } = growOut;
    const scored = plants.map(({ value, cell }, at) => ({
      id: String(at),
      ...(cell === null ? {} : { cell }),
      scores: { trait: value },
    }));
    const kept = new Set(plants.flatMap((plant, at) => (plant.kept ? [String(at)] : [])));
    return {
      ...growOut,
      mean: meanOfYear(plants.map(({ value }) => value)),
      kept: meanOfYear(plants.flatMap((plant) => (plant.kept ? [plant.value] : []))),
      differential: differentialWithinCells(scored, "trait", kept, true)?.differential ?? null,
    };
  });
}

/** The years of a trait beside a check, and which grow-outs the differences are of. */
export interface YearsCompared {
  readonly input: TraitYearsInput;
  readonly outcome: Outcome<TraitYears>;
  /** ids of the grow-outs beside which the check stood */
  readonly beside: ReadonlySet<string>;
}

/**
 * What the years are compared by: all plants of a year and version together; where the check was grown in that year, those that stood beside it alone, with those of the check
 * that stood there.
 */
export function yearsCompared(
  growOuts: readonly ScoredGrowOut[],
  check: readonly ScoredGrowOut[],
): YearsCompared | null {
  const newest = growOuts.at(-1)?.version.version ?? 0;
  const version = Math.max(newest, ...growOuts.map((growOut) => growOut.version.version));
  const byYear = (of: readonly ScoredGrowOut[]) =>
    grouped(
      of.filter(
        ({ year, plants, ...growOut }) => year !== null && plants.length > 0 && growOut.version.version === version,
      ),
      ({ year }) => year as number,
    );
  const checks = byYear(check);
  const beside = new Set<string>();
  const values = (of: readonly ScoredGrowOut[]) => of.flatMap(({ plants }) => plants.map(({ value }) => value));
  const years = [...byYear(growOuts)]
    .map(([year, own]) => {
      const paired = nearestOf(own, checks.get(year) ?? []);
      if (paired === null) return { year, values: values(own) };
      for (const { id } of paired.own) beside.add(id);
      return { year, values: values(paired.own), check: values(paired.check) };
    })
    .sort((one, other) => one.year - other.year);
  return years.length === 0 ? null : { input: { years }, outcome: traitYears({ years }), beside };
}

/** How surely two grow-outs of a year stood side by side: 3 on one plot, 2 with one steward, 1 where it is not known, 0 apart. */
function nearness({ place: one }: ScoredGrowOut, { place: other }: ScoredGrowOut): number {
  if (one.plots.some((plot) => other.plots.includes(plot))) return 3;
  if (one.stewardId !== null && one.stewardId === other.stewardId) return 2;
  const known = (place: ScoredGrowOut["place"]) => place.plots.length > 0 || place.stewardId !== null;
  return known(one) && known(other) ? 0 : 1;
}

/** Of a year's grow-outs and its checks those that stood nearest to each other; null where none stood together. */
function nearestOf(own: readonly ScoredGrowOut[], check: readonly ScoredGrowOut[]) {
  const best = Math.max(0, ...own.flatMap((one) => check.map((other) => nearness(one, other))));
  if (best === 0) return null;
  return {
    own: own.filter((one) => check.some((other) => nearness(one, other) === best)),
    check: check.filter((other) => own.some((one) => nearness(one, other) === best)),
  };
}
