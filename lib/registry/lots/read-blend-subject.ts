import type { Database } from "@/lib/db";
import { type LotHead, readHead } from "./read-head";

/** What a blend is about: the lots that were asked for, and one of them for the variety and its crop. */
export interface BlendSubject {
  readonly head: LotHead;
  readonly cropId: string;
  /** ids of the lots that were asked for and are of the variety */
  readonly asked: readonly string[];
  /** numbers of those that are of another variety: never mixed */
  readonly others: readonly string[];
}

/**
 * Finds the variety of a blend by the lots that were asked for (ids or lot numbers), else by its own id. Two statements; null where nothing
 * of it is on record.
 */
export async function readBlendSubject(
  db: Database,
  { lots, varietyId }: { readonly lots: readonly string[]; readonly varietyId: string | null },
): Promise<BlendSubject | null> {
  const named = [...lots];
  const found = await db.read.lot.findMany({
    where: { OR: [{ id: { in: named } }, { number: { in: named } }, ...(varietyId === null ? [] : [{ varietyId }])] },
    select: { id: true, number: true, varietyId: true, sameAsId: true, variety: { select: { cropId: true } } },
    orderBy: { id: "desc" },
  });
  const asked = named.flatMap((name) => found.find((lot) => lot.id === name || lot.number === name) ?? []);
  const first = asked[0] ?? found[0];
  const head = first ? await readHead(db.read, first.id) : null;
  if (!first || !head) return null;
  const own = asked.filter((lot) => lot.varietyId === first.varietyId);
  const others = asked.filter((lot) => lot.varietyId !== first.varietyId);
  return {
    head,
    cropId: first.variety.cropId,
    asked: [...new Set(own.map((lot) => lot.sameAsId ?? lot.id))],
    others: others.map((lot) => lot.number),
  };
}
