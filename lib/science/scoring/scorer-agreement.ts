import { type Fault, faultsIn } from "@/lib/science/limits";
import {
  type Assumption,
  accepted,
  type Outcome,
  type Path,
  type Refusal,
  refusal,
  refused,
} from "@/lib/science/outcome";
import { type KappaWeights, type ScorePair, weightedKappa } from "@/lib/science/scoring/weighted-kappa";

export interface ScorerAgreementInput {
  /** lowest and highest score that may be given, whole */
  readonly scale: readonly [number, number];
  /** the same plant by the one and the other */
  readonly pairs: readonly ScorePair[];
  /** how far apart counts: by the square of the distance, or by the distance; default quadratic */
  readonly weights?: KappaWeights;
}

export interface ScorerAgreement {
  /** share of the plants with one and the same score */
  readonly exact: number;
  /** share within one point */
  readonly withinOne: number;
  /** mean of second less first, in points */
  readonly meanDifference: number;
  /** null below 20 plants, or where both always gave one score */
  readonly kappa: number | null;
  readonly standardError: number | null;
  readonly assumed: readonly Assumption[];
}

/** Fewer pairs tell too little of agreement beyond chance. */
const PAIRS_FOR_KAPPA = 20;

/**
 * How far two scorers (or one scorer twice) agree.
 *
 *     exact = Σ[a = b]/n;  within one = Σ[|a − b| ≤ 1]/n;  mean difference = Σ(b − a)/n;  κ and its standard error: weightedKappa, from 20 pairs on
 *
 * Shares 0..1, differences in classes of the scale. Refused: no pair, scores that are not whole or off the scale, a scale of one class.
 * Limits: plain, linear and quadratic kappa are not on one scale, so no word goes with them. Source: Cohen 1968, Psychol. Bull. 70:213-220; Fleiss, Cohen & Everitt 1969, 72:323-327.
 * Example: 118 slides in four classes by two pathologists, linear weights: κ 0.649, standard error 0.048.
 */
export function scorerAgreement(input: ScorerAgreementInput): Outcome<ScorerAgreement> {
  const { scale, pairs, weights = "quadratic" } = input;
  const faults = agreementFaults(scale, pairs);
  if (faults.length > 0) return refused(...faults);
  const share = (which: (pair: ScorePair) => boolean) => pairs.filter(which).length / pairs.length;
  const enough = pairs.length >= PAIRS_FOR_KAPPA;
  const agreement = enough ? weightedKappa(pairs, scale[1] - scale[0], weights) : null;
  return accepted({
    exact: share(([a, b]) => a === b),
    withinOne: share(([a, b]) => Math.abs(a - b) <= 1),
    meanDifference: pairs.reduce((sum, [a, b]) => sum + (b - a), 0) / pairs.length,
    kappa: agreement?.kappa ?? null,
    standardError: agreement?.standardError ?? null,
    assumed: assumedOf(input, agreement !== null),
  });
}

function agreementFaults([lowest, highest]: readonly [number, number], pairs: readonly ScorePair[]): Refusal[] {
  const faults = faultsIn([wholeFault(["scale", 0], lowest), wholeFault(["scale", 1], highest)]);
  if (faults.length === 0 && lowest >= highest) {
    const needed = "the lowest score stands first, the highest second";
    faults.push(refusal("scale-empty", ["scale"], `${lowest} to ${highest}`, "is no scale", needed));
  }
  if (pairs.length === 0) faults.push(refusal("no-pairs", ["pairs"], [], "holds no pair", "give at least one"));
  if (faults.length > 0) return faults;
  return faultsIn(
    pairs.flatMap((pair, index) =>
      pair.map((score, side) => scoreFault(["pairs", index, side], score, lowest, highest)),
    ),
  );
}

function wholeFault(path: Path, score: number): Fault {
  if (Number.isSafeInteger(score)) return undefined;
  return refusal("not-whole", path, score, "is no whole score", "a whole number is needed");
}

function scoreFault(path: Path, score: number, lowest: number, highest: number): Fault {
  if (Number.isSafeInteger(score) && score >= lowest && score <= highest) return undefined;
  return refusal("off-scale", path, score, "is off the scale", `a whole score from ${lowest} to ${highest} is needed`);
}

function assumedOf({ weights }: ScorerAgreementInput, weighed: boolean): Assumption[] {
  if (weights !== undefined || !weighed) return [];
  return [{ code: "quadratic-weights", text: "scores count as apart by the square of their distance" }];
}
