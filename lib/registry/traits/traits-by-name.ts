import type { Client, Transaction } from "@/lib/db";
import { sameName } from "../names/fold-name";

/**
 * Finds the trait that a mere name means for a variety: its own, else its crop's, else one that all share; of each the newest version.
 * Null where no trait has that name there.
 */
export async function traitsByName(
  db: Client | Transaction,
): Promise<(varietyId: string | null, name: string) => string | null> {
  const newest = await db.trait.findMany({
    where: { next: null },
    select: { id: true, name: true, varietyId: true, cropId: true },
    orderBy: { id: "asc" },
  });
  const crops = new Map(
    (await db.variety.findMany({ select: { id: true, cropId: true } })).map((variety) => [variety.id, variety.cropId]),
  );
  const ids = new Map(
    newest.map((trait) => [`${trait.varietyId ?? trait.cropId ?? ""} ${sameName(trait.name)}`, trait.id]),
  );
  return (varietyId, name) => {
    const of = (owner: string) => ids.get(`${owner} ${sameName(name)}`);
    return of(varietyId ?? "") ?? of(crops.get(varietyId ?? "") ?? "") ?? of("") ?? null;
  };
}
