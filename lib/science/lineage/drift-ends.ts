import type { CountBounds, SharesKnown } from "@/lib/science/effective-size/effective-size-span";
import { type EndsOfTerms, endsOfTerms } from "@/lib/science/effective-size/ends-of-terms";
import type { Shares } from "@/lib/science/effective-size/plot-parents";
import { type SameParentTerms, sameParentTerms } from "@/lib/science/effective-size/same-parent-terms";
import { type MostWhereSomeShed, mostWhereSomeShed } from "@/lib/science/effective-size/some-shed";
import type { Ends, GrowOutAsKnown, PlantsKnown } from "@/lib/science/lineage/span-lots";

/** What one grow-out does to its parents' genes, at its least and at its greatest. */
export interface DriftEnds {
  /** a = ½(1 + s + u): the part of the genes that came from the parent lots */
  readonly passing: Ends;
  /** κ_m = ¼[(1 + s)² P_MM + 2u(1 + s) P_MF + u² P_FF]: two such genes of two seeds came from one plant */
  readonly fromOnePlant: Ends;
  /** α = s + u·P_MF: a seed's two genes came from one plant (P_MF only where a plant can self by chance) */
  readonly insideOnePlant: Ends;
}

/**
 * The ends of what a grow-out does to its parents' genes; s: selfing rate, m: foreign pollen, u = (1 − s)(1 − m).
 *
 *     a and α rise with s; α rises with P_MF; κ_m rises with P_MM, P_MF and P_FF and is convex in s, since it is Σ c² with every c
 *     linear in s: its greatest lies at an end of s, its least at an end or at s = −B/2A of κ_m = ¼(A s² + B s + C)
 *     some plants shed no pollen, which is not known: both cases are taken, as many seed parents shed it as can be, or none of them; where plants
 *     self, those that shed no pollen do not, and the greatest may lie between (mostWhereSomeShed)
 *
 * Takes a grow-out that knownLotFaults found sound. Gives probabilities. Source: derived from the recursion of lineage.
 */
export function driftEnds(lot: GrowOutAsKnown): DriftEnds {
  const foreign = lot.foreignPollen ?? 0;
  const { worst, best } = termsOf(lot);
  const canSelf = lot.sexes !== "separate" && lot.selfIncompatible !== true;
  const together = endsAt(worst, best, rateEnds(lot.selfingRate), foreign, canSelf);
  if (lot.seedParentsMayNotShed !== true || lot.sexes === "separate") return together;
  const noneShed = termsOf({ ...lot, sexes: "separate", selfIncompatible: false, seedParentsMayNotShed: false });
  const apart = endsAt(noneShed.worst, noneShed.best, { low: 0, high: 0 }, foreign, false);
  return canSelf && rateEnds(lot.selfingRate).high > 0 ? someShed(lot, apart) : both(together, apart);
}

/** Where those that shed pollen selfed, too: from none that did to the most that any of them could do. */
function someShed(lot: GrowOutAsKnown, apart: DriftEnds): DriftEnds {
  const foreign = lot.foreignPollen ?? 0;
  const { low, high } = rateEnds(lot.selfingRate);
  const { seedShares } = lot;
  const plants = { pollenParents: boundsOf(lot.pollenParents), seedParents: boundsOf(lot.seedParents), seedShares };
  const cases = [low, high].map((rate) => mostWhereSomeShed(plants, rate, foreign));
  const most = (of: (each: MostWhereSomeShed) => number) => Math.max(...cases.map(of));
  return {
    passing: { low: apart.passing.low, high: 1 - ((1 - most(({ selfed }) => selfed)) * foreign) / 2 },
    fromOnePlant: {
      low: apart.fromOnePlant.low,
      high: Math.max(
        apart.fromOnePlant.high,
        most(({ fromOnePlant }) => fromOnePlant),
      ),
    },
    insideOnePlant: { low: 0, high: most(({ insideOnePlant }) => insideOnePlant) },
  };
}

export function rateEnds(rate: number | Ends | undefined): Ends {
  return typeof rate === "object" ? rate : { low: rate ?? 0, high: rate ?? 0 };
}

/** A number of plants as bounds; without any, 1 or more. */
export function boundsOf(plants: PlantsKnown | undefined): CountBounds {
  if (plants === undefined) return { low: 1, high: null };
  return typeof plants === "number" ? { low: plants, high: plants } : plants;
}

/** Whether plants and shares are known throughout, so that only the selfing rate may be in bounds. */
export function plantsKnown(lot: GrowOutAsKnown): lot is GrowOutAsKnown & {
  readonly pollenParents: number;
  readonly seedParents: number;
  readonly seedShares: Shares;
} {
  const counted = typeof lot.pollenParents === "number" && typeof lot.seedParents === "number";
  return counted && lot.seedParentsMayNotShed !== true && sharesKnown(lot.seedShares);
}

function sharesKnown(shares: SharesKnown | undefined): boolean {
  return shares !== undefined && shares !== "unknown" && !(typeof shares === "object" && "largest" in shares);
}

/** The chances of one parent in common, at the worst and at the best that is known of the plants. */
export function termsOf(lot: GrowOutAsKnown): Pick<EndsOfTerms, "worst" | "best"> {
  if (plantsKnown(lot)) {
    const { pollenParents, seedParents, sexes, selfIncompatible, seedShares, pollenShares } = lot;
    const terms = sameParentTerms({ pollenParents, seedParents, sexes, selfIncompatible, seedShares, pollenShares });
    return { worst: terms, best: terms };
  }
  const { sexes, selfIncompatible, seedShares, seedParentsMayNotShed } = lot;
  const [pollenParents, seedParents] = [boundsOf(lot.pollenParents), boundsOf(lot.seedParents)];
  return endsOfTerms({ pollenParents, seedParents, sexes, selfIncompatible, seedShares, seedParentsMayNotShed });
}

function endsAt(
  worst: SameParentTerms,
  best: SameParentTerms,
  rate: Ends,
  foreign: number,
  canSelf: boolean,
): DriftEnds {
  const own = 1 - foreign;
  const inside = (s: number, { crossTerm }: SameParentTerms) => s + (canSelf ? (1 - s) * own * crossTerm : 0);
  const passing = (s: number) => 1 - ((1 - s) * foreign) / 2;
  if (worst === best && rate.low === rate.high) {
    const s = rate.low;
    return {
      passing: same(passing(s)),
      fromOnePlant: same(fromOnePlant(worst, s, own)),
      insideOnePlant: same(inside(s, worst)),
    };
  }
  return {
    passing: { low: passing(rate.low), high: passing(rate.high) },
    fromOnePlant: {
      low: Math.min(...[rate.low, rate.high, leastAt(best, own, rate)].map((s) => fromOnePlant(best, s, own))),
      high: Math.max(fromOnePlant(worst, rate.low, own), fromOnePlant(worst, rate.high, own)),
    },
    insideOnePlant: { low: inside(rate.low, best), high: inside(rate.high, worst) },
  };
}

function same(value: number): Ends {
  return { low: value, high: value };
}

function fromOnePlant({ seedParentTerm, crossTerm, pollenParentTerm }: SameParentTerms, s: number, own: number) {
  const u = (1 - s) * own;
  return ((1 + s) ** 2 * seedParentTerm + 2 * u * (1 + s) * crossTerm + u * u * pollenParentTerm) / 4;
}

/** The selfing rate between two at which κ_m is least. */
function leastAt({ seedParentTerm, crossTerm, pollenParentTerm }: SameParentTerms, own: number, rate: Ends): number {
  const a = seedParentTerm - 2 * own * crossTerm + own * own * pollenParentTerm;
  const b = 2 * (seedParentTerm - own * own * pollenParentTerm);
  return a > 0 ? Math.min(rate.high, Math.max(rate.low, -b / (2 * a))) : rate.low;
}

function both(one: DriftEnds, other: DriftEnds): DriftEnds {
  const widest = (a: Ends, b: Ends): Ends => ({ low: Math.min(a.low, b.low), high: Math.max(a.high, b.high) });
  return {
    passing: widest(one.passing, other.passing),
    fromOnePlant: widest(one.fromOnePlant, other.fromOnePlant),
    insideOnePlant: widest(one.insideOnePlant, other.insideOnePlant),
  };
}
