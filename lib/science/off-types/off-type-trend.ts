import { twoSidedNormalChance } from "@/lib/science/distributions/normal";
import { countFault, type Fault, faultsAmong } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

export interface OffTypeYear {
  readonly year: number;
  /** plants looked at */
  readonly looked: number;
  /** off-types among them */
  readonly found: number;
}

export interface OffTypeTrend {
  /** over all years */
  readonly share: number;
  /** above 0: more from year to year; null where nothing varies */
  readonly z: number | null;
  readonly pValue: number | null;
  readonly assumed: readonly Assumption[];
}

/**
 * Whether off-types become more or fewer over the years (Cochran–Armitage, the years themselves as scores).
 *
 *     z = Σ x (k − n·f) / √( f (1 − f) Σ n (x − x̄)² ),  two-sided normal p          f = Σ k/Σ n, x̄ = Σ n x/Σ n
 *
 * x year, n plants looked at, k off-types found. Refused: fewer than two years, nothing looked at, more found than looked at.
 * Limits: with rare off-types p may be off two-fold; other fields and other eyes from year to year make it too small.
 * Example: 9/180, 7/200, 6/220, 3/190, 2/210 in 2019, 20, 21, 23, 25: z −2.620, p 0.0088.
 * Source: Cochran 1954, Biometrics 10:417-451; Armitage 1955, Biometrics 11:375-386.
 */
export function offTypeTrend({ years }: { readonly years: readonly OffTypeYear[] }): Outcome<OffTypeTrend> {
  const faults = trendFaults(years);
  if (faults.length > 0) return refused(...faults);
  const over = (of: (year: OffTypeYear) => number) => years.reduce((sum, year) => sum + of(year), 0);
  const looked = over((year) => year.looked);
  const found = over((year) => year.found);
  const share = found / looked;
  const middle = over(({ year, looked: n }) => year * n) / looked;
  const spread = over(({ year, looked: n }) => n * (year - middle) ** 2);
  const variance = (found / looked) * ((looked - found) / looked) * spread;
  if (variance === 0) return accepted({ share, z: null, pValue: null, assumed: [] });
  const z = over(({ year, looked: n, found: k }) => (year - middle) * (k - n * share)) / Math.sqrt(variance);
  return accepted({ share, z, pValue: twoSidedNormalChance(z), assumed: [] });
}

function trendFaults(years: readonly OffTypeYear[]): Refusal[] {
  if (years.length < 2) {
    return [refusal("too-few-years", ["years"], years.length, "year is no trend", "give two or more years")];
  }
  return years.flatMap((year, index) => {
    const at = ["years", index];
    const faults = faultsAmong(
      yearFault(at, year.year),
      countFault(at, "looked", year.looked, 1),
      countFault(at, "found", year.found),
    );
    if (faults.length > 0 || year.found <= year.looked) return faults;
    const needed = "off-types found may not pass the plants looked at";
    return [
      refusal(
        "more-found-than-looked",
        [...at, "found"],
        year.found,
        `is more than the ${year.looked} looked at`,
        needed,
      ),
    ];
  });
}

function yearFault(at: readonly (string | number)[], year: number): Fault {
  if (Number.isSafeInteger(year)) return undefined;
  return refusal("not-whole", [...at, "year"], year, "is no year", "a whole number is needed, as 1994");
}
