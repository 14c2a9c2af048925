import { type Client, type Sql, sql, type Transaction } from "@/lib/db";

/*
 * Two records of one lot: the one leads, the other points to it (`sameAsId`) and keeps its rows. Reading sees one lot. Whoever reads rows of a
 * lot asks here which records are its own; whoever lists lots leaves out those that point to another; whoever names a lot that a row points
 * to joins the leading one: JOIN "Lot" l ON l."id" = COALESCE(r."sameAsId", r."id").
 */

/** The ids of all records of the lot of which one has this id, as a piece of a statement: WHERE "lotId" IN ${recordsOfLot(id)}. */
export function recordsOfLot(lotId: string): Sql {
  // All records of a lot are of one variety, whose index keeps the search short.
  return sql`(SELECT r."id" FROM "Lot" a JOIN "Lot" r ON r."varietyId" = a."varietyId"
    AND COALESCE(r."sameAsId", r."id") = COALESCE(a."sameAsId", a."id") WHERE a."id" = ${lotId})`;
}

/** The id of the leading record of the lot of which one has this id, as a piece of a statement. */
export function leadingRecord(lotId: string): Sql {
  return sql`(SELECT COALESCE(a."sameAsId", a."id") FROM "Lot" a WHERE a."id" = ${lotId})`;
}

/** The ids of all records of the lot of which one has this id, the leading one among them; none where there is no such lot. One statement. */
export async function recordIdsOfLot(db: Client | Transaction, lotId: string): Promise<string[]> {
  const rows = await db.$queryRaw<{ id: string }[]>(
    sql`SELECT x."id" FROM "Lot" x WHERE x."id" IN ${recordsOfLot(lotId)} ORDER BY x."id"`,
  );
  return rows.map(({ id }) => id);
}
