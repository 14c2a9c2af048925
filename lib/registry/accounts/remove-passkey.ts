import type { Database } from "@/lib/db";

/** Takes a passkey of an account away: nobody signs in by it any more. Another's is left alone. */
export async function removePasskey(db: Database, userId: string, passkeyId: string): Promise<void> {
  await db.write.passkey.deleteMany({ where: { id: passkeyId, userId } });
}
