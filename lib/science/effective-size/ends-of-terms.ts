import type { EffectiveSizeSpanInput, SharesKnown } from "@/lib/science/effective-size/effective-size-span";
import { normalised, sumOfSquares } from "@/lib/science/effective-size/normalised";
import { cvOf, isCv, listed, type Shares } from "@/lib/science/effective-size/plot-parents";
import { equalPollenTerms, type SameParentTerms } from "@/lib/science/effective-size/same-parent-terms";
import { sumOfSquaresBounds } from "@/lib/science/effective-size/sum-of-squares-bounds";
import { accepted } from "@/lib/science/outcome";
import { ROUNDING_SLACK } from "@/lib/science/whole-steps";

export interface EndsOfTerms {
  /** where κ is greatest */
  readonly worst: SameParentTerms;
  /** where κ is least */
  readonly best: SameParentTerms;
  /** pollen parents of the worst case */
  readonly fewestPollen: number;
  /** seed parents of the best; without bound Infinity */
  readonly mostSeed: number;
}

/**
 * The chances of one parent in common at the two ends of what is known of a grow-out's plants, pollen shared alike.
 *
 *     worst: fewest seed parents, fewest pollen parents (no fewer than the seed parents of a hermaphrodite), P_MM largest
 *     best:  most seed parents (no more than the pollen parents), most pollen parents, P_MM least
 *
 *     seed parents that may not have shed: any number of pollen parents of which as many as can be gave seed, so that
 *     P_MF = 1/max(pollen parents, seed parents) of alike shares, at most 1/pollen parents of others; none that shed: noneShed
 *
 * Takes what spanFaults found sound; gives probabilities. At the worst κ is greatest and P_MF, P_FF too where no plant is
 * self-incompatible; at the best all are least. Source: as effectiveSizeSpan.
 */
export function endsOfTerms(input: EffectiveSizeSpanInput): EndsOfTerms {
  const separate = input.sexes === "separate";
  const apart = separate || mayBeApart(input);
  const shares = input.seedShares ?? "unknown";
  const most = input.pollenParents.high ?? Number.POSITIVE_INFINITY;
  const mostSeed = Math.min(
    input.seedParents.high ?? Number.POSITIVE_INFINITY,
    apart ? Number.POSITIVE_INFINITY : most,
  );
  const fewestSeed = Math.max(input.seedParents.low, fewestFor(shares));
  const fewestPollen = Math.max(
    input.pollenParents.low,
    apart ? 1 : fewestSeed,
    input.selfIncompatible === true && !separate ? 2 : 1,
  );
  return {
    worst: termsAt(input, fewestPollen, fewestSeed, seedTerm(shares, fewestSeed, "max")),
    best: termsAt(input, most, mostSeed, seedTerm(shares, mostSeed, "min")),
    fewestPollen,
    mostSeed,
  };
}

/** Whether some, or all, of the seed parents of a hermaphrodite may have shed no pollen. */
export function mayBeApart({ sexes, seedParentsMayNotShed }: EffectiveSizeSpanInput): boolean {
  return seedParentsMayNotShed === true && sexes !== "separate";
}

/** The same plants where none of the seed parents shed pollen: then none selfed, either. */
export function noneShed<Plants extends EffectiveSizeSpanInput>(input: Plants): Plants {
  return { ...input, sexes: "separate", selfingRate: 0, selfIncompatible: false };
}

/** The fewest plants among which shares can be so unlike. */
export function fewestFor(shares: SharesKnown): number {
  if (typeof shares === "string") return 1;
  if ("largest" in shares) return Math.ceil(1 / shares.largest - 1e-9);
  return isCv(shares) ? Math.ceil(shares.cv ** 2 + 1 - 1e-9) : 1;
}

function termsAt(
  input: EffectiveSizeSpanInput,
  pollenParents: number,
  seedParents: number,
  seedParentTerm: number,
): SameParentTerms {
  if (pollenParents === Number.POSITIVE_INFINITY) return { seedParentTerm, pollenParentTerm: 0, crossTerm: 0 };
  if (input.sexes === "separate") return { seedParentTerm, pollenParentTerm: 1 / pollenParents, crossTerm: 0 };
  // A spread alone says nothing of which plant selfed, so chance selfing stays in, as in effectiveSize.
  const { seedShares } = input;
  const spreadOnly = typeof seedShares === "object" && isCv(seedShares as Shares) && cvOf(seedShares as Shares) > 0;
  const selfIncompatible = input.selfIncompatible === true && !spreadOnly;
  const terms = equalPollenTerms({ pollenParents, selfIncompatible }, seedParentTerm);
  // Alike seed parents of which at most as many shed as there are pollen parents; P_MM is 0 where nothing bounds their number.
  const alike = !spreadOnly && (seedParentTerm === 0 || seedParentTerm * seedParents <= 1 + ROUNDING_SLACK);
  return alike && !selfIncompatible && seedParents > pollenParents ? { ...terms, crossTerm: seedParentTerm } : terms;
}

/** P_MM of so many seed parents at its largest or least. */
function seedTerm(shares: SharesKnown, seedParents: number, end: "min" | "max"): number {
  if (shares === "unknown") return end === "max" ? 1 : 1 / seedParents;
  if (shares === "equal") return 1 / seedParents;
  if ("largest" in shares) {
    const bounds = Number.isFinite(seedParents)
      ? sumOfSquaresBounds({ plants: seedParents, largest: shares.largest })
      : accepted({ min: shares.largest ** 2, max: 1 });
    return bounds.ok ? bounds.value[end] : 1;
  }
  const list = listed(shares);
  return list ? sumOfSquares(normalised(list)) : (1 + cvOf(shares) ** 2) / seedParents;
}
