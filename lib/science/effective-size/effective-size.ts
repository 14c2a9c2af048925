import { cvOf, listed, type PlotParents } from "@/lib/science/effective-size/plot-parents";
import { plotParentsAssumed } from "@/lib/science/effective-size/plot-parents-assumed";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import { sameParentProbability } from "@/lib/science/effective-size/same-parent-probability";
import { sameParentTerms } from "@/lib/science/effective-size/same-parent-terms";
import { countFault, faultsAmong, shareFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

export interface EffectiveSizeInput extends PlotParents {
  /** k: the next sowing raises exactly k plants from every seed parent, families kept apart */
  readonly plantsPerSeedParent?: number;
  /** F: inbreeding coefficient of the parents, 0 to 1; default 0 */
  readonly inbreeding?: number;
}

export interface EffectiveSize {
  /** Ne, plants; null where no two genes can come from one plant (κ = 0) */
  readonly effectiveSize: number | null;
  /** κ */
  readonly sameParentProbability: number;
  /** P_MM */
  readonly seedParentTerm: number;
  /** P_FF */
  readonly pollenParentTerm: number;
  /** P_MF */
  readonly crossTerm: number;
  /** 1/(2 Ne), share of the gene diversity */
  readonly diversityLost: number;
  readonly assumed: readonly Assumption[];
}

/**
 * The effective population size of one grow-out: how many equal plants would lose as little diversity as these did.
 *
 *     Ne = 1 / (κ (1 + F))          κ = Σ c² over the plants, cᵢ = (qᵢ + s qᵢ + (1 − s) pᵢ)/2
 *     with k plants raised from every seed parent: P_MM = (k − 1)/(k · seed parents − 1)
 *
 * Shapes and units: EffectiveSizeInput (plants, shares of any unit, rates 0 to 1), EffectiveSize (plants, probabilities).
 * Refused: more seed than pollen parents in a hermaphrodite crop, shares that do not match the plants, selfing where none
 * is possible, a coefficient of variation beyond √(n − 1), a single plant that cannot self, k without equal shares.
 * Limits: diploid, many more seeds kept than plants, each seed's father drawn independently; unselected parents.
 * Example: seed from 10 of 40 plants, self-incompatible: Ne 23.364.
 * Source: the contribution form Ne = 1/Σc² as in Lindgren & Mullin 1998, Can. J. For. Res. 28:276-283 and Crow & Denniston
 * 1988, Evolution 42:482-495; separate sexes Wright 1931, Genetics 16:97-159; F as in Pollak 1987, Genetics 117:353-360.
 */
export function effectiveSize(input: EffectiveSizeInput): Outcome<EffectiveSize> {
  const faults = effectiveSizeFaults(input);
  if (faults.length > 0) return refused(...faults);
  const terms = sameParentTerms(input);
  const k = input.plantsPerSeedParent;
  const seedParentTerm = k === undefined ? terms.seedParentTerm : (k - 1) / (k * input.seedParents - 1);
  const probability = sameParentProbability({ ...terms, seedParentTerm }, input.selfingRate ?? 0);
  const lost = probability * (1 + (input.inbreeding ?? 0));
  return accepted({
    effectiveSize: sizeThatLoses(lost),
    sameParentProbability: probability,
    seedParentTerm,
    pollenParentTerm: terms.pollenParentTerm,
    crossTerm: terms.crossTerm,
    diversityLost: lost / 2,
    assumed: assumedOf(input, probability),
  });
}

/**
 * Ne of parents that plotParentsFaults found sound, with inbreeding F: the same figure without its parts, for lineages of thousands of grow-outs.
 * Null where no two genes can come from one plant.
 */
export function sizeOfSoundParents(plot: PlotParents, inbreeding: number): number | null {
  return sizeThatLoses(sameParentProbability(sameParentTerms(plot), plot.selfingRate ?? 0) * (1 + inbreeding));
}

function sizeThatLoses(twice: number): number | null {
  return twice === 0 ? null : 1 / twice;
}

function effectiveSizeFaults(input: EffectiveSizeInput): Refusal[] {
  const k = input.plantsPerSeedParent;
  const faults = [
    ...plotParentsFaults(input),
    ...faultsAmong(countFault([], "plantsPerSeedParent", k, 1), shareFault([], "inbreeding", input.inbreeding)),
  ];
  if (faults.length > 0 || k === undefined) return faults;
  const path = ["plantsPerSeedParent"];
  if (!sharesAreEqual(input)) {
    const needed = "it needs equal seedShares: families kept apart and sown alike count alike";
    faults.push(
      refusal("unequal-families", path, k, "plants from every seed parent go with equal shares only", needed),
    );
  }
  if (k * input.seedParents < 2) {
    faults.push(
      refusal("too-few-plants", path, k, "plant from a single seed parent is no population", "raise 2 or more"),
    );
  }
  return faults;
}

function sharesAreEqual(input: EffectiveSizeInput): boolean {
  const seed = listed(input.seedShares);
  return seed ? seed.every((share) => share === seed[0]) : cvOf(input.seedShares) === 0;
}

function assumedOf(input: EffectiveSizeInput, probability: number): Assumption[] {
  if (probability === 0) return [];
  const alone = input.sexes !== "separate" && input.pollenParents === 1;
  const fixedFamilies = input.plantsPerSeedParent !== undefined;
  const assumed = plotParentsAssumed(input).filter(
    ({ code }) => !(fixedFamilies && code === "seed-shares-equal") && !(alone && code === "selfing-by-chance-only"),
  );
  if (input.inbreeding === undefined) {
    assumed.push({ code: "parents-not-inbred", text: "the parents were not inbred (inbreeding 0)" });
  }
  return assumed;
}
