import type { Database } from "@/lib/db";

/** A strain with its variety, its keeper and its lots. */
export interface StrainRead {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly keeper: string | null;
  readonly place: string | null;
  readonly keptFrom: string | null;
  readonly keptTo: string | null;
  readonly difference: string | null;
  readonly relation: string | null;
  readonly note: string | null;
  readonly lots: readonly { readonly id: string; readonly number: string; readonly year: string | null }[];
}

/** Reads a strain; null where there is none. */
export async function readStrain(db: Database, strainId: string): Promise<StrainRead | null> {
  const found = await db.read.strain.findUnique({
    where: { id: strainId },
    include: {
      variety: { select: { name: true } },
      steward: { select: { person: { select: { name: true } } } },
      lots: { where: { sameAsId: null }, select: { id: true, number: true, year: true }, orderBy: { id: "asc" } },
    },
  });
  if (!found) return null;
  const { variety, steward, nameKey: _key, stewardId: _steward, ...strain } = found;
  return { ...strain, variety: variety.name, keeper: steward?.person?.name ?? null };
}
