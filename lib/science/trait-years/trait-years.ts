import { finiteFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type DifferenceToCheck, differenceToCheck } from "./difference-to-check";
import { type MeanOfYear, meanOfYear } from "./mean-of-year";
import { type RankTrend, rankTrend, yearsForTrend } from "./rank-trend";

export interface TraitYearsInput {
  readonly years: readonly {
    readonly year: number;
    /** of the variety's plants, in the trait's unit */
    readonly values: readonly number[];
    /** of the plants of a check that stood beside them; left out: none did */
    readonly check?: readonly number[];
  }[];
}

export interface TraitYear extends MeanOfYear {
  readonly year: number;
  /** to the check of that year; null without one */
  readonly toCheck: DifferenceToCheck | null;
}

export interface TraitYears {
  readonly years: readonly TraitYear[];
  /** of the differences to the check; null where fewer than four years have one: without it the weather and the variety cannot be told apart */
  readonly trend: RankTrend | null;
  readonly assumed: readonly Assumption[];
}

/**
 * What a trait did over the years, and what of it can be told from the weather.
 *
 *     each year: mean ± t·s/√n;  where a check stood beside: D = V − K, standard error √(s_v²/n_v + s_k²/n_k)
 *     trend by ranks of the D alone: S = Σ sign(D_j − D_i), exact p, slope the median of all slopes
 *
 * Refused: a year twice, a year without a plant, values that are no numbers. Limits: those of meanOfYear, differenceToCheck and rankTrend.
 * Source: Student 1908, Biometrika 6:1-25; Mann 1945, Econometrica 13:245-259; Sen 1968, JASA 63:1379-1389.
 */
export function traitYears({ years }: TraitYearsInput): Outcome<TraitYears> {
  const faults = yearFaults(years);
  if (faults.length > 0) return refused(...faults);
  const read = years.flatMap(({ year, values, check }): TraitYear[] => {
    const own = meanOfYear(values);
    const beside = meanOfYear(check ?? []);
    return own ? [{ year, ...own, toCheck: beside ? differenceToCheck(own, beside) : null }] : [];
  });
  const differences = read.flatMap(({ year, toCheck }) => (toCheck ? [{ year, value: toCheck.difference }] : []));
  const trend = differences.length < yearsForTrend ? null : rankTrend(differences);
  const assumed =
    differences.length > 0
      ? [{ code: "check-unchanged", text: "the check was the same seed, or seed that does not change, in every year" }]
      : [];
  return accepted({ years: read, trend: trend?.ok ? trend.value : null, assumed });
}

function yearFaults(years: TraitYearsInput["years"]): Refusal[] {
  if (years.length === 0)
    return [refusal("no-years", ["years"], years, "names no year", "give the years in which plants were scored")];
  const seen = new Set<number>();
  return years.flatMap(({ year, values, check }, at) => {
    const faults: Refusal[] = [];
    if (seen.has(year))
      faults.push(refusal("twice", ["years", at, "year"], year, "stands twice", "each is given once"));
    seen.add(year);
    if (values.length === 0)
      faults.push(refusal("no-plants", ["years", at, "values"], values, "names no plant", "leave the year out"));
    for (const [key, list] of [
      ["values", values],
      ["check", check ?? []],
    ] as const)
      list.forEach((value, place) => {
        const fault = finiteFault(["years", at, key], place, value);
        if (fault) faults.push(fault);
      });
    return faults;
  });
}
