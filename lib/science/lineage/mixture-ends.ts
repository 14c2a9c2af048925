import type { CoancestryEnds, Part } from "@/lib/science/lineage/coancestry-ends";
import type { Ends } from "@/lib/science/lineage/span-lots";

type OfLot = (rank: number) => Ends;
type OfPair = CoancestryEnds["between"];

/**
 * θ̄, the coancestry of two seeds of a mixture of lots, at its least and at its greatest, where some shares may not be known.
 *
 *     θ̄ = w'Θw; parts U of unknown share hold r = 1 − Σ w together, in some shares u among themselves:
 *     θ̄ = ΣΣ w w' Θ + 2 r Σ w Θ(A, U) + r² u'Θu          known parts at either end; Θ(A, U) between its least and greatest over U
 *     u'Θu ≤ greatest θ in U                                     a mixture is most alike where it is one part alone
 *     u'Θu ≥ b + 1/Σ 1/(θ_A − b), b: the least Θ between two of U     reached at shares in proportion to 1/(θ_A − b); least θ where some θ_A ≤ b
 *     θ̄ ≤ Σ w θ + r · (greatest θ in U)                          at either end, for Θ is a matrix of inner products: Θ(A, B) ≤ ½(θ_A + θ_B)
 *
 * Takes the parts of one lot, θ of a lot and Θ of a pair, at both ends each. Gives probabilities.
 * Source: derived; the last line and the convexity from coancestry as an inner product of allele frequencies, Cockerham 1967, Genetics 56:89-104.
 */
export function mixtureEnds(parts: readonly Part[], own: OfLot, between: OfPair): Ends {
  const [only] = parts;
  if (only !== undefined && parts.length === 1) return own(only.rank);
  const known = parts.filter((part): part is Part & { readonly share: number } => part.share !== null);
  const unknown = parts.flatMap(({ rank, share }) => (share === null ? [rank] : []));
  const rest = restOf(parts);
  const ofRest = rest > 0 ? unknown.map(own) : [];
  let low = rest > 0 ? rest * rest * leastOfMixture(unknown, own, between) : 0;
  let high = rest * rest * greatest(ofRest);
  let unmixedLow = rest * least(ofRest);
  let unmixedHigh = rest * greatest(ofRest);
  for (const a of known) {
    const alone = own(a.rank);
    unmixedLow += a.share * alone.low;
    unmixedHigh += a.share * alone.high;
    for (const b of known) {
      const pair = a.rank === b.rank ? alone : between(a.rank, b.rank);
      low += a.share * b.share * pair.low;
      high += a.share * b.share * pair.high;
    }
    if (rest === 0) continue;
    const toRest = unknown.map((rank) => between(a.rank, rank));
    low += 2 * rest * a.share * least(toRest);
    high += 2 * rest * a.share * greatest(toRest);
  }
  return { low: Math.min(low, unmixedLow), high: Math.min(high, unmixedHigh) };
}

/** r: what the parts of unknown share hold together. */
export function restOf(parts: readonly Part[]): number {
  if (parts.every(({ share }) => share !== null)) return 0;
  return Math.max(
    0,
    parts.reduce((left, { share }) => left - (share ?? 0), 1),
  );
}

/** A mean over the parts at both ends: Σ w v, and r times the least or the greatest v of the parts of unknown share. */
export function meanEnds(parts: readonly Part[], of: OfLot): Ends {
  const rest = restOf(parts);
  const ofRest = rest > 0 ? parts.flatMap(({ rank, share }) => (share === null ? [of(rank)] : [])) : [];
  let low = rest * least(ofRest);
  let high = rest * greatest(ofRest);
  for (const { rank, share } of parts) {
    if (share === null) continue;
    const ends = of(rank);
    low += share * ends.low;
    high += share * ends.high;
  }
  return { low, high };
}

/** u'Θu at its least, u any shares. */
function leastOfMixture(ranks: readonly number[], own: OfLot, between: OfPair): number {
  const alone = ranks.map((rank) => own(rank).low);
  const leastAlone = Math.min(...alone);
  const pairs = ranks.flatMap((a, place) => ranks.slice(place + 1).map((b) => between(a, b).low));
  const apart = Math.min(...pairs);
  if (leastAlone <= apart) return leastAlone;
  return apart + 1 / alone.reduce((sum, theta) => sum + 1 / (theta - apart), 0);
}

function least(ends: readonly Ends[]): number {
  return ends.reduce((min, { low }) => Math.min(min, low), ends[0]?.low ?? 0);
}

function greatest(ends: readonly Ends[]): number {
  return ends.reduce((max, { high }) => Math.max(max, high), 0);
}
