import type { Database } from "@/lib/db";

/** What the form of a neighbour source offers, each list by name. */
export interface NamesForNeighbours {
  readonly crops: readonly { readonly id: string; readonly name: string }[];
  /** varieties of the registry, with their crop */
  readonly varieties: readonly { readonly id: string; readonly name: string; readonly cropId: string }[];
}

/** All crops, and all varieties of the registry. Two statements. */
export async function namesForNeighbours(db: Database): Promise<NamesForNeighbours> {
  const crops = await db.read.crop.findMany({
    select: { id: true, commonName: true },
    orderBy: { commonNameKey: "asc" },
  });
  const varieties = await db.read.variety.findMany({
    select: { id: true, name: true, cropId: true },
    orderBy: { nameKey: "asc" },
  });
  return { crops: crops.map(({ id, commonName }) => ({ id, name: commonName })), varieties };
}
