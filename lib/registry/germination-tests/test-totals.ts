import { type CountKind, sumsByKind } from "@/lib/schemas/germination-test/counts";
import { type StoredCount, standingCounts } from "./standing-counts";

/** How far a test has come: laid out and not counted, counted before its last day, or done. */
export type TestStage = "set up" | "running" | "final";

export interface TestTotals {
  readonly sown: number;
  readonly sums: Readonly<Record<CountKind, number | null>>;
  /** seeds not yet found to be anything */
  readonly left: number;
  readonly counted: boolean;
  /** the last day on which something was counted; null where no day was written down */
  readonly lastDay: number | null;
  readonly stage: TestStage;
}

interface StoredReplicate {
  readonly sown: number;
  readonly counts: readonly StoredCount[];
}

/**
 * What the standing counts of a test come to. A test with a final count day runs until it was counted on that day or later, or until no
 * seed is left; one without runs until it was counted once.
 */
export function testTotals(test: {
  readonly finalCountDay: number | null;
  readonly replicates: readonly StoredReplicate[];
}): TestTotals {
  const counts = test.replicates.flatMap((replicate) => standingCounts(replicate.counts));
  const sown = test.replicates.reduce((sum, replicate) => sum + replicate.sown, 0);
  const sums = sumsByKind(counts);
  const found = Object.values(sums).reduce<number>((sum, kind) => sum + (kind ?? 0), 0);
  const days = counts.flatMap((count) => count.day ?? []);
  const lastDay = days.length > 0 ? Math.max(...days) : null;
  const counted = counts.length > 0;
  const early = test.finalCountDay !== null && lastDay !== null && lastDay < test.finalCountDay;
  const stage = !counted ? "set up" : early && found < sown ? "running" : "final";
  return { sown, sums, left: sown - found, counted, lastDay, stage };
}
