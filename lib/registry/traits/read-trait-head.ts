import { type Database, readRows, sql } from "@/lib/db";

/** The variety whose traits are looked at. */
export interface TraitHead {
  readonly id: string;
  readonly name: string;
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly crop: string;
}

/** A variety with what the head of its traits' pages shows; null where there is none. One statement. */
export async function readTraitHead(db: Database, varietyId: string): Promise<TraitHead | null> {
  const [found] = await readRows<TraitHead>(db, {
    columns: { id: "text", name: "text", seedCoat: "text", cropKey: "text", crop: "text" },
    rows: sql`SELECT v."id", v."name", v."seedCoat", c."key" AS "cropKey", c."commonName" AS "crop"
      FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" WHERE v."id" = ${varietyId}`,
  });
  return found ?? null;
}
