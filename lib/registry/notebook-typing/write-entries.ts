import { uuidv7 } from "uuidv7";
import { howSureTold } from "@/lib/schemas/notebook-typing/told";
import { grouped } from "../change-set/grouped";
import type { KeptInWords } from "./book-notebook-lines";
import type { BookingPlace } from "./booking-place";
import { type EntryToBook, ledgerRows } from "./ledger-rows";
import { observation } from "./told-observations";

export interface Written {
  readonly booked: number;
  readonly keptInWords: readonly KeptInWords[];
}

/** Writes what came in and went out. Seed that was given is a transfer, with or without a known amount; what cannot be booked stays in words. */
export async function writeEntries({ change, tx, booking, lots, dates }: BookingPlace): Promise<Written> {
  const entries = booking.entries.map(
    (entry, index): EntryToBook => ({
      entry,
      lotId: lots.idOf.get(entry.lot) ?? "",
      lotNumber: lots.numberOf.get(entry.lot) ?? "",
      on: dates.read(entry.on, ["entries", index, "on"]),
    }),
  );
  const standing = await tx.ledgerEntry.findMany({
    where: { lotId: { in: [...lots.standing.keys()] } },
    orderBy: { id: "asc" },
  });
  const weights = new Map([...lots.standing].map(([id, lot]) => [id, lot.thousandSeedGrams]));
  const { rows, notBooked } = ledgerRows(
    entries,
    grouped(standing, (entry) => entry.lotId),
    weights,
  );
  const amounts = new Map(rows.map(({ row, from }) => [from, row]));
  for (const from of entries) {
    const row = amounts.get(from);
    const transferId = from.entry.kind === "given" && from.on ? uuidv7() : null;
    if (transferId && from.on) {
      await change.create("Transfer", {
        id: transferId,
        kind: from.entry.manner ?? "gift",
        lotId: from.lotId,
        toWords: from.entry.other,
        on: from.on.text,
        onFirst: from.on.first,
        onLast: from.on.last,
        amount: row?.amount ?? null,
        unit: row?.unit ?? "g",
        note: from.entry.amount?.words ?? null,
      });
    }
    if (row) await change.create("LedgerEntry", { ...row, transferId });
  }
  await change.createAll(
    "Observation",
    notBooked.flatMap(({ entry, lotId, on }) => {
      const { amount, kind, other } = entry;
      if (amount === null || amount.words === "") return [];
      const words = [kind, amount.words, other].filter(Boolean).join(", ");
      return [
        observation({ lotId }, words, on, {
          value: amount.value,
          unit: amount.unit,
          howSure: howSureTold(amount),
        }),
      ];
    }),
  );
  const keptInWords = notBooked
    // Seed that was given or came in without an amount is told of all the same, by its transfer or its story.
    .filter(({ entry }) => entry.amount !== null)
    .map(({ entry, why }) => ({ line: entry.line, words: entry.amount?.words ?? "", why }));
  return { booked: rows.length, keptInWords };
}
