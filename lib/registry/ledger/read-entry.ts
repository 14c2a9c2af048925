import type { Client } from "@/lib/db";
import { recordIdsOfLot } from "../lots/same-lot";

/** One entry of a lot's ledger, and whether it still counts. Null where there is none. */
export async function readEntry(db: Client, lotId: string, entryId: string) {
  const entry = await db.ledgerEntry.findFirst({
    where: { id: entryId, lotId: { in: await recordIdsOfLot(db, lotId) } },
    include: { replacedBy: { select: { id: true, takenBack: true } } },
  });
  if (!entry) return null;
  const { replacedBy, ...row } = entry;
  return { ...row, counts: !replacedBy && !row.takenBack, replacedBy };
}
