import { uuidv7 } from "uuidv7";
import type { ChangeWriter } from "../change-set/writer";
import type { TableDifference } from "./difference";
import { type Ids, idIfKnown, idOf, storedExtra } from "./ids";

export async function applyLedger(change: ChangeWriter, { added }: TableDifference<"ledger">, ids: Ids): Promise<void> {
  const rows = added.map(({ cells, extra }) => ({
    id: uuidv7(),
    lotId: idOf(ids.lots, cells.lot),
    on: cells.date.text,
    onFirst: cells.date.first ?? cells.date.text,
    onLast: cells.date.last ?? cells.date.text,
    kind: cells.kind,
    amount: cells.grams,
    unit: "g",
    other: cells.other,
    otherLotId: idIfKnown(ids.lots, cells.other),
    otherStewardId: idIfKnown(ids.stewards, cells.other),
    notes: cells.notes,
    extra: storedExtra(extra),
  }));
  await change.createAll("LedgerEntry", rows);
}
