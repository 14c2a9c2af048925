import { faultsAmong, shareFault } from "@/lib/science/limits";
import type { Ends, FounderPair, LotAsKnown } from "@/lib/science/lineage/span-lots";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { ROUNDING_SLACK } from "@/lib/science/whole-steps";

/**
 * How near two founders are, at the least and the most.
 *
 *     known: Θ(a, b) itself;  not known: from 0 to the lesser of θ_a and θ_b
 *
 * At the most both come from one pool: the older as it was then, the younger as it became since, so that they share what the older is to
 * itself, θ of the older, which is the lesser of the two. Where the older holds more within itself than the younger, both can only come from
 * a pool that is older still, and share no more than the younger holds. Gives probabilities. Source: coancestry of a pool with what
 * descends from it, Θ(A, X) = θ_A along a line, as in lineage.
 */
export function pairEnds({ a, b, coancestry }: FounderPair, lots: ReadonlyMap<string, LotAsKnown>): Ends {
  if (coancestry !== "unknown") return { low: coancestry, high: coancestry };
  return { low: 0, high: Math.min(within(lots.get(a)), within(lots.get(b))) };
}

export function founderPairFaults(pairs: readonly FounderPair[], lots: ReadonlyMap<string, LotAsKnown>): Refusal[] {
  const seen = new Set<string>();
  return pairs.flatMap((pair, place) => {
    const at = ["founderPairs", place];
    const faults = (["a", "b"] as const).flatMap((side) => founderFault(pair[side], [...at, side], lots));
    if (faults.length > 0) return faults;
    const key = [pair.a, pair.b].sort().join("\u0000");
    if (pair.a === pair.b || seen.has(key)) {
      const wrong = pair.a === pair.b ? "is paired with itself" : "is paired with the same lot a second time";
      return [refusal("repeated-pair", [...at, "b"], pair.b, wrong, "name each two founders once")];
    }
    seen.add(key);
    return pair.coancestry === "unknown" ? [] : nearnessFault(pair, pair.coancestry, at, lots);
  });
}

function founderFault(id: string, path: (string | number)[], lots: ReadonlyMap<string, LotAsKnown>): Refusal[] {
  if (lots.get(id)?.kind === "founder") return [];
  const needed = "name two founders of the lots above: how near all others are follows from their parents";
  return [refusal("no-founder", path, id, "is no founder of this lineage", needed)];
}

function nearnessFault(
  pair: FounderPair,
  given: number,
  at: (string | number)[],
  lots: ReadonlyMap<string, LotAsKnown>,
) {
  const faults = faultsAmong(shareFault(at, "coancestry", given));
  const most = Math.min(within(lots.get(pair.a)), within(lots.get(pair.b)));
  if (faults.length > 0 || given <= most + ROUNDING_SLACK) return faults;
  const needed = `two lots share no more than either holds within itself: at most ${most}, or write a higher coancestry inside both founders`;
  return [refusal("kin-too-near", [...at, "coancestry"], given, "is too near for two founders", needed)];
}

function within(lot: LotAsKnown | undefined): number {
  return lot?.kind === "founder" ? (lot.coancestry ?? 0) : 0;
}
