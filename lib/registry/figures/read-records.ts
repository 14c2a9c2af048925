import { type Database, type Gathered, joined, readTogether, type Selection, sql } from "@/lib/db";
import type { LotKind } from "@/lib/schemas/notebook/kinds";
import { eachInSteps } from "@/lib/science/in-steps";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import type { BookedEntry } from "../ledger/balance";
import { countedBefore, mostStandingOf } from "./counted-before";
import { inTurns } from "./in-turns";
import { harvestParents, ownHarvests } from "./own-harvests";
import { asOneLot } from "./read-as-one";
import type {
  AllRecords,
  GrowOutRecord,
  KinshipRecord,
  LotRecord,
  ParentRecord,
  TestRecord,
  VarietyRecord,
} from "./records";

/** What the figures of some crops' lots are worked out from; a cross stays within its crop, so nothing outside is needed. */
export interface RecordsOfCrops extends AllRecords {
  /** the crop of each variety */
  readonly crops: ReadonlyMap<string, string>;
}

// Seed parents of all harvests of a grow-out together, where there were several and of one at least nobody said which plants they were.
const seedParentsAtMost = sql`
  (SELECT CASE WHEN COUNT(*) > 1 AND SUM(CASE WHEN EXISTS (SELECT 1 FROM "HarvestSeedParent" s WHERE s."harvestId" = h."id"
     AND s."plantId" IS NOT NULL) THEN 0 ELSE 1 END) > 0 THEN SUM(h."seedParents") END
   FROM "Harvest" h WHERE h."growOutId" = g."id" AND h."seedParents" IS NOT NULL)`;

/** Reads the records of some crops in one statement, however many they are, in the order of entry. */
export async function readRecords(db: Database, cropIds: readonly string[]): Promise<RecordsOfCrops> {
  const found = await readTogether(db, recordsOfCrops(cropIds));
  const links = grouped(found.links, (row) => `${row.kind} ${row.of}`);
  const varieties = grouped(found.varieties, (row) => row.id);
  const mostOf = mostStandingOf(found);
  const harvestsOf = ownHarvests(found.harvestParents);
  const leading = new Map(
    found.lots.flatMap(({ id, sameAsId }) => (sameAsId === null ? [] : [[id, sameAsId] as const])),
  );
  const records: RecordsOfCrops = {
    crops: new Map([...varieties].map(([id, rows]) => [id, rows[0]?.cropId ?? ""])),
    varieties: [...varieties.values()].flatMap(varietyRecord),
    lots: await inTurns(eachInSteps(found.lots, (row) => lotRecord(row, links.get(`lot ${row.id}`) ?? []))),
    growOuts: await inTurns(
      eachInSteps(found.growOuts, (row) =>
        growOutRecord(row, {
          from: links.get(`grow-out ${row.id}`) ?? [],
          seeds: links.get(`seed ${row.id}`) ?? [],
          mostStanding: mostOf(row),
          harvests: harvestsOf(row.id),
        }),
      ),
    ),
    kinships: found.kinships,
    ledger: found.ledger,
    tests: found.tests,
  };
  return asOneLot(records, leading);
}

function recordsOfCrops(cropIds: readonly string[]) {
  const these = cropIds.length > 0 ? joined([...cropIds]) : sql`NULL`;
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
  // Parents of lots, parents of grow-outs and the seed of kept plants are alike: something of a record, and a number.
  const links: Selection<LinkSql> = {
    columns: { kind: "text", of: "text", id: "text", amount: "number", role: "text" },
    rows: sql`
      SELECT 'lot' AS "kind", x."lotId" AS "of", x."parentLotId" AS "id", x."share" AS "amount", NULL AS "role", x."id" AS "place"
      FROM "LotParent" x
      JOIN "Lot" l ON l."id" = x."lotId" JOIN "Variety" v ON v."id" = l."varietyId" WHERE v."cropId" IN (${these})
      UNION ALL SELECT 'grow-out', x."growOutId", x."lotId", x."share", x."role", x."id" FROM "GrowOutParent" x
      JOIN "GrowOut" g ON g."id" = x."growOutId" JOIN "Variety" v ON v."id" = g."varietyId" WHERE v."cropId" IN (${these})
      UNION ALL SELECT 'seed', p."growOutId", COALESCE(p."sameAsId", p."id"), SUM(p."seedGrams"), NULL, COALESCE(p."sameAsId", p."id")
      FROM "Plant" p
      JOIN "GrowOut" g ON g."id" = p."growOutId" JOIN "Variety" v ON v."id" = g."varietyId"
      WHERE v."cropId" IN (${these}) AND g."seedShares" = 'plants' AND p."kept"
      GROUP BY p."growOutId", COALESCE(p."sameAsId", p."id") ORDER BY 6`,
  };
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
    links,
    ledger,
    tests,
    varieties,
    kinships,
    harvestParents: harvestParents(sql`v."cropId" IN (${these})`),
    ...countedBefore(sql`v."cropId" IN (${these})`),
  };
}

interface LinkSql {
  readonly kind: "lot" | "grow-out" | "seed";
  readonly of: string;
  readonly id: string;
  readonly amount: number | null;
  readonly role: ParentRecord["role"];
}
interface LotSql extends Omit<LotRecord, "parents"> {
  /** the record of the same lot that leads; null: this one */
  readonly sameAsId: string | null;
}
interface GrowOutSql extends Omit<GrowOutRecord, "parents" | "seedShares" | "mostStanding" | "harvests"> {
  readonly seedsSown: number | null;
  readonly cropKey: string;
  readonly seedShares: string | null;
  readonly seedSharesCv: number | null;
}
/** One row for each own value of the crop, at least one. */
function varietyRecord(rows: readonly VarietySql[]): VarietyRecord[] {
  const [first] = rows;
  if (!first) return [];
  const { id, name, cropId: _crop, clonal, field: _field, value: _value, ...profile } = first;
  const own = rows.flatMap(({ field, value }) => (field === null || value === null ? [] : [{ field, value }]));
  return [{ id, name, profile: profileOfCrop(profile, own), clonal }];
}

interface VarietySql {
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

function parents(rows: readonly LinkSql[]): ParentRecord[] {
  return rows.map(({ id, amount, role }) => (role ? { id, share: amount, role } : { id, share: amount }));
}

// Field by field: a spread of thousands of rows is several times slower, and leaves much behind to be cleared away.
function lotRecord(row: LotSql, from: readonly LinkSql[]): LotRecord {
  return {
    id: row.id,
    number: row.number,
    varietyId: row.varietyId,
    holder: row.holder,
    kind: row.kind as LotKind,
    growOutId: row.growOutId,
    parents: parents(from),
    inbreeding: row.inbreeding,
    founderLines: row.founderLines,
    thousandSeedGrams: row.thousandSeedGrams,
  };
}

function growOutRecord(
  row: GrowOutSql,
  of: {
    readonly from: readonly LinkSql[];
    readonly seeds: readonly LinkSql[];
    readonly mostStanding: number | null;
    readonly harvests: GrowOutRecord["harvests"];
  },
): GrowOutRecord {
  const record: GrowOutRecord = {
    id: row.id,
    name: row.name,
    varietyId: row.varietyId,
    parents: parents(of.from),
    plantsStanding: row.plantsStanding,
    malesStanding: row.malesStanding,
    roguedBeforePollen: row.roguedBeforePollen,
    seedParents: row.seedParents,
    seedShares: seedSharesOf(row.seedShares, row.seedSharesCv, of.seeds),
    selfingRate: row.selfingRate,
    foreignPollen: row.foreignPollen,
    detasselled: row.detasselled,
    seedParentsDetasselled: row.seedParentsDetasselled,
    seedParentsAtMost: row.seedParentsAtMost,
    roguedAfterPollen: row.roguedAfterPollen,
    mostStanding: of.mostStanding,
  };
  return of.harvests ? { ...record, harvests: of.harvests } : record;
}

/** How the seed parents shared in the seed, as it is stored; by plants only where each kept plant's seed was weighed. */
export function seedSharesOf(
  kind: string | null,
  cv: number | null,
  seeds: readonly { readonly amount: number | null }[],
): GrowOutRecord["seedShares"] {
  if (kind === "equal") return "equal";
  if (kind === "cv" && cv !== null) return { cv };
  if (kind !== "plants") return null;
  const grams = seeds.flatMap((plant) => plant.amount ?? []);
  return grams.length === seeds.length && grams.length > 0 ? grams : null;
}
