import { uuidv7 } from "uuidv7";
import type { NewRowOf } from "@/lib/registry/change-set/records";
import type { BookedEntry } from "@/lib/schemas/notebook-typing/notebook-booking";
import { howSureTold } from "@/lib/schemas/notebook-typing/told";
import { balanceOf, bringsIn, type BookedEntry as LedgerLine } from "../ledger/balance";
import { debtRefusal } from "../ledger/debt-refusal";
import type { StoredDate } from "./booked-date";

export interface EntryToBook {
  readonly entry: BookedEntry;
  readonly lotId: string;
  readonly lotNumber: string;
  readonly on: StoredDate | null;
}

/** An entry that cannot stand in a ledger, and why; its words are kept with the lot. */
export interface EntryNotBooked extends EntryToBook {
  readonly why: string;
}

type LedgerRow = NewRowOf<"LedgerEntry"> & LedgerLine;

export interface LedgerRows {
  readonly rows: readonly { readonly row: LedgerRow; readonly from: EntryToBook }[];
  readonly notBooked: readonly EntryNotBooked[];
}

/**
 * The ledger entries of a booking, lot by lot. What brings seed in or sets the balance comes first, then what takes seed out, in the
 * order of the lines. Not booked, with why: entries without a year or an amount, and seed taken from a jar of which the lines do not
 * say that it held so much. `standing` are the entries that lots have already, by lot.
 */
export function ledgerRows(
  entries: readonly EntryToBook[],
  standing: ReadonlyMap<string, readonly LedgerLine[]>,
  seedWeights: ReadonlyMap<string, number | null>,
): LedgerRows {
  const rows: { row: LedgerRow; from: EntryToBook }[] = [];
  const notBooked: EntryNotBooked[] = [];
  // Ids are given in the order of the lines, so that entries of one day keep that order.
  const candidates = entries.map((from) => ({ from, why: cannotBook(from), row: ledgerRow(from) }));
  const inTurn = [
    ...candidates.filter(({ from }) => fills(from.entry)),
    ...candidates.filter(({ from }) => !fills(from.entry)),
  ];
  for (const { from, why, row } of inTurn) {
    if (row === null || why !== null) {
      notBooked.push({ ...from, why: why ?? "how much it was is not said" });
      continue;
    }
    const weight = seedWeights.get(from.lotId) ?? null;
    const before = [
      ...(standing.get(from.lotId) ?? []),
      ...rows.filter((each) => each.row.lotId === from.lotId).map((each) => each.row),
    ];
    const takes = !fills(from.entry) && row.unit === "g";
    if (takes && balanceOf(before, weight).grams === null) {
      notBooked.push({ ...from, why: `how much lot ${from.lotNumber} held is not known` });
    } else if (takes && debtRefusal(before, [...before, row], row, weight)) {
      notBooked.push({ ...from, why: `lot ${from.lotNumber} did not hold so much, by these lines` });
    } else rows.push({ row, from });
  }
  return { rows: rows.sort((a, b) => (a.row.id < b.row.id ? -1 : 1)), notBooked };
}

function fills(entry: BookedEntry): boolean {
  return bringsIn(entry.kind) || entry.kind === "weighed";
}

function cannotBook({ entry, on }: EntryToBook): string | null {
  const { amount, kind } = entry;
  if (amount === null || amount.unit === null || amount.value === null) {
    return amount === null || amount.words === ""
      ? "how much it was is not said"
      : `“${amount.words}” is no amount that can be booked`;
  }
  if (amount.value === 0 && kind !== "weighed") return "nothing moved";
  return on === null ? "the line has no year" : null;
}

function ledgerRow({ entry, lotId, on }: EntryToBook): LedgerRow | null {
  const { amount, kind, other } = entry;
  if (amount === null || amount.value === null || amount.unit === null || on === null) return null;
  const howSure = howSureTold(amount);
  return {
    id: uuidv7(),
    lotId,
    on: on.text,
    onFirst: on.first,
    onLast: on.last,
    kind,
    amount: amount.value,
    unit: amount.unit,
    how: howSure === null ? "told" : `told, ${howSure}`,
    other,
    notes: amount.words,
    replacesId: null,
    takenBack: false,
  };
}
