import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { type KinshipRead, kinshipsOfVariety, pairsNotKnown } from "./read-kinships";

/** A founder lot of a variety, for naming it. */
export interface FounderLot {
  readonly id: string;
  readonly number: string;
  readonly year: string | null;
}

/** The founder lots of a variety, what is recorded of their kinship, and the pairs of which nothing is. */
export interface FoundersRead {
  readonly variety: { readonly id: string; readonly name: string };
  readonly founders: readonly FounderLot[];
  readonly kinships: readonly KinshipRead[];
  readonly open: readonly (readonly [FounderLot, FounderLot])[];
}

/** Reads the founders of a variety. One statement; null where there is no such variety. */
export async function readFounders(db: Database, varietyId: string): Promise<FoundersRead | null> {
  const varieties: Selection<FoundersRead["variety"]> = {
    columns: { id: "text", name: "text" },
    rows: sql`SELECT v."id", v."name" FROM "Variety" v WHERE v."id" = ${varietyId}`,
  };
  const founders: Selection<FounderLot> = {
    columns: { id: "text", number: "text", year: "text" },
    rows: sql`
      SELECT l."id", l."number", l."year" FROM "Lot" l
      WHERE l."varietyId" = ${varietyId} AND l."kind" = 'founder' AND l."sameAsId" IS NULL ORDER BY l."id"`,
  };
  const found = await readTogether(db, { varieties, founders, kinships: kinshipsOfVariety(varietyId) });
  const [variety] = found.varieties;
  if (!variety) return null;
  return {
    variety,
    founders: found.founders,
    kinships: found.kinships,
    open: pairsNotKnown(found.founders, found.kinships),
  };
}
