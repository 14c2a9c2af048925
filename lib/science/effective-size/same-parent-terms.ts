import { normalised, sumOfSquares } from "@/lib/science/effective-size/normalised";
import { cvOf, listed, type PlotParents } from "@/lib/science/effective-size/plot-parents";
import { pollenWithoutSelfing } from "@/lib/science/effective-size/pollen-without-selfing";

export interface SameParentTerms {
  /** P_MM: the chance that two seeds have the same seed parent */
  readonly seedParentTerm: number;
  /** P_FF: the chance that two outcrossed seeds have the same pollen parent */
  readonly pollenParentTerm: number;
  /** P_MF: the chance that the seed parent of one is the pollen parent of the other */
  readonly crossTerm: number;
}

/**
 * The three chances of one parent in common, from the parents of one grow-out.
 *
 *     P_MM = Σ q²       P_FF = Σ p²       P_MF = Σ q·p        (0 for separate sexes)
 *     self-incompatible: p* of pollenWithoutSelfing in place of p
 *     only a coefficient of variation known on either side:
 *     P_MM = (1 + cv²)/seed parents, P_FF = (1 + cv²)/pollen parents, P_MF = 1/pollen parents
 *
 * Takes parents that plotParentsFaults found sound. Source: as effectiveSize.
 */
export function sameParentTerms(plot: PlotParents): SameParentTerms {
  const seed = listed(plot.seedShares);
  const pollen = listed(plot.pollenShares);
  const q = seed && normalised(seed);
  const p = pollen && normalised(pollen);
  const { seedParents, pollenParents } = plot;
  const seedParentTerm = q ? sumOfSquares(q) : (1 + cvOf(plot.seedShares) ** 2) / seedParents;
  const pollenParentTerm = p ? sumOfSquares(p) : (1 + cvOf(plot.pollenShares) ** 2) / pollenParents;
  const onlySpreadKnown = cvOf(plot.seedShares) > 0 || cvOf(plot.pollenShares) > 0;

  if (plot.sexes === "separate") return { seedParentTerm, pollenParentTerm, crossTerm: 0 };
  if (onlySpreadKnown) return { seedParentTerm, pollenParentTerm, crossTerm: 1 / pollenParents };
  if (!p) return equalPollenTerms(plot, seedParentTerm);

  const qOfAll = q ? withZeros(q, pollenParents) : withZeros(equal(seedParents), pollenParents);
  const fathers = plot.selfIncompatible === true ? pollenWithoutSelfing(qOfAll, p) : p;
  const crossTerm = qOfAll.reduce((sum, share, plant) => sum + share * (fathers[plant] ?? 0), 0);
  return { seedParentTerm, pollenParentTerm: sumOfSquares(fathers), crossTerm };
}

/** Equal pollen needs no list of plants: p*ᵢ = (1 − qᵢ)/(N − 1) without selfing, 1/N with it. */
export function equalPollenTerms(
  plot: Pick<PlotParents, "pollenParents" | "selfIncompatible">,
  seedParentTerm: number,
): SameParentTerms {
  const n = plot.pollenParents;
  if (plot.selfIncompatible !== true) return { seedParentTerm, pollenParentTerm: 1 / n, crossTerm: 1 / n };
  return {
    seedParentTerm,
    pollenParentTerm: (n - 2 + seedParentTerm) / (n - 1) ** 2,
    crossTerm: (1 - seedParentTerm) / (n - 1),
  };
}

function equal(plants: number): number[] {
  return new Array<number>(plants).fill(1 / plants);
}

function withZeros(shares: readonly number[], plants: number): number[] {
  return [...shares, ...new Array<number>(plants - shares.length).fill(0)];
}
