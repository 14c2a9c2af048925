import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { type Count, seedsIn } from "./counts";

/** A replicate as the rule needs it. */
export interface CountedReplicate {
  readonly name: string;
  readonly sown: number;
  readonly counts: readonly Pick<Count, "day" | "normal" | "abnormal" | "hard" | "fresh" | "dead">[];
}

/**
 * The rules that bind the counts of one replicate: together they may not pass what was sown (refused at the count that passes it, in
 * the order of days), and a day stands once. `path` leads to the replicate.
 */
export function countsAgainstSown(replicate: CountedReplicate, path: Path): Refusal[] {
  const refusals: Refusal[] = [];
  const days = new Set<number | null>();
  const inOrder = replicate.counts.map((count, index) => ({ count, index })).sort((a, b) => dayOf(a) - dayOf(b));
  let taken = 0;
  let passed = false;
  for (const { count, index } of inOrder) {
    const where = [...path, "counts", index];
    if (days.has(count.day)) {
      const which = count.day === null ? "the count without a day" : `day ${count.day}`;
      refusals.push(
        refusal(
          "day-twice",
          [...where, "day"],
          count.day,
          `stands twice in replicate ${replicate.name}`,
          `${which} can be counted once; put both into one count`,
        ),
      );
    }
    days.add(count.day);
    const before = replicate.sown - taken;
    taken += seedsIn(count);
    if (taken > replicate.sown && !passed) {
      passed = true;
      refusals.push(
        refusal(
          "past-sown",
          where,
          seedsIn(count),
          `passes what was left in replicate ${replicate.name}`,
          `of ${replicate.sown} sown only ${Math.max(0, before)} were left to count${count.day === null ? "" : ` on day ${count.day}`}; count only what is new that day`,
        ),
      );
    }
  }
  return refusals;
}

function dayOf({ count, index }: { count: { day: number | null }; index: number }): number {
  return (count.day ?? Number.MAX_SAFE_INTEGER) + index * 1e-9;
}
