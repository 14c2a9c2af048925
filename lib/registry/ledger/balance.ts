import type { LedgerKind } from "@/lib/schemas/notebook/kinds";
import { type CivilDay, compareDays } from "@/lib/science/dates/civil-day";

/** A ledger entry as far as the balance needs it. `id` is time-ordered: its order is the order of entry. */
export interface BookedEntry {
  readonly id: string;
  readonly kind: string;
  readonly amount: number;
  readonly unit: string;
  readonly onFirst: CivilDay;
  readonly onLast: CivilDay;
  readonly replacesId: string | null;
  readonly takenBack: boolean;
}

/** An entry in its place, and what the jar held after it. */
export interface BalanceStep<E extends BookedEntry = BookedEntry> {
  readonly entry: E;
  /** the day on which it counts */
  readonly day: CivilDay;
  /** what it adds (below 0: takes), in grams; null where it was counted in something that has no weight here */
  readonly change: number | null;
  /** grams after it */
  readonly balance: number;
}

export interface Balance<E extends BookedEntry = BookedEntry> {
  readonly steps: readonly BalanceStep<E>[];
  /** grams on hand; null where no entry says anything of a weight: not known */
  readonly grams: number | null;
  /** entries that count, but have no weight here (seeds without a thousand-seed weight, ears, packets) */
  readonly withoutWeight: readonly E[];
}

/** A debt of this many grams is within weighing error. */
export const tolerableDebtGrams = 0.5;

/** 138.1 − 80.4 − 57.7 leaves 7e-15 in binary: an empty jar. */
const binaryDustGrams = 1e-9;

const incoming: ReadonlySet<string> = new Set<LedgerKind>(["received", "harvested", "blended-in"]);

/** Whether a kind of entry brings seed into the jar. */
export function bringsIn(kind: string): boolean {
  return incoming.has(kind);
}

/**
 * The entries that stand: those that no later entry replaces, without the corrections that only take one back.
 * Each keeps the place (order of entry) of the first of its chain.
 */
export function standingEntries<E extends BookedEntry>(entries: readonly E[]): { entry: E; place: string }[] {
  if (!hasCorrections(entries)) return entries.map((entry) => ({ entry, place: entry.id }));
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const replaced = new Set(entries.flatMap((entry) => entry.replacesId ?? []));
  return entries
    .filter((entry) => !replaced.has(entry.id) && !entry.takenBack)
    .map((entry) => ({ entry, place: firstOfChain(entry, byId).id }));
}

/**
 * The running balance of a lot in grams: plus for received, harvested and blended-in on the first possible day of their date,
 * minus for the others on the last, `weighed` sets it on its last possible day; entries of one day in the order of entry.
 * Seeds become grams by the lot's own thousand-seed weight (grams = seeds × weight / 1000).
 */
export function balanceOf<E extends BookedEntry>(entries: readonly E[], thousandSeedGrams: number | null): Balance<E> {
  const withoutWeight: E[] = [];
  const steps: BalanceStep<E>[] = [];
  const grams = booked(entries, thousandSeedGrams, (entry, before, balance) => {
    if (before === null) withoutWeight.push(entry);
    steps.push({ entry, day: dayOf(entry), change: before === null ? null : balance - before, balance });
  });
  return { steps, grams, withoutWeight };
}

/** What `balanceOf` finds on hand, without its steps: lists of thousands of lots ask for no more. */
export function gramsOnHand(entries: readonly BookedEntry[], thousandSeedGrams: number | null): number | null {
  return booked(entries, thousandSeedGrams, () => {});
}

/** Books the entries that stand, one after another; `each` is told what the jar held before and after, null before one that has no weight here. */
function booked<E extends BookedEntry>(
  entries: readonly E[],
  thousandSeedGrams: number | null,
  each: (entry: E, before: number | null, balance: number) => void,
): number | null {
  let balance = 0;
  let weighedOnce = false;
  for (const entry of inOrder(entries)) {
    const grams = gramsOf(entry, thousandSeedGrams);
    if (grams === null) {
      each(entry, null, balance);
      continue;
    }
    weighedOnce = true;
    const before = balance;
    balance = entry.kind === "weighed" ? grams : bringsIn(entry.kind) ? balance + grams : balance - grams;
    if (Math.abs(balance) < binaryDustGrams) balance = 0;
    each(entry, before, balance);
  }
  return weighedOnce ? balance : null;
}

/** The day on which an entry counts. */
function dayOf({ kind, onFirst, onLast }: BookedEntry): CivilDay {
  return bringsIn(kind) ? onFirst : onLast;
}

/** The entries that stand by the day on which they count; they mostly lie so already. */
function inOrder<E extends BookedEntry>(entries: readonly E[]): readonly E[] {
  if (!hasCorrections(entries) && liesInOrder(entries)) return entries;
  return standingEntries(entries)
    .map(({ entry, place }) => ({ entry, place, day: dayOf(entry) }))
    .sort((a, b) => compareDays(a.day, b.day) || (a.place < b.place ? -1 : a.place > b.place ? 1 : 0))
    .map(({ entry }) => entry);
}

function liesInOrder(entries: readonly BookedEntry[]): boolean {
  for (let place = 1; place < entries.length; place += 1) {
    const [one, next] = [entries[place - 1] as BookedEntry, entries[place] as BookedEntry];
    if ((compareDays(dayOf(one), dayOf(next)) || (one.id < next.id ? -1 : 1)) > 0) return false;
  }
  return true;
}

/** An entry's amount in grams, or null where it has no weight here. */
export function gramsOf(entry: Pick<BookedEntry, "amount" | "unit">, thousandSeedGrams: number | null): number | null {
  if (entry.unit === "g") return entry.amount;
  if (entry.unit === "seeds" && thousandSeedGrams !== null) return (entry.amount * thousandSeedGrams) / 1000;
  return null;
}

function hasCorrections(entries: readonly BookedEntry[]): boolean {
  return entries.some((entry) => entry.takenBack || entry.replacesId !== null);
}

function firstOfChain<E extends BookedEntry>(entry: E, byId: ReadonlyMap<string, E>): E {
  let first = entry;
  // A chain never comes back to itself: an entry replaces an earlier one, and an entry is replaced once.
  for (let next = first.replacesId; next !== null; next = first.replacesId) {
    const earlier = byId.get(next);
    if (!earlier) break;
    first = earlier;
  }
  return first;
}
