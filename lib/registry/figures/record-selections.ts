import { type Gathered, joined, type Selection, type Sql, sql } from "@/lib/db";
import type { BookedEntry } from "../ledger/balance";
import { countedBefore } from "./counted-before";
import { harvestParents } from "./own-harvests";
import type { GrowOutRecord, KinshipRecord, LotRecord, ParentRecord, TestRecord } from "./records";

// Seed parents of all harvests of a grow-out together, where there were several and of one at least nobody said which plants they were.
const seedParentsAtMost = sql`
  (SELECT CASE WHEN COUNT(*) > 1 AND SUM(CASE WHEN EXISTS (SELECT 1 FROM "HarvestSeedParent" s WHERE s."harvestId" = h."id"
     AND s."plantId" IS NOT NULL) THEN 0 ELSE 1 END) > 0 THEN SUM(h."seedParents") END
   FROM "Harvest" h WHERE h."growOutId" = g."id" AND h."seedParents" IS NOT NULL)`;

/** What the lineage of some crops' lots follows from, in the order of entry. */
export function lineageOfCrops(cropIds: readonly string[]) {
  const these = listOf(cropIds);
  const lots: Selection<LotSql> = {
    columns: {
      id: "text",
      number: "text",
      varietyId: "text",
      kind: "text",
      growOutId: "text",
      inbreeding: "number",
      founderLines: "text",
      thousandSeedGrams: "number",
      sameAsId: "text",
      holder: "text",
    },
    rows: sql`
      SELECT l."id", l."number", l."varietyId", l."kind", l."growOutId", l."inbreeding", l."founderLines", l."thousandSeedGrams", l."sameAsId", p."name" AS "holder"
      FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
      WHERE v."cropId" IN (${these}) ORDER BY l."id"`,
  };
  const growOuts: Selection<GrowOutSql> = {
    columns: {
      id: "text",
      name: "text",
      varietyId: "text",
      plantsStanding: "number",
      malesStanding: "number",
      roguedBeforePollen: "number",
      seedParents: "number",
      seedShares: "text",
      seedSharesCv: "number",
      selfingRate: "number",
      foreignPollen: "number",
      detasselled: "number",
      seedParentsDetasselled: "number",
      seedParentsAtMost: "number",
      roguedAfterPollen: "number",
      seedsSown: "number",
      cropKey: "text",
    },
    rows: sql`
      SELECT g."id", g."name", g."varietyId", g."plantsStanding", g."malesStanding", g."roguedBeforePollen", g."seedParents", g."seedShares",
        g."seedSharesCv", g."selfingRate", g."foreignPollen", g."detasselled", g."seedParentsDetasselled",
        ${seedParentsAtMost} AS "seedParentsAtMost", g."roguedAfterPollen", g."seedsSown", c."key" AS "cropKey"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      WHERE v."cropId" IN (${these}) ORDER BY g."id"`,
  };
  const parentsOfLots: Gathered<Omit<ParentRecord, "role">> = {
    columns: { id: "text", share: "number" },
    under: "lotId",
    by: "place",
    rows: sql`
      SELECT x."lotId", x."parentLotId" AS "id", x."share", x."id" AS "place" FROM "LotParent" x
      JOIN "Lot" l ON l."id" = x."lotId" JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these})`,
  };
  const sownInGrowOuts: Gathered<ParentRecord> = {
    columns: { id: "text", share: "number", role: "text" },
    under: "growOutId",
    by: "place",
    rows: sql`
      SELECT x."growOutId", x."lotId" AS "id", x."share", x."role", x."id" AS "place" FROM "GrowOutParent" x
      JOIN "GrowOut" g ON g."id" = x."growOutId" JOIN "Variety" v ON v."id" = g."varietyId" WHERE v."cropId" IN (${these})`,
  };
  const seedOfPlants: Gathered<SeedOfPlant> = {
    columns: { amount: "number" },
    under: "growOutId",
    by: "plant",
    rows: sql`
      SELECT p."growOutId", COALESCE(p."sameAsId", p."id") AS "plant", SUM(p."seedGrams") AS "amount" FROM "Plant" p
      JOIN "GrowOut" g ON g."id" = p."growOutId" JOIN "Variety" v ON v."id" = g."varietyId"
      WHERE v."cropId" IN (${these}) AND g."seedShares" = 'plants' AND p."kept"
      GROUP BY p."growOutId", COALESCE(p."sameAsId", p."id")`,
  };
  const varieties: Selection<VarietySql> = {
    columns: {
      id: "text",
      name: "text",
      cropId: "text",
      matingSystem: "text",
      selfIncompatible: "text",
      outcrossingPctMin: "number",
      outcrossingPctMax: "number",
      clonal: "flag",
      field: "text",
      value: "text",
    },
    rows: sql`
      SELECT v."id", v."name", v."cropId", c."matingSystem", c."selfIncompatible", c."outcrossingPctMin", c."outcrossingPctMax", c."clonal",
        o."field", o."value"
      FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" LEFT JOIN "CropOverride" o ON o."cropId" = c."id"
      WHERE v."cropId" IN (${these}) ORDER BY v."id"`,
  };
  const kinships: Selection<KinshipRecord> = {
    columns: { firstId: "text", secondId: "text", kind: "text", coancestry: "number" },
    rows: sql`
      SELECT k."firstId", k."secondId", k."kind", k."coancestry" FROM "FounderKinship" k JOIN "Lot" l ON l."id" = k."firstId"
      JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these}) ORDER BY k."id"`,
  };
  return {
    lots,
    growOuts,
    parentsOfLots,
    sownInGrowOuts,
    seedOfPlants,
    varieties,
    kinships,
    harvestParents: harvestParents(sql`v."cropId" IN (${these})`),
    ...countedBefore(sql`v."cropId" IN (${these})`),
  };
}

/** What lies in the jars of some crops' lots: their ledgers and tests. */
export function jarsOfCrops(cropIds: readonly string[]) {
  const these = listOf(cropIds);
  const ledger: Gathered<BookedEntry> = {
    columns: {
      id: "text",
      kind: "text",
      amount: "number",
      unit: "text",
      onFirst: "text",
      onLast: "text",
      replacesId: "text",
      takenBack: "flag",
    },
    under: "lotId",
    by: "id",
    rows: sql`
      SELECT e."id", e."lotId", e."onFirst", e."onLast", e."kind", e."amount", e."unit", e."replacesId", e."takenBack" FROM "LedgerEntry" e
      JOIN "Lot" l ON l."id" = e."lotId" JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these})`,
  };
  const tests: Gathered<TestRecord> = {
    columns: { id: "text", name: "text", date: "text", first: "text", sown: "number", normal: "number" },
    under: "lotId",
    by: "id",
    rows: sql`
      SELECT r."id", r."name", r."lotId", r."date", r."first", SUM(r."sown") AS "sown", SUM(r."normal") AS "normal" FROM (
        SELECT t."id", t."name", t."lotId", t."on" AS "date", t."onFirst" AS "first", r."sown", SUM(c."normal") AS "normal"
        FROM "GerminationTest" t JOIN "Lot" l ON l."id" = t."lotId"
        JOIN "Variety" v ON v."id" = l."varietyId" JOIN "TestReplicate" r ON r."testId" = t."id"
        JOIN "TestCount" c ON c."replicateId" = r."id" AND NOT c."takenBack"
        AND NOT EXISTS (SELECT 1 FROM "TestCount" n WHERE n."replacesId" = c."id")
        WHERE v."cropId" IN (${these}) GROUP BY t."id", t."name", t."lotId", t."on", t."onFirst", r."id", r."sown") r
      GROUP BY r."id", r."name", r."lotId", r."date", r."first"`,
  };
  return { ledger, tests };
}

function listOf(ids: readonly string[]): Sql {
  return ids.length > 0 ? joined([...ids]) : sql`NULL`;
}

/** What one kept plant gave, in grams. */
export interface SeedOfPlant {
  readonly amount: number | null;
}
export interface LotSql extends Omit<LotRecord, "parents"> {
  /** the record of the same lot that leads; null: this one */
  readonly sameAsId: string | null;
}
export interface GrowOutSql extends Omit<GrowOutRecord, "parents" | "seedShares" | "mostStanding" | "harvests"> {
  readonly seedsSown: number | null;
  readonly cropKey: string;
  readonly seedShares: string | null;
  readonly seedSharesCv: number | null;
}
export interface VarietySql {
  readonly id: string;
  readonly name: string;
  readonly cropId: string;
  readonly matingSystem: string | null;
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly clonal: boolean;
  readonly field: string | null;
  readonly value: string | null;
}
