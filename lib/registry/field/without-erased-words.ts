import type { Database } from "@/lib/db";
import { photoErased } from "../photos/arriving";
import { withoutWordsSent } from "../photos/erased-picture";

/** Records as a phone sent them, but for the words beside pictures that were erased since: those come back with no sending. */
export async function withoutErasedWords(
  db: Pick<Database, "location">,
  records: readonly unknown[],
): Promise<unknown[]> {
  return Promise.all(
    records.map(async (sent) => {
      const hash = hashOfPicture(sent);
      if (hash === null || !(await photoErased(db, hash))) return sent;
      const without = withoutWordsSent(JSON.stringify(sent), new Set([hash]));
      return without === null ? sent : JSON.parse(without);
    }),
  );
}

function hashOfPicture(sent: unknown): string | null {
  const { kind, body } = (sent ?? {}) as { kind?: unknown; body?: { hash?: unknown } | null };
  return kind === "photo" && typeof body?.hash === "string" ? body.hash : null;
}
