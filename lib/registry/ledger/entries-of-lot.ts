import type { Client, Transaction } from "@/lib/db";
import { recordIdsOfLot } from "../lots/same-lot";

/** All entries of a lot's ledger in the order of entry, those of its other records among them. Two statements. */
export async function entriesOfLot(tx: Client | Transaction, lotId: string) {
  const lotIds = await recordIdsOfLot(tx, lotId);
  return tx.ledgerEntry.findMany({ where: { lotId: { in: lotIds } }, orderBy: { id: "asc" } });
}
