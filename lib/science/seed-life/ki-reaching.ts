import { normalQuantile } from "@/lib/science/distributions/normal";
import { kiLosing } from "@/lib/science/seed-life/ki-losing";

/** A line that viability falls to: a share of all seeds, or a part c of what the lot began with. */
export type Threshold = number | { readonly ofInitial: number };

/**
 * The largest Ki from which viability falls to the threshold within so many σ: the inverse of the deviates to the threshold,
 *
 *     Ki − Φ⁻¹(v),  v = threshold/ceiling or c·Φ(Ki),
 *
 * which never falls as Ki rises. Takes deviates of 0 or more. ∞ where every lot is at the threshold from the beginning, −∞ where
 * none is.
 */
export function kiReaching(threshold: Threshold, ceiling: number): (deviates: number) => number {
  if (typeof threshold === "number") {
    const v = threshold / ceiling;
    if (v >= 1) return () => Number.POSITIVE_INFINITY;
    const z = normalQuantile(v);
    return (deviates) => z + deviates;
  }
  const c = threshold.ofInitial;
  if (c === 1) return () => Number.POSITIVE_INFINITY;
  const losing = kiLosing(c);
  return (deviates) => (deviates > 0 ? losing(deviates) : Number.NEGATIVE_INFINITY);
}
