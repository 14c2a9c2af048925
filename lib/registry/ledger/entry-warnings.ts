import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { Assumption } from "@/lib/science/outcome";
import type { Balance, BookedEntry } from "./balance";

/** What is known of a lot beside its ledger. */
export interface LotInTime {
  /** first possible day of its harvest */
  readonly yearFirst: string | null;
  readonly year: string | null;
}

/** An entry with what stands on its other side: another lot, a steward, or words. */
type EntryWithOther = BookedEntry & {
  readonly other: string | null;
  readonly otherStewardId?: string | null;
  readonly otherLotId?: string | null;
};

/** A weighing may stand this far above the balance before it is odd. */
const tolerableGain = 1.05;

/** The other side of an entry that names none. */
const untold = "";

/**
 * What looks implausible about the standing entries of a ledger, by the entry's id. Suspicious is not wrong: it is shown with the
 * entry for as long as it looks so, and never stops anything.
 */
export function entryWarnings(
  balance: Balance<EntryWithOther>,
  lot: LotInTime,
  today: CivilDay,
): ReadonlyMap<string, Assumption[]> {
  const warnings = new Map<string, Assumption[]>();
  const warn = (entry: BookedEntry, code: string, text: string) =>
    warnings.set(entry.id, [...(warnings.get(entry.id) ?? []), { code, text }]);
  const seen = new Map<string, Set<string>>();
  let before = 0;
  for (const { entry, balance: held, change } of balance.steps) {
    if (lot.yearFirst !== null && entry.onLast < lot.yearFirst)
      warn(entry, "before-harvest", `this is dated before the harvest of the lot (${lot.year})`);
    if (entry.onFirst > today) warn(entry, "not-yet", "this day has not come yet");
    if (entry.kind === "weighed" && before > 0 && held > before * tolerableGain)
      warn(
        entry,
        "weighed-more",
        `weighed ${Math.round((held / before - 1) * 100)} % more than the entries before it leave`,
      );
    const likeness = [entry.kind, entry.amount, entry.unit, entry.onFirst, entry.onLast].join(" ");
    const others = seen.get(likeness) ?? new Set();
    const other = entry.otherLotId ?? entry.otherStewardId ?? entry.other ?? untold;
    // as much to two people on one day are two gifts; where one of the two does not say to whom, they may be one
    if (others.has(other) || others.has(untold) || (other === untold && others.size > 0))
      warn(entry, "twice", "the same stands here already: is it entered twice?");
    seen.set(likeness, others.add(other));
    if (change === null) warn(entry, "no-weight", "this has no weight here, so it is not in the balance");
    before = held;
  }
  return warnings;
}
