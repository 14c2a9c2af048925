import { shareFault } from "@/lib/science/limits";
import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageLot } from "@/lib/science/lineage/lots";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { adviseMix, type MixAdvice } from "./advise-mix";

export interface BlendAdviceInput {
  /** in any order, as in lineage */
  readonly lots: readonly LineageLot[];
  /** lots that could be mixed */
  readonly candidates: readonly string[];
  /** a lot that goes in makes up this share of the living seeds at least; 0 to 1, default 0 */
  readonly minShare?: number;
}

export interface BlendAdvice extends MixAdvice {
  readonly assumed: readonly Assumption[];
}

/**
 * The mix of lots that keeps most diversity: shares w of the living seeds that make the coancestry of the blend least.
 *
 *     θ = ΣΣ w w' Θ → min,  Σ w = 1,  each w 0 or ≥ minShare
 *
 * Θ(A, B) from the lineage, θ_A on the diagonal. Foreign pollen lowers Θ: lots with it are to be left out before. Shares are dimensionless;
 * θ within 1e-12. Refused: what lineage refuses, no candidates, one that is no lot of the lineage or stands twice, a share outside 0 to 1,
 * and a search that would take too long.
 * Source: minimum coancestry as the rule of management, Caballero & Toro 2000, Genet. Res. 75:331-343.
 */
export function blendAdvice({ lots, candidates, minShare = 0 }: BlendAdviceInput): Outcome<BlendAdvice> {
  const faults = [...candidateFaults(lots, candidates), shareFault([], "minShare", minShare)].filter(
    (fault): fault is Refusal => fault !== undefined,
  );
  const pairs = candidates.flatMap((a, place) => candidates.slice(place + 1).map((b): [string, string] => [a, b]));
  const followed = lineage(faults.length > 0 ? { lots } : { lots, pairs });
  if (!followed.ok) return refused(...followed.refusals, ...faults);
  if (faults.length > 0) return refused(...faults);
  const own = new Map(followed.value.lots.map((lot) => [lot.id, lot.coancestry]));
  const gram = candidates.map(() => new Float64Array(candidates.length));
  let next = 0;
  candidates.forEach((a, i) => {
    (gram[i] as Float64Array)[i] = own.get(a) as number;
    for (let j = i + 1; j < candidates.length; j++) {
      const between = followed.value.pairs[next]?.coancestry as number;
      (gram[i] as Float64Array)[j] = between;
      (gram[j] as Float64Array)[i] = between;
      next += 1;
    }
  });
  const advice = adviseMix(candidates, gram, minShare);
  return advice.ok ? accepted({ ...advice.value, assumed: followed.value.assumed }) : advice;
}

function candidateFaults(lots: readonly LineageLot[], candidates: readonly string[]): Refusal[] {
  const path = ["candidates"];
  if (candidates.length === 0) {
    return [refusal("no-candidates", path, candidates, "names no lot", "name the lots that could be mixed")];
  }
  const known = new Set(lots.map(({ id }) => id));
  return candidates.flatMap((id, place) => {
    const at = [...path, place];
    if (!known.has(id)) {
      return [refusal("unknown-lot", at, id, "is no lot of this lineage", "name one of the lots above")];
    }
    if (candidates.indexOf(id) < place)
      return [refusal("repeated-id", at, id, "stands here a second time", "name each once")];
    return [];
  });
}
