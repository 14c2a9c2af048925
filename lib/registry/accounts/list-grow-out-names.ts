import type { Database } from "@/lib/db";

/** Every grow-out that still stands by its name, then those that are over: what a helper can be sent to. */
export async function listGrowOutNames(db: Database): Promise<{ id: string; name: string }[]> {
  const rows = await db.read.growOut.findMany({ select: { id: true, name: true, outcome: true } });
  return rows
    .sort((left, right) => {
      const standing = Number(left.outcome !== null) - Number(right.outcome !== null);
      return standing || (left.name < right.name ? -1 : 1);
    })
    .map(({ id, name }) => ({ id, name }));
}
