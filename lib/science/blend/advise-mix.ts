import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Gram, mixed } from "./least-mix";
import { leastMixOfSome, MOST_WORK } from "./least-mix-of-some";

export interface MixAdvice {
  /** those above 0, in the candidates' order */
  readonly shares: readonly { readonly id: string; readonly share: number }[];
  /** θ of the blend */
  readonly coancestry: number;
  /** 1 − θ */
  readonly diversityRetained: number;
  /** the candidate that keeps most by itself; of equals the first */
  readonly bestSingle: { readonly id: string; readonly diversityRetained: number };
}

/**
 * The mix of least coancestry from the coancestries of the candidates, in their order (own θ on the diagonal). For callers that have
 * them: the page computes with it while amounts change. `mostWork` bounds the search. Refused: a search through the choices of lots that would take too long.
 */
export function adviseMix(
  candidates: readonly string[],
  coancestry: Gram,
  minShare: number,
  mostWork = MOST_WORK,
): Outcome<MixAdvice> {
  const found = leastMixOfSome(coancestry, minShare, mostWork);
  if (found === null) {
    const needed = "name fewer lots, or ask for no smallest share";
    return refused(
      refusal(
        "too-many-choices",
        ["candidates"],
        candidates.length,
        "lots leave too many choices to look through",
        needed,
      ),
    );
  }
  const theta = Math.max(0, mixed(coancestry, found));
  const own = candidates.map((_, i) => coancestry[i]?.[i] as number);
  const single = own.reduce((best, each, i) => (each < (own[best] as number) ? i : best), 0);
  return accepted({
    shares: candidates.flatMap((id, i) => ((found[i] as number) > 0 ? [{ id, share: found[i] as number }] : [])),
    coancestry: theta,
    diversityRetained: 1 - theta,
    bestSingle: { id: candidates[single] as string, diversityRetained: 1 - (own[single] as number) },
  });
}
