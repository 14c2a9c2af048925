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

/** Reads the records of some crops in nine statements, however many they are, in the order of entry. */
export async function readRecords(db: Database, cropIds: readonly string[]): Promise<RecordsOfCrops> {
  const rows = <T>(sql: string) => db.read.$queryRawUnsafe<T[]>(sql, ...cropIds);
  const these = placeholders(db.engine, cropIds.length);
  const lots = await rows<LotSql>(
    `SELECT l."id", l."number", l."varietyId", l."kind", l."growOutId", l."inbreeding", l."thousandSeedGrams", p."name" AS "holder"
     FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
     WHERE v."cropId" IN (${these}) ORDER BY l."id"`,
  );
  const lotParents = grouped(
    await rows<ParentSql>(
      `SELECT x."lotId" AS "of", x."parentLotId" AS "id", x."share" FROM "LotParent" x JOIN "Lot" l ON l."id" = x."lotId"
       JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these}) ORDER BY x."id"`,
    ),
    (row) => row.of,
  );
  const growOuts = await rows<GrowOutSql>(
    `SELECT g."id", g."name", g."varietyId", g."plantsStanding", g."malesStanding", g."roguedBeforePollen", g."seedParents", g."seedShares",
     g."seedSharesCv", g."selfingRate", g."foreignPollen" FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId"
     WHERE v."cropId" IN (${these}) ORDER BY g."id"`,
  );
  const growOutParents = grouped(
    await rows<ParentSql>(
      `SELECT x."growOutId" AS "of", x."lotId" AS "id", x."share" FROM "GrowOutParent" x JOIN "GrowOut" g ON g."id" = x."growOutId"
       JOIN "Variety" v ON v."id" = g."varietyId" WHERE v."cropId" IN (${these}) ORDER BY x."id"`,
    ),
    (row) => row.of,
  );
  const seeds = grouped(
    await rows<{ of: string; grams: number | null }>(
      `SELECT p."growOutId" AS "of", p."seedGrams" AS "grams" FROM "Plant" p JOIN "GrowOut" g ON g."id" = p."growOutId"
       JOIN "Variety" v ON v."id" = g."varietyId" WHERE v."cropId" IN (${these}) AND g."seedShares" = 'plants' AND p."kept" ORDER BY p."id"`,
    ),
    (row) => row.of,
  );
  const ledger = await rows<LedgerSql>(
    `SELECT e."id", e."lotId", e."onFirst", e."onLast", e."kind", e."amount", e."unit", e."replacesId", e."takenBack" FROM "LedgerEntry" e
     JOIN "Lot" l ON l."id" = e."lotId" JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these}) ORDER BY e."id"`,
  );
  const replicates = await rows<TestSql>(
    `SELECT t."id", t."name", t."lotId", t."on", t."onFirst", r."id" AS "replicate", r."sown",
     CAST(COALESCE(SUM(c."normal"), 0) AS INTEGER) AS "normal" FROM "GerminationTest" t JOIN "Lot" l ON l."id" = t."lotId"
     JOIN "Variety" v ON v."id" = l."varietyId" JOIN "TestReplicate" r ON r."testId" = t."id"
     JOIN "TestCount" c ON c."replicateId" = r."id" AND NOT c."takenBack"
     AND NOT EXISTS (SELECT 1 FROM "TestCount" n WHERE n."replacesId" = c."id")
     WHERE v."cropId" IN (${these}) GROUP BY t."id", t."name", t."lotId", t."on", t."onFirst", r."id", r."sown" ORDER BY t."id", r."id"`,
  );
  const varieties = await rows<VarietySql>(
    `SELECT v."id", v."name", v."cropId", c."matingSystem", c."selfIncompatible", c."outcrossingPctMin", c."outcrossingPctMax", c."clonal"
     FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" WHERE v."cropId" IN (${these}) ORDER BY v."id"`,
  );
  const own = grouped(
    await rows<{ cropId: string; field: string; value: string }>(
      `SELECT "cropId", "field", "value" FROM "CropOverride" WHERE "cropId" IN (${these})`,
    ),
    (row) => row.cropId,
  );
  return {
    crops: new Map(varieties.map(({ id, cropId }) => [id, cropId])),
    varieties: varieties.map((row) => varietyRecord(row, own.get(row.cropId) ?? [])),
    lots: lots.map((row) => lotRecord(row, lotParents.get(row.id) ?? [])),
    growOuts: growOuts.map((row) => growOutRecord(row, growOutParents.get(row.id) ?? [], seeds.get(row.id) ?? [])),
    ledger: ledger.map((row) => ({ ...row, takenBack: Boolean(row.takenBack) })),
    tests: [...grouped(replicates, (row) => row.id).values()].flatMap(testRecord),
  };
}

interface ParentSql {
  readonly of: string;
  readonly id: string;
  readonly share: number | null;
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

function varietyRecord(
  { id, name, cropId: _crop, clonal, ...profile }: VarietySql,
  own: readonly { field: string; value: string }[],
): VarietyRecord {
  return { id, name, profile: profileOfCrop(profile, own), clonal: Boolean(clonal) };
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
}

function parents(rows: readonly ParentSql[]): ParentRecord[] {
  return rows.map(({ id, share }) => ({ id, share }));
}

function lotRecord(row: LotSql, from: readonly ParentSql[]): LotRecord {
  return { ...row, kind: row.kind as LotKind, parents: parents(from) };
}

function growOutRecord(
  { seedShares, seedSharesCv, ...row }: GrowOutSql,
  from: readonly ParentSql[],
  seeds: readonly { grams: number | null }[],
): GrowOutRecord {
  return { ...row, parents: parents(from), seedShares: sharesOf(seedShares, seedSharesCv, seeds) };
}

function sharesOf(
  kind: string | null,
  cv: number | null,
  seeds: readonly { grams: number | null }[],
): GrowOutRecord["seedShares"] {
  if (kind === "equal") return "equal";
  if (kind === "cv" && cv !== null) return { cv };
  if (kind !== "plants") return null;
  const grams = seeds.flatMap((plant) => plant.grams ?? []);
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
