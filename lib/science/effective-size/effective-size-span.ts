import { endsOfTerms, mayBeApart, noneShed } from "@/lib/science/effective-size/ends-of-terms";
import type { PlotParents, Shares } from "@/lib/science/effective-size/plot-parents";
import { plotParentsAssumed } from "@/lib/science/effective-size/plot-parents-assumed";
import { sameParentProbability } from "@/lib/science/effective-size/same-parent-probability";
import type { SameParentTerms } from "@/lib/science/effective-size/same-parent-terms";
import { mostWhereSomeShed } from "@/lib/science/effective-size/some-shed";
import { spanFaults } from "@/lib/science/effective-size/span-faults";
import { type Assumption, accepted, type Outcome, refused } from "@/lib/science/outcome";

/** A number of plants as far as it is known: between `low` and `high`, both possible; high null: nothing bounds it. */
export interface CountBounds {
  readonly low: number;
  readonly high: number | null;
}

/** How the seed was shared among its parents: known, or that nobody wrote it down, or that only the largest share is known. */
export type SharesKnown = Shares | "unknown" | { readonly largest: number };

export interface EffectiveSizeSpanInput {
  /** plants that shed pollen; separate sexes: males */
  readonly pollenParents: CountBounds;
  /** plants whose seed was kept; among the pollen parents, or females where the sexes are separate */
  readonly seedParents: CountBounds;
  readonly sexes?: PlotParents["sexes"];
  /** s, 0 to 1; default 0 */
  readonly selfingRate?: number;
  /** default false */
  readonly selfIncompatible?: boolean;
  /** default "unknown": then one plant may have given nearly all of it */
  readonly seedShares?: SharesKnown;
  /** F of the parents, 0 to 1; default 0 */
  readonly inbreeding?: number;
  /** some plants shed no pollen and nobody wrote which: all, some or none of the seed parents shed it; default false */
  readonly seedParentsMayNotShed?: boolean;
}

export interface EffectiveSizeSpan {
  /** plants; the worst that what is recorded allows */
  readonly low: number;
  /** plants; the best; null where nothing bounds it */
  readonly high: number | null;
  readonly assumed: readonly Assumption[];
}

/**
 * The effective size of a grow-out where something was not counted: from the worst to the best that the records allow.
 *
 *     Ne = 1 / (κ (1 + F)), at the greatest κ and at the least          κ as in effectiveSize, pollen shared alike
 *     κ falls with the pollen parents and with the seed parents, and rises with P_MM, so the ends lie at:
 *     worst: fewest seed parents, fewest pollen parents (no fewer than the seed parents of a hermaphrodite), P_MM largest
 *     best:  most seed parents (no more than the pollen parents), most pollen parents, P_MM least
 *     P_MM: 1/seed parents where shares are equal, (1 + cv²)/seed parents, Σq² where listed, sumOfSquaresBounds where only the
 *     largest is known; where nothing is known from 1/seed parents to 1 (one plant gave nearly all)
 *     pollen parents without bound: their terms go to 0, which leaves 4·seed parents for equal shares and no selfing
 *     seed parents that may not have shed: also the case of none that did, as if the sexes were separate (see endsOfTerms); where plants
 *     self, only those that shed pollen did: any number of them (see mostWhereSomeShed)
 *
 * Both ends equal where nothing is missing: it is then effectiveSize. Refused: bounds in the wrong order or below 1 plant, more
 * seed than pollen parents of a hermaphrodite, shares that fit no possible count, neither number bounded and nothing to say.
 * Limits: those of effectiveSize; unequal pollen only lowers both ends.
 * Example: 10 seed parents, equal, pollen parents between 10 and 60: 10.0 to 26.7.
 * Source: derived from Ne = 1/Σc²; the case of equal shares is 4·Nf·Nm/(Nm + 3·Nf) at both ends of Nm.
 */
export function effectiveSizeSpan(input: EffectiveSizeSpanInput): Outcome<EffectiveSizeSpan> {
  const faults = spanFaults(input);
  if (faults.length > 0) return refused(...faults);
  const { worst, best, fewestPollen, mostSeed } = endsOfTerms(input);
  const cases = [{ of: input, worst, best }];
  if (mayBeApart(input)) {
    const of = noneShed(input);
    cases.push({ of, ...endsOfTerms(of) });
  }
  const highs = cases.map((each) => sizeOf(each.of, each.best));
  const lows = cases.map((each) => sizeOf(each.of, each.worst) ?? 0);
  if (mayBeApart(input) && (input.selfingRate ?? 0) > 0) {
    const { fromOnePlant } = mostWhereSomeShed(input, input.selfingRate ?? 0);
    lows[0] = 1 / (fromOnePlant * (1 + (input.inbreeding ?? 0)));
  }
  return accepted({
    low: Math.min(...lows),
    high: highs.reduce((most, high) => (most === null || high === null ? null : Math.max(most, high))),
    assumed: assumedOf(input, fewestPollen, mostSeed),
  });
}

/** Ne at one admissible case; null where κ is 0. */
function sizeOf(input: EffectiveSizeSpanInput, terms: SameParentTerms): number | null {
  const lost = sameParentProbability(terms, input.selfingRate ?? 0) * (1 + (input.inbreeding ?? 0));
  return lost === 0 ? null : 1 / lost;
}

function assumedOf(input: EffectiveSizeSpanInput, pollenParents: number, seedParents: number): Assumption[] {
  const { sexes, selfingRate, selfIncompatible } = input;
  const many = { pollenParents: Math.max(2, pollenParents), seedParents: Math.max(2, seedParents) };
  const ofPlot = plotParentsAssumed({ ...many, sexes, selfingRate, selfIncompatible, seedShares: "equal" });
  const ofParents =
    input.inbreeding === undefined
      ? [{ code: "parents-not-inbred", text: "the parents were not inbred (inbreeding 0)" }]
      : [];
  return [...ofPlot, ...ofParents];
}
