import { type GerminationCompare, germinationCompare } from "@/lib/science/germination/germination-compare";
import type { TestOfLot } from "./tests-of-lot";

/** A test held against the one before it of the same lot. */
export type Compared =
  | { readonly how: "compared"; readonly earlier: TestOfLot; readonly comparison: GerminationCompare }
  /** the earlier test counted something else: normal seedlings and sprouted seeds are never read as one */
  | { readonly how: "other-basis"; readonly earlier: TestOfLot }
  | { readonly how: "first" }
  /** nothing was counted yet, or not up to its last day */
  | { readonly how: "not-done" };

/**
 * Compares a finished test with the last finished one before it on the same basis (one whose basis nobody wrote down counts as the same).
 * `tests` are all of the lot, in their order.
 */
export function comparedWithEarlier(tests: readonly TestOfLot[], testId: string): Compared {
  const at = tests.findIndex((test) => test.id === testId);
  const test = tests[at];
  if (test?.totals.stage !== "final") return { how: "not-done" };
  const before = tests.slice(0, at).filter((each) => each.totals.stage === "final");
  const latest = before.at(-1);
  if (!latest) return { how: "first" };
  const alike = before.findLast((each) => each.basis === null || test.basis === null || each.basis === test.basis);
  if (!alike) return { how: "other-basis", earlier: latest };
  const compared = germinationCompare({ a: countsOf(alike), b: countsOf(test) });
  return compared.ok ? { how: "compared", earlier: alike, comparison: compared.value } : { how: "not-done" };
}

function countsOf(test: TestOfLot): { sown: number; normal: number } {
  return { sown: test.totals.sown, normal: test.totals.sums.normal ?? 0 };
}
