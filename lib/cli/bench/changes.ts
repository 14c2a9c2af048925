import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { parseDate } from "@/lib/science/dates/parse-date";

const day = "2026-11-20";

let turn = 0;

/** Something small that a steward does: a pinch of seed given away, each time of the next lot. Only the figures of its crop are worked out anew. */
export async function enterOne(db: Database, lotIds: readonly string[]): Promise<void> {
  const lotId = lotIds[turn % lotIds.length] ?? "";
  turn += 1;
  const on = parseDate(day);
  if (!on.ok) throw new Error(on.refusals[0]?.sentence);
  const entry = { kind: "given", amount: 0.001, unit: "g", on: on.value, other: "a neighbour", notes: null } as const;
  const entered = await recordLedgerEntry(db, ownerHere(), lotId, entry, day);
  if (!entered.ok) throw new Error(entered.refusals[0]?.sentence);
}

/** The same, and every variety counts as touched: nothing that the server keeps is of use any more. */
export async function changeAll(db: Database, lotIds: readonly string[]): Promise<void> {
  await db.write.$executeRawUnsafe('UPDATE "Variety" SET "revision" = "revision" + 1');
  await enterOne(db, lotIds);
}
