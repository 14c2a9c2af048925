import { exactInterval, exactUpperBound } from "@/lib/science/binomial/exact-interval";
import type { Interval } from "@/lib/science/binomial/interval";
import { countFault, faultsAmong, insideFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface OffTypesFoundInput {
  /** plants or seeds looked at */
  readonly sampled: number;
  /** off-types among them */
  readonly found: number;
  /** between 0 and 1; default 0.95 */
  readonly confidence?: number;
}

export interface OffTypesFound {
  readonly share: number;
  /** one-sided exact: the true share is hardly above this */
  readonly upperBound: number;
  /** two-sided exact */
  readonly interval: Interval;
  readonly assumed: readonly Assumption[];
}

/**
 * What a sample says of the share of off-types. None found is no proof of none: the upper bound says how many there may be.
 *
 *     share = x/n; upper bound: the p at which P(Binomial(n, p) ≤ x) = 1 − confidence; interval: the same with half of it at each end
 *
 * x off-types found among n plants. Refused: nothing looked at, counts that are not whole, more found than looked at.
 * Limits: plants picked at random and looked at when the trait shows; off-types that stand in clumps need more places.
 * Example: 0 of 100: share 0, upper bound 0.0295. Source: Clopper & Pearson 1934, Biometrika 26:404-413.
 */
export function offTypesFound(input: OffTypesFoundInput): Outcome<OffTypesFound> {
  const { sampled, found, confidence = 0.95 } = input;
  const faults = faultsAmong(
    countFault([], "sampled", sampled, 1),
    countFault([], "found", found),
    insideFault([], "confidence", confidence),
  );
  if (faults.length === 0 && found > sampled) {
    const needed = "off-types found may not pass the plants looked at";
    faults.push(refusal("more-found-than-sampled", ["found"], found, `is more than the ${sampled} looked at`, needed));
  }
  if (faults.length > 0) return refused(...faults);
  return accepted({
    share: found / sampled,
    upperBound: exactUpperBound(found, sampled, confidence),
    interval: exactInterval(found, sampled, confidence),
    assumed: input.confidence === undefined ? [{ code: "confidence-95", text: "bounds at 95 % confidence" }] : [],
  });
}
