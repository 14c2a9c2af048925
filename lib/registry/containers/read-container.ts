import type { Client } from "@/lib/db";

/** One container of a lot with its place; null where there is none. */
export async function readContainer(db: Client, lotId: string, containerId: string) {
  return db.container.findFirst({ where: { id: containerId, lotId }, include: { place: true } });
}
