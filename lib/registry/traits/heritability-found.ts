import { type HistoryOfTrait, historyOfTrait } from "./history-of-trait";
import { type TraitRows, traitsScored, traitYearsOf } from "./read-trait-years";

/** What of a differential stayed in a variety, as a span from 0 to 1, and over what it was found. */
export interface HeritabilityFound {
  readonly low: number;
  readonly high: number;
  readonly from: string;
}

/**
 * The realised heritability of each trait in which a variety was chosen for three cycles or more beside a check, by the trait's first version; beside the check of the
 * most cycles. A span that leaves nothing of 0 to 1, or all of it, tells nothing and is left out. How it comes about: `cycles-of-trait`.
 */
export function heritabilityFound(rows: TraitRows): ReadonlyMap<string, HeritabilityFound> {
  return new Map(
    traitsScored(rows).flatMap(({ id }) => {
      const read = traitYearsOf(rows, id);
      const histories = read.checks.flatMap(({ varietyId }) => historyOfTrait(read, varietyId) ?? []);
      const told = histories.flatMap(spanOf).sort((one, other) => other.cycles - one.cycles)[0];
      return told ? [[id, told.found] as const] : [];
    }),
  );
}

function spanOf({ cycles, check }: HistoryOfTrait): { cycles: number; found: HeritabilityFound }[] {
  if (!cycles?.span || !check) return [];
  const [low, high] = [Math.max(0, cycles.span.low), Math.min(1, cycles.span.high)];
  if (low > high || (low === 0 && high === 1)) return [];
  const count = cycles.cycles.length - 1;
  return [{ cycles: count, found: { low, high, from: `${count} cycles beside ${check.variety}` } }];
}
