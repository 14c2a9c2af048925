import type { Database } from "@/lib/db";

/** Whether nothing of the steward's is on record yet: no variety (and so no lot) and no steward. One statement each. */
export async function isEmptyRegistry(db: Database): Promise<boolean> {
  if ((await db.read.variety.findFirst({ select: { id: true } })) !== null) return false;
  return (await db.read.steward.findFirst({ select: { id: true } })) === null;
}
