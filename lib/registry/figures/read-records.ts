import { type Database, placeholders } from "@/lib/db";
import type { LotKind } from "@/lib/schemas/notebook/kinds";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import type {
  FigureRecords,
  GrowOutRecord,
  LedgerRecord,
  LotRecord,
  ParentRecord,
  TestRecord,
  VarietyRecord,
} from "./records";

/** What the figures of some crops' lots are worked out from; a cross stays within its crop, so nothing outside is needed. */
export interface RecordsOfCrops extends FigureRecords {
  readonly ledger: readonly LedgerRecord[];
  readonly tests: readonly (TestRecord & { readonly id: string })[];
  /** the crop of each variety */
  readonly crops: ReadonlyMap<string, string>;
}

// Seed parents of all harvests of a grow-out together, where there were several and of one at least nobody said which plants they were.
const seedParentsAtMost = `
  (SELECT CASE WHEN COUNT(*) > 1 AND SUM(CASE WHEN EXISTS (SELECT 1 FROM "HarvestSeedParent" s WHERE s."harvestId" = h."id"
     AND s."plantId" IS NOT NULL) THEN 0 ELSE 1 END) > 0 THEN CAST(SUM(h."seedParents") AS INTEGER) END
   FROM "Harvest" h WHERE h."growOutId" = g."id" AND h."seedParents" IS NOT NULL)`;

/** Reads the records of some crops in six statements, however many they are, in the order of entry. */
export async function readRecords(db: Database, cropIds: readonly string[]): Promise<RecordsOfCrops> {
  const rows = <T>(sql: string, times = 1) =>
    db.read.$queryRawUnsafe<T[]>(sql, ...Array.from({ length: times }, () => cropIds).flat());
  const these = (time: number) => placeholders(db.engine, cropIds.length, time * cropIds.length);
  const lots = await rows<LotSql>(
    `SELECT l."id", l."number", l."varietyId", l."kind", l."growOutId", l."inbreeding", l."thousandSeedGrams", p."name" AS "holder"
     FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
     WHERE v."cropId" IN (${these(0)}) ORDER BY l."id"`,
  );
  const growOuts = await rows<GrowOutSql>(
    `SELECT g."id", g."name", g."varietyId", g."plantsStanding", g."malesStanding", g."roguedBeforePollen", g."seedParents", g."seedShares",
     g."seedSharesCv", g."selfingRate", g."foreignPollen", g."detasselled", g."seedParentsDetasselled", ${seedParentsAtMost} AS "seedParentsAtMost"
     FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId"
     WHERE v."cropId" IN (${these(0)}) ORDER BY g."id"`,
  );
  // Parents of lots, parents of grow-outs and the seed of kept plants are alike: something of a record, and a number.
  const links = grouped(
    await rows<LinkSql>(
      `SELECT 'lot' AS "kind", x."lotId" AS "of", x."parentLotId" AS "id", x."share" AS "amount", x."id" AS "place" FROM "LotParent" x
       JOIN "Lot" l ON l."id" = x."lotId" JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these(0)})
       UNION ALL SELECT 'grow-out', x."growOutId", x."lotId", x."share", x."id" FROM "GrowOutParent" x
       JOIN "GrowOut" g ON g."id" = x."growOutId" JOIN "Variety" v ON v."id" = g."varietyId" WHERE v."cropId" IN (${these(1)})
       UNION ALL SELECT 'seed', p."growOutId", p."id", p."seedGrams", p."id" FROM "Plant" p
       JOIN "GrowOut" g ON g."id" = p."growOutId" JOIN "Variety" v ON v."id" = g."varietyId"
       WHERE v."cropId" IN (${these(2)}) AND g."seedShares" = 'plants' AND p."kept" ORDER BY 5`,
      3,
    ),
    (row) => `${row.kind} ${row.of}`,
  );
  const ledger = await rows<LedgerSql>(
    `SELECT e."id", e."lotId", e."onFirst", e."onLast", e."kind", e."amount", e."unit", e."replacesId", e."takenBack" FROM "LedgerEntry" e
     JOIN "Lot" l ON l."id" = e."lotId" JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these(0)}) ORDER BY e."id"`,
  );
  const replicates = await rows<TestSql>(
    `SELECT t."id", t."name", t."lotId", t."on", t."onFirst", r."id" AS "replicate", r."sown",
     CAST(COALESCE(SUM(c."normal"), 0) AS INTEGER) AS "normal" FROM "GerminationTest" t JOIN "Lot" l ON l."id" = t."lotId"
     JOIN "Variety" v ON v."id" = l."varietyId" JOIN "TestReplicate" r ON r."testId" = t."id"
     JOIN "TestCount" c ON c."replicateId" = r."id" AND NOT c."takenBack"
     AND NOT EXISTS (SELECT 1 FROM "TestCount" n WHERE n."replacesId" = c."id")
     WHERE v."cropId" IN (${these(0)}) GROUP BY t."id", t."name", t."lotId", t."on", t."onFirst", r."id", r."sown" ORDER BY t."id", r."id"`,
  );
  const varieties = grouped(
    await rows<VarietySql>(
      `SELECT v."id", v."name", v."cropId", c."matingSystem", c."selfIncompatible", c."outcrossingPctMin", c."outcrossingPctMax", c."clonal",
       o."field", o."value" FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" LEFT JOIN "CropOverride" o ON o."cropId" = c."id"
       WHERE v."cropId" IN (${these(0)}) ORDER BY v."id"`,
    ),
    (row) => row.id,
  );
  return {
    crops: new Map([...varieties].map(([id, rows]) => [id, rows[0]?.cropId ?? ""])),
    varieties: [...varieties.values()].flatMap(varietyRecord),
    lots: lots.map((row) => lotRecord(row, links.get(`lot ${row.id}`) ?? [])),
    growOuts: growOuts.map((row) =>
      growOutRecord(row, links.get(`grow-out ${row.id}`) ?? [], links.get(`seed ${row.id}`) ?? []),
    ),
    ledger: ledger.map((row) => ({ ...row, takenBack: Boolean(row.takenBack) })),
    tests: [...grouped(replicates, (row) => row.id).values()].flatMap(testRecord),
  };
}

interface LinkSql {
  readonly kind: "lot" | "grow-out" | "seed";
  readonly of: string;
  readonly id: string;
  readonly amount: number | null;
}
type LotSql = Omit<LotRecord, "parents">;
interface GrowOutSql extends Omit<GrowOutRecord, "parents" | "seedShares"> {
  readonly seedShares: string | null;
  readonly seedSharesCv: number | null;
}
type LedgerSql = Omit<LedgerRecord, "takenBack"> & { readonly takenBack: boolean | number };
interface TestSql {
  readonly id: string;
  readonly name: string;
  readonly lotId: string;
  readonly on: string;
  readonly onFirst: string;
  readonly sown: number;
  readonly normal: number | bigint;
}

/** One row for each own value of the crop, at least one. */
function varietyRecord(rows: readonly VarietySql[]): VarietyRecord[] {
  const [first] = rows;
  if (!first) return [];
  const { id, name, cropId: _crop, clonal, field: _field, value: _value, ...profile } = first;
  const own = rows.flatMap(({ field, value }) => (field === null || value === null ? [] : [{ field, value }]));
  return [{ id, name, profile: profileOfCrop(profile, own), clonal: Boolean(clonal) }];
}

interface VarietySql {
  readonly id: string;
  readonly name: string;
  readonly cropId: string;
  readonly matingSystem: string | null;
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly clonal: boolean | number;
  readonly field: string | null;
  readonly value: string | null;
}

function parents(rows: readonly LinkSql[]): ParentRecord[] {
  return rows.map(({ id, amount }) => ({ id, share: amount }));
}

function lotRecord(row: LotSql, from: readonly LinkSql[]): LotRecord {
  return { ...row, kind: row.kind as LotKind, parents: parents(from) };
}

function growOutRecord(
  { seedShares, seedSharesCv, ...row }: GrowOutSql,
  from: readonly LinkSql[],
  seeds: readonly LinkSql[],
): GrowOutRecord {
  return { ...row, parents: parents(from), seedShares: sharesOf(seedShares, seedSharesCv, seeds) };
}

function sharesOf(kind: string | null, cv: number | null, seeds: readonly LinkSql[]): GrowOutRecord["seedShares"] {
  if (kind === "equal") return "equal";
  if (kind === "cv" && cv !== null) return { cv };
  if (kind !== "plants") return null;
  const grams = seeds.flatMap((plant) => plant.amount ?? []);
  return grams.length === seeds.length && grams.length > 0 ? grams : null;
}

function testRecord(replicates: readonly TestSql[]): (TestRecord & { id: string })[] {
  const [first] = replicates;
  if (!first) return [];
  const counts = replicates.map(({ sown, normal }) => ({ sown, normal: Number(normal) }));
  return [
    { id: first.id, name: first.name, lotId: first.lotId, date: first.on, first: first.onFirst, replicates: counts },
  ];
}
