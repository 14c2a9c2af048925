import type { Database } from "@/lib/db";

/** A passkey by the word that was given to it. */
export interface PasskeyInList {
  readonly id: string;
  readonly name: string | null;
  readonly since: Date | null;
}

/** The passkeys of an account, the oldest first. */
export async function listPasskeys(db: Database, userId: string): Promise<PasskeyInList[]> {
  const rows = await db.read.passkey.findMany({
    where: { userId },
    select: { id: true, name: true, createdAt: true },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
  });
  return rows.map(({ id, name, createdAt }) => ({ id, name, since: createdAt }));
}
