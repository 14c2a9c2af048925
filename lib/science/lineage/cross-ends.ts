import type { Part } from "@/lib/science/lineage/coancestry-ends";
import { termsOf } from "@/lib/science/lineage/drift-ends";
import type { Ends, GrowOutAsKnown } from "@/lib/science/lineage/span-lots";

/** Whether a lot is a cross: seed parents of one lot, pollen parents of another. */
export function isCrossAsKnown(lot: GrowOutAsKnown): boolean {
  return lot.parents.some(({ role }) => role !== undefined);
}

/** Its sides as parts of its genes that are no foreign pollen: seed side first. */
export function partsOfCross(lot: GrowOutAsKnown, rankIn: (id: string) => number): Part[] {
  const own = 1 - (lot.foreignPollen ?? 0);
  const part = (role: string, share: number) =>
    lot.parents.filter((parent) => parent.role === role).map(({ id }) => ({ rank: rankIn(id), share }));
  return [...part("seed parent", 1 / (1 + own)), ...part("pollen parent", own / (1 + own))];
}

/** What is known of one side of a cross. */
export interface SideEnds {
  readonly coancestry: Ends;
  readonly inbreeding: Ends;
}

/**
 * A cross at the worst and at the best that is known of it.
 *
 *     θ_new = ¼ [(1 − P_MM) θ_A + P_MM S_A] + ½ u Θ(A, B) + ¼ u² [(1 − P_FF) θ_B + P_FF S_B],   F_new = u Θ(A, B)
 *
 * Every term rises with θ, F and Θ of the sides and with P_MM and P_FF, since S ≥ θ. Source: growCross at both ends.
 */
export function crossEnds(lot: GrowOutAsKnown, seed: SideEnds, pollen: SideEnds, between: Ends) {
  const u = 1 - (lot.foreignPollen ?? 0);
  const { worst, best } = termsOf(lot);
  const at = (end: "low" | "high") => {
    const { seedParentTerm, pollenParentTerm } = end === "high" ? worst : best;
    const within = (side: SideEnds, term: number) =>
      (1 - term) * side.coancestry[end] + (term * (1 + side.inbreeding[end])) / 2;
    const coancestry =
      within(seed, seedParentTerm) / 4 + (u * between[end]) / 2 + (u * u * within(pollen, pollenParentTerm)) / 4;
    return { coancestry, inbreeding: u * between[end] };
  };
  const [low, high] = [at("low"), at("high")];
  const passing = (1 + u) / 2;
  return {
    coancestry: { low: low.coancestry, high: high.coancestry },
    inbreeding: { low: low.inbreeding, high: high.inbreeding },
    passing: { low: passing, high: passing },
  };
}
