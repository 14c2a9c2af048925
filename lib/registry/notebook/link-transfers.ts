import { grouped } from "../change-set/grouped";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";

type Entry = Pick<
  RowOf<"LedgerEntry">,
  "id" | "lotId" | "kind" | "on" | "amount" | "unit" | "otherStewardId" | "otherLotId"
>;
type Transfer = Pick<
  RowOf<"Transfer">,
  "id" | "lotId" | "newLotId" | "toStewardId" | "fromStewardId" | "on" | "amount" | "unit"
>;

/**
 * Joins transfers that came with a folder to their ledger entries. The folder does not write the link: both sides of a transfer are of its day
 * and amount, "given" in its lot and "received" in the new one, so that they tell. Of several alike the one that names the other hand goes
 * first, then the order of entry. A transfer that stands at both ends of one lot (it came from outside) has the received side alone.
 */
export async function linkTransfers(change: ChangeWriter): Promise<void> {
  const { tx } = change;
  const transfers = await tx.transfer.findMany({ where: { ledger: { none: {} } }, orderBy: { id: "asc" } });
  if (transfers.length === 0) return;
  const entries = await tx.ledgerEntry.findMany({
    where: { kind: { in: ["given", "received"] }, transferId: null, takenBack: false, replacedBy: null },
    select: {
      id: true,
      lotId: true,
      kind: true,
      on: true,
      amount: true,
      unit: true,
      otherStewardId: true,
      otherLotId: true,
    },
    orderBy: { id: "asc" },
  });
  const open = grouped(entries, likeness);
  const patches = transfers.flatMap((transfer) => {
    const sides = [sideOf(open, transfer, "given"), sideOf(open, transfer, "received")].filter((each) => each !== null);
    return sides.map(({ id }) => ({ id, patch: { transferId: transfer.id } }));
  });
  await change.updateMany("LedgerEntry", patches);
}

function likeness({ lotId, kind, on, amount, unit }: Pick<Entry, "lotId" | "kind" | "on" | "amount" | "unit">): string {
  return JSON.stringify([lotId, kind, on, amount, unit]);
}

/** The entry of one side, taken off the open ones; null where there is none, or the transfer has no such side. */
function sideOf(open: Map<string, Entry[]>, transfer: Transfer, kind: "given" | "received"): Entry | null {
  const { on, amount, unit, newLotId } = transfer;
  const fromOutside = transfer.lotId === newLotId;
  const lotId = kind === "given" ? (fromOutside ? null : transfer.lotId) : newLotId;
  if (lotId === null || amount === null) return null;
  const alike = open.get(likeness({ lotId, kind, on, amount, unit })) ?? [];
  const other = kind === "given" ? transfer.toStewardId : transfer.fromStewardId;
  const otherLot = kind === "given" ? newLotId : transfer.lotId;
  const found =
    alike.find((each) => each.otherLotId !== null && each.otherLotId === otherLot) ??
    alike.find((each) => each.otherStewardId !== null && each.otherStewardId === other) ??
    alike[0];
  if (!found) return null;
  alike.splice(alike.indexOf(found), 1);
  return found;
}
