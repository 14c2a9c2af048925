/** Scores of two people of one plant. */
export type ScorePair = readonly [number, number];

export type KappaWeights = "quadratic" | "linear";

export interface WeightedKappa {
  readonly kappa: number;
  readonly standardError: number;
}

/**
 * Agreement of two scorers beyond chance, by the distance of their scores.
 *
 *     w = 1 − (|i − j|/(K − 1))²  or ¹          κ = (Po − Pe)/(1 − Pe),  Po = Σ w p_ij,  Pe = Σ w p_i. p_.j
 *     var = { Σ p_ij [w_ij − (w̄_i. + w̄_.j)(1 − κ)]² − [κ − Pe(1 − κ)]² } / (n (1 − Pe)²)
 *
 * K: classes of the whole scale, used or not. Null where Pe = 1: both always gave one and the same score.
 * Source: Cohen 1968, Psychol. Bull. 70:213-220; standard error Fleiss, Cohen & Everitt 1969, Psychol. Bull. 72:323-327.
 */
export function weightedKappa(pairs: readonly ScorePair[], span: number, weights: KappaWeights): WeightedKappa | null {
  const n = pairs.length;
  const weight = (a: number, b: number) => 1 - (Math.abs(a - b) / span) ** (weights === "quadratic" ? 2 : 1);
  const first = countsOf(pairs.map(([a]) => a));
  const second = countsOf(pairs.map(([, b]) => b));
  const meanWeight = (score: number, others: ReadonlyMap<number, number>) =>
    [...others].reduce((sum, [other, count]) => sum + (count / n) * weight(score, other), 0);
  const ofFirst = new Map([...first.keys()].map((score) => [score, meanWeight(score, second)]));
  const ofSecond = new Map([...second.keys()].map((score) => [score, meanWeight(score, first)]));

  const observed = pairs.reduce((sum, [a, b]) => sum + weight(a, b), 0) / n;
  const byChance = [...first].reduce((sum, [score, count]) => sum + (count / n) * (ofFirst.get(score) as number), 0);
  if (first.size === 1 && second.size === 1 && first.has([...second.keys()][0] as number)) return null;
  const kappa = (observed - byChance) / (1 - byChance);
  const squares = pairs.reduce((sum, [a, b]) => {
    const expected = ((ofFirst.get(a) as number) + (ofSecond.get(b) as number)) * (1 - kappa);
    return sum + (weight(a, b) - expected) ** 2;
  }, 0);
  const variance = (squares / n - (kappa - byChance * (1 - kappa)) ** 2) / (n * (1 - byChance) ** 2);
  return { kappa, standardError: Math.sqrt(Math.max(0, variance)) };
}

function countsOf(scores: readonly number[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const score of scores) counts.set(score, (counts.get(score) ?? 0) + 1);
  return counts;
}
