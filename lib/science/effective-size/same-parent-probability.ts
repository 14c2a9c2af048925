import type { SameParentTerms } from "@/lib/science/effective-size/same-parent-terms";

/**
 * κ: the chance that two genes of two different seeds come from one plant.
 *
 *     κ = ¼ [ (1 + s)² P_MM + 2 (1 − s²) P_MF + (1 − s)² P_FF ]          s: selfing rate, 0 to 1
 *
 * Source: Σ c² with c = (q + s·q + (1 − s)·p)/2 written out; see effectiveSize.
 */
export function sameParentProbability(terms: SameParentTerms, selfingRate: number): number {
  const s = selfingRate;
  const { seedParentTerm, crossTerm, pollenParentTerm } = terms;
  return ((1 + s) ** 2 * seedParentTerm + 2 * (1 - s * s) * crossTerm + (1 - s) ** 2 * pollenParentTerm) / 4;
}
