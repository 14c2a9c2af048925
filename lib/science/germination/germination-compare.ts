import type { Interval } from "@/lib/science/binomial/interval";
import { fisherExact } from "@/lib/science/germination/fisher-exact";
import { USUAL_CONFIDENCE } from "@/lib/science/germination/germination-test";
import { newcombeInterval } from "@/lib/science/germination/newcombe-interval";
import { type ReplicateCounts, replicateFaults } from "@/lib/science/germination/test-counts";
import { faultsAmong, insideFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refused } from "@/lib/science/outcome";
import { ROUNDING_SLACK } from "@/lib/science/whole-steps";

export interface GerminationCompareInput {
  /** the earlier test, or the one lot */
  readonly a: Pick<ReplicateCounts, "sown" | "normal">;
  readonly b: Pick<ReplicateCounts, "sown" | "normal">;
  /** between 0 and 1; default 0.95 */
  readonly confidence?: number;
}

export interface GerminationCompare {
  /** pb − pa, −1 to 1 */
  readonly difference: number;
  readonly interval: Interval;
  readonly fisherP: number;
  /** fisherP ≤ 1 − confidence */
  readonly changed: boolean;
  readonly assumed: readonly Assumption[];
}

/**
 * Did germination really change between two tests? Small counts are judged by Fisher's exact test, never by a normal curve.
 *
 *     difference = pb − pa, its interval from the two Wilson intervals (newcombeInterval); changed where fisherP ≤ 1 − confidence
 *
 * p share of normal seedlings, 0..1. Refused: nothing sown, counts that are not whole, more germinated than sown.
 * Limits: two independent samples, tested under like conditions and on one basis.
 * Example: 47 of 50, then 40 of 50: p 0.071, not called a change. Source: Fisher 1935, J. R. Stat. Soc. 98:39-82; the interval
 * Newcombe 1998, Stat. Med. 17:873-890, method 10.
 */
export function germinationCompare(input: GerminationCompareInput): Outcome<GerminationCompare> {
  const { a, b } = input;
  const confidence = input.confidence ?? USUAL_CONFIDENCE;
  const faults = [
    ...replicateFaults(a, ["a"]),
    ...replicateFaults(b, ["b"]),
    ...faultsAmong(insideFault([], "confidence", confidence)),
  ];
  if (faults.length > 0) return refused(...faults);
  const fisherP = fisherExact(a.normal, a.sown, b.normal, b.sown);
  return accepted({
    difference: b.normal / b.sown - a.normal / a.sown,
    interval: newcombeInterval(a.normal, a.sown, b.normal, b.sown, confidence),
    fisherP,
    changed: fisherP <= (1 - confidence) * (1 + ROUNDING_SLACK),
    assumed: input.confidence === undefined ? [{ code: "confidence-95", text: "judged at 95 % confidence" }] : [],
  });
}
