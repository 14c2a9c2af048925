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

/** What the years are compared by: all plants of a year and version together, beside those of the check that was chosen. */
export function yearsCompared(
  growOuts: readonly ScoredGrowOut[],
  check: readonly ScoredGrowOut[],
): { readonly input: TraitYearsInput; readonly outcome: Outcome<TraitYears> } | null {
  const newest = growOuts.at(-1)?.version.version ?? 0;
  const version = Math.max(newest, ...growOuts.map((growOut) => growOut.version.version));
  const valuesOf = (of: readonly ScoredGrowOut[]) =>
    grouped(
      of.filter((growOut) => growOut.year !== null && growOut.version.version === version),
      ({ year }) => year as number,
    );
  const beside = valuesOf(check);
  const years = [...valuesOf(growOuts)]
    .map(([year, own]) => {
      const of = (growOut: ScoredGrowOut) => growOut.plants.map(({ value }) => value);
      const checks = (beside.get(year) ?? []).flatMap(of);
      return { year, values: own.flatMap(of), ...(checks.length > 0 ? { check: checks } : {}) };
    })
    .filter(({ values }) => values.length > 0)
    .sort((one, other) => one.year - other.year);
  return years.length === 0 ? null : { input: { years }, outcome: traitYears({ years }) };
}
