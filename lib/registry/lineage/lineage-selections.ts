import { type Selection, sql } from "@/lib/db";

export interface VarietyOfLineage {
  readonly id: string;
  readonly name: string;
  readonly seedCoat: string | null;
  readonly cropId: string;
  readonly cropKey: string;
  readonly crop: string;
  readonly matingSystem: string | null;
  readonly clonal: boolean;
}

export interface LotSql {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly strain: string | null;
  readonly holderId: string | null;
  readonly kind: string;
  readonly growOutId: string | null;
  readonly year: string | null;
  readonly yearFirst: string | null;
  readonly yearLast: string | null;
  readonly yearWords: string | null;
  readonly status: string | null;
  readonly founderLines: string | null;
  readonly sameAsId: string | null;
  readonly suspected: boolean;
}

export interface GrowOutSql {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly stewardId: string | null;
  readonly sown: string | null;
  readonly sownFirst: string | null;
  readonly sownLast: string | null;
  readonly foreignPollen: number | null;
  readonly foreignPollenHow: string | null;
  readonly outcome: string | null;
  readonly endedOn: string | null;
}

/** A parent of a lot or grow-out. */
export interface LinkSql {
  readonly of: string;
  readonly parentId: string;
  readonly share: number | null;
  /** in a cross: what the plants of this lot were */
  readonly role: "seed parent" | "pollen parent" | null;
}

/** When a split or blend was made, as far as something tells: the making, a transfer, the first entry of its ledger. */
export interface MomentSql {
  readonly lotId: string;
  readonly told: number;
  readonly on: string | null;
  readonly onFirst: string;
  readonly onLast: string;
}

export interface ClaimSql {
  readonly id: string;
  readonly lotId: string;
  readonly kind: string;
  readonly parentLotId: string | null;
  readonly words: string;
  readonly teller: string | null;
  readonly generationsFirst: number | null;
  readonly generationsLast: number | null;
  readonly standing: string;
}

export interface StewardSql {
  readonly id: string;
  readonly name: string | null;
  readonly place: string | null;
  readonly placeGrain: string;
}

/**
 * What the lineage of a variety is drawn from: the lots and grow-outs of its whole crop, for a cross stays within its crop and what
 * descends from it is followed through other varieties.
 */
export function lineageSelections(varietyId: string) {
  const crop = sql`(SELECT "cropId" FROM "Variety" WHERE "id" = ${varietyId})`;
  const varieties: Selection<VarietyOfLineage> = {
    columns: {
      id: "text",
      name: "text",
      seedCoat: "text",
      cropId: "text",
      cropKey: "text",
      crop: "text",
      matingSystem: "text",
      clonal: "flag",
    },
    rows: sql`
      SELECT v."id", v."name", v."seedCoat", c."id" AS "cropId", c."key" AS "cropKey", c."commonName" AS "crop", c."clonal",
        COALESCE((SELECT o."value" FROM "CropOverride" o WHERE o."cropId" = c."id" AND o."field" = 'matingSystem'), c."matingSystem")
          AS "matingSystem"
      FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" WHERE v."id" = ${varietyId}`,
  };
  const lots: Selection<LotSql> = {
    columns: {
      id: "text",
      number: "text",
      varietyId: "text",
      variety: "text",
      strain: "text",
      holderId: "text",
      kind: "text",
      growOutId: "text",
      year: "text",
      yearFirst: "text",
      yearLast: "text",
      yearWords: "text",
      status: "text",
      founderLines: "text",
      sameAsId: "text",
      suspected: "flag",
    },
    rows: sql`
      SELECT l."id", l."number", l."varietyId", v."name" AS "variety", s."name" AS "strain", l."holderId", l."kind", l."growOutId", l."year",
        l."yearFirst", l."yearLast", l."yearWords", l."status", l."founderLines", l."sameAsId",
        l."id" IN (SELECT COALESCE(m."sameAsId", m."id") FROM "Warning" w JOIN "Lot" m ON m."id" = w."lotId"
          WHERE w."kind" = 'suspected cross' AND w."closedOn" IS NULL) AS "suspected"
      FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" LEFT JOIN "Strain" s ON s."id" = l."strainId"
      WHERE v."cropId" = ${crop} ORDER BY l."id"`,
  };
  const growOuts: Selection<GrowOutSql> = {
    columns: {
      id: "text",
      name: "text",
      varietyId: "text",
      variety: "text",
      stewardId: "text",
      sown: "text",
      sownFirst: "text",
      sownLast: "text",
      foreignPollen: "number",
      foreignPollenHow: "text",
      outcome: "text",
      endedOn: "text",
    },
    rows: sql`
      SELECT g."id", g."name", g."varietyId", v."name" AS "variety", g."stewardId", g."sown", g."sownFirst", g."sownLast", g."foreignPollen",
        g."foreignPollenHow", g."outcome", g."endedOn"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" WHERE v."cropId" = ${crop} ORDER BY g."id"`,
  };
  const ofLots: Selection<LinkSql> = {
    columns: { of: "text", parentId: "text", share: "number", role: "text" },
    rows: sql`
      SELECT x."lotId" AS "of", x."parentLotId" AS "parentId", x."share", NULL AS "role" FROM "LotParent" x JOIN "Lot" l ON l."id" = x."lotId"
      JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" = ${crop} ORDER BY x."id"`,
  };
  const ofGrowOuts: Selection<LinkSql> = {
    columns: { of: "text", parentId: "text", share: "number", role: "text" },
    rows: sql`
      SELECT x."growOutId" AS "of", x."lotId" AS "parentId", x."share", x."role" FROM "GrowOutParent" x JOIN "GrowOut" g ON g."id" = x."growOutId"
      JOIN "Variety" v ON v."id" = g."varietyId" WHERE v."cropId" = ${crop} ORDER BY x."id"`,
  };
  // The making stands before a transfer before the ledger.
  const moments: Selection<MomentSql> = {
    columns: { lotId: "text", told: "number", on: "text", onFirst: "text", onLast: "text" },
    rows: sql`
      SELECT m."lotId", 1 AS "told", m."on", m."onFirst", m."onLast" FROM "LotMaking" m JOIN "Lot" l ON l."id" = m."lotId"
      JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" = ${crop} AND m."onFirst" IS NOT NULL AND m."onLast" IS NOT NULL
      UNION ALL
      SELECT t."newLotId", 2, t."on", t."onFirst", t."onLast" FROM "Transfer" t JOIN "Lot" l ON l."id" = t."newLotId"
      JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" = ${crop}
      UNION ALL
      SELECT e."lotId", 3, e."on", e."onFirst", e."onLast" FROM "LedgerEntry" e JOIN "Lot" l ON l."id" = e."lotId"
      JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" = ${crop} AND l."kind" IN ('split', 'blend')
        AND e."kind" IN ('received', 'blended-in') AND NOT e."takenBack"
        AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" r WHERE r."replacesId" = e."id")
      ORDER BY 1, 2, 4`,
  };
  const claims: Selection<ClaimSql> = {
    columns: {
      id: "text",
      lotId: "text",
      kind: "text",
      parentLotId: "text",
      words: "text",
      teller: "text",
      generationsFirst: "number",
      generationsLast: "number",
      standing: "text",
    },
    rows: sql`
      SELECT c."id", c."lotId", c."kind", c."parentLotId", c."words", c."teller", c."generationsFirst", c."generationsLast", c."standing"
      FROM "LineageClaim" c JOIN "Lot" l ON l."id" = c."lotId" JOIN "Variety" v ON v."id" = l."varietyId"
      WHERE v."cropId" = ${crop} AND NOT EXISTS (SELECT 1 FROM "LineageClaim" n WHERE n."replacesId" = c."id") ORDER BY c."id"`,
  };
  const stewards: Selection<StewardSql> = {
    columns: { id: "text", name: "text", place: "text", placeGrain: "text" },
    rows: sql`
      SELECT s."id", p."name", s."place", s."placeGrain" FROM "Steward" s LEFT JOIN "Person" p ON p."stewardId" = s."id" ORDER BY s."id"`,
  };
  return { varieties, lots, growOuts, ofLots, ofGrowOuts, moments, claims, stewards };
}
