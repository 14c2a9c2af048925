import type { Database } from "@/lib/db";

/** A device that is signed in. */
export interface SignedInDevice {
  readonly id: string;
  /** what the browser says that it is */
  readonly agent: string | null;
  readonly since: Date;
  readonly until: Date;
}

/** The devices on which an account is signed in, the latest first. */
export async function listSessions(db: Database, userId: string, now: Date = new Date()): Promise<SignedInDevice[]> {
  const rows = await db.read.session.findMany({
    where: { userId, expiresAt: { gt: now } },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
  });
  return rows.map((row) => ({ id: row.id, agent: row.userAgent, since: row.createdAt, until: row.expiresAt }));
}
