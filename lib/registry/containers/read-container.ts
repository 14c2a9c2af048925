import type { Client } from "@/lib/db";
import { recordIdsOfLot } from "../lots/same-lot";

/** One container of a lot with its place; null where there is none. */
export async function readContainer(db: Client, lotId: string, containerId: string) {
  const lotIds = await recordIdsOfLot(db, lotId);
  return db.container.findFirst({ where: { id: containerId, lotId: { in: lotIds } }, include: { place: true } });
}
