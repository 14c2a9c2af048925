import { type Selection, sql } from "@/lib/db";
import { leadingRecord, recordsOfLot } from "./same-lot";

/** How another lot is kin: it was sown for the harvest, mixed in, split from; or it came of this lot in one of these ways. */
export type Kinship =
  | "sown for it"
  | "mixed into it"
  | "split from"
  | "same harvest"
  | "grown from it"
  | "blended from it"
  | "split off it";

/** Another lot (or a grow-out that gave none) to which a lot is kin. */
export interface KinOfLot {
  readonly kinship: Kinship;
  /** null where a grow-out from it gave no lot */
  readonly lotId: string | null;
  readonly number: string | null;
  readonly year: string | null;
  readonly yearFirst: string | null;
  readonly yearLast: string | null;
  readonly kind: string | null;
  readonly varietyId: string;
  readonly variety: string;
  /** share of the plants or of the living seeds; null not known */
  readonly share: number | null;
  /** in a cross: what the plants of the lot that was sown were */
  readonly role: string | null;
  readonly growOutId: string | null;
  readonly growOut: string | null;
  readonly sown: string | null;
  /** why a grow-out gave no seed */
  readonly outcome: string | null;
}

/** The nearest kin of a lot, both ways: what it comes from, what came of it, what was harvested with it. Of several records of one lot, what came of any of them; what it comes from by the leading one. */
export function kinOfLot(lotId: string): Selection<KinOfLot> {
  const [leads, these] = [leadingRecord(lotId), recordsOfLot(lotId)];
  const leading = sql`"Lot" o ON o."id" = COALESCE(m."sameAsId", m."id")`;
  return {
    columns: {
      kinship: "text",
      lotId: "text",
      number: "text",
      year: "text",
      yearFirst: "text",
      yearLast: "text",
      kind: "text",
      varietyId: "text",
      variety: "text",
      share: "number",
      role: "text",
      growOutId: "text",
      growOut: "text",
      sown: "text",
      outcome: "text",
    },
    rows: sql`
      SELECT 'sown for it' AS "kinship", o."id" AS "lotId", o."number", o."year", o."yearFirst", o."yearLast", o."kind", o."varietyId", v."name" AS "variety", x."share",
        x."role", g."id" AS "growOutId", g."name" AS "growOut", g."sown", g."outcome"
      FROM "Lot" l JOIN "GrowOut" g ON g."id" = l."growOutId" JOIN "GrowOutParent" x ON x."growOutId" = g."id"
        JOIN "Lot" m ON m."id" = x."lotId" JOIN ${leading} JOIN "Variety" v ON v."id" = o."varietyId" WHERE l."id" = ${leads}
      UNION ALL
      SELECT CASE l."kind" WHEN 'split' THEN 'split from' ELSE 'mixed into it' END, o."id", o."number", o."year", o."yearFirst", o."yearLast", o."kind", o."varietyId",
        v."name", x."share", NULL, NULL, NULL, NULL, NULL
      FROM "Lot" l JOIN "LotParent" x ON x."lotId" = l."id" JOIN "Lot" m ON m."id" = x."parentLotId" JOIN ${leading}
        JOIN "Variety" v ON v."id" = o."varietyId" WHERE l."id" = ${leads}
      UNION ALL
      SELECT 'same harvest', o."id", o."number", o."year", o."yearFirst", o."yearLast", o."kind", o."varietyId", v."name", NULL, NULL, g."id", g."name", g."sown", g."outcome"
      FROM "Lot" l JOIN "Lot" o ON o."growOutId" = l."growOutId" AND o."id" <> l."id" AND o."sameAsId" IS NULL JOIN "GrowOut" g ON g."id" = l."growOutId"
        JOIN "Variety" v ON v."id" = o."varietyId" WHERE l."id" = ${leads}
      UNION ALL
      SELECT 'grown from it', o."id", o."number", o."year", o."yearFirst", o."yearLast", o."kind", g."varietyId", v."name", x."share", x."role", g."id", g."name", g."sown", g."outcome"
      FROM "GrowOutParent" x JOIN "GrowOut" g ON g."id" = x."growOutId" JOIN "Variety" v ON v."id" = g."varietyId"
        LEFT JOIN "Lot" o ON o."growOutId" = g."id" AND o."sameAsId" IS NULL WHERE x."lotId" IN ${these}
      UNION ALL
      SELECT CASE o."kind" WHEN 'split' THEN 'split off it' ELSE 'blended from it' END, o."id", o."number", o."year", o."yearFirst", o."yearLast", o."kind", o."varietyId",
        v."name", x."share", NULL, NULL, NULL, NULL, NULL
      FROM "LotParent" x JOIN "Lot" o ON o."id" = x."lotId" AND o."sameAsId" IS NULL JOIN "Variety" v ON v."id" = o."varietyId"
      WHERE x."parentLotId" IN ${these}
      ORDER BY "yearFirst", "number"`,
  };
}
