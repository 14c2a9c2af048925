import { percentSpan } from "@/lib/display/numbers";
import { type CountKind, seedsIn, sumsByKind } from "@/lib/schemas/germination-test/counts";
import { exactInterval } from "@/lib/science/binomial/exact-interval";
import { USUAL_CONFIDENCE } from "@/lib/science/germination/germination-test";
import type { ReplicateCounts } from "@/lib/science/germination/test-counts";
import type { ColumnFoot } from "./count-sheet";
import type { EntryReplicate, StandingDay } from "./sheet-entry";

/** What a sheet has come to: the replicates that were counted, the foot of every column, and whether seeds are left. */
export interface SoFar {
  readonly counted: readonly ReplicateCounts[];
  readonly feet: readonly ColumnFoot[];
  readonly left: number;
}

/** Sums the counts of a sheet with what stood before. A replicate of which nothing was counted has no share: not counted is not none. */
export function countedSoFar(
  replicates: readonly EntryReplicate[],
  standing: readonly (readonly StandingDay[])[] = [],
): SoFar {
  const counted: ReplicateCounts[] = [];
  let left = 0;
  const feet = replicates.map(({ sown, counts }, index): ColumnFoot => {
    const all = [...(standing[index] ?? []), ...counts];
    const found = all.reduce((sum, count) => sum + seedsIn(count), 0);
    left += Math.max(0, sown - found);
    const { normal, ...others } = sumsByKind(all);
    if (all.length === 0 || sown < 1) return { up: "", left: sown < 1 ? "" : String(sown), share: "" };
    const told = Object.fromEntries(Object.entries(others).filter(([, seeds]) => seeds !== null)) as Partial<
      Record<CountKind, number>
    >;
    if (found <= sown) counted.push({ sown, normal: normal ?? 0, ...told });
    const span = found <= sown ? exactInterval(normal ?? 0, sown, USUAL_CONFIDENCE) : null;
    return {
      up: `${normal ?? 0} of ${sown}`,
      left: found > sown ? `${found - sown} too many` : String(sown - found),
      share: span ? percentSpan(span.low, span.high) : "",
    };
  });
  return { counted, feet, left };
}
