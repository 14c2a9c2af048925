import { type Database, readTogether } from "@/lib/db";
import type { LotKind } from "@/lib/schemas/notebook/kinds";
import { eachInSteps } from "@/lib/science/in-steps";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import { mostStandingOf } from "./counted-before";
import { inTurns } from "./in-turns";
import { ownHarvests } from "./own-harvests";
import { asOneLot } from "./read-as-one";
import {
  type GrowOutSql,
  jarsOfCrops,
  type LotSql,
  lineageOfCrops,
  type SeedOfPlant,
  type VarietySql,
} from "./record-selections";
import type { AllRecords, FigureRecords, GrowOutRecord, LotRecord, ParentRecord, VarietyRecord } from "./records";

/** The records of some crops: the varieties with the crop of each, and the lineage of their lots. */
export interface LineageOfCrops extends FigureRecords {
  /** the crop of each variety */
  readonly crops: ReadonlyMap<string, string>;
}

/** What the figures of some crops' lots are worked out from; a cross stays within its crop, so nothing outside is needed. */
export interface RecordsOfCrops extends LineageOfCrops, AllRecords {}

/** Reads the records of some crops in one statement, however many they are, in the order of entry. */
export async function readRecords(db: Database, cropIds: readonly string[]): Promise<RecordsOfCrops> {
  const { ledger, tests, ...found } = await readTogether(db, { ...lineageOfCrops(cropIds), ...jarsOfCrops(cropIds) });
  return asOneLot({ ...(await lineageFound(found)), ledger, tests }, leadingOf(found.lots));
}

/** The same without what lies in the jars, for whoever follows the lineage alone. */
export async function readLineage(db: Database, cropIds: readonly string[]): Promise<LineageOfCrops> {
  const found = await readTogether(db, lineageOfCrops(cropIds));
  return asOneLot(await lineageFound(found), leadingOf(found.lots));
}

type Found = Awaited<ReturnType<typeof readTogether<ReturnType<typeof lineageOfCrops>>>>;

async function lineageFound(found: Found): Promise<LineageOfCrops> {
  const varieties = grouped(found.varieties, (row) => row.id);
  const mostOf = mostStandingOf(found);
  const harvestsOf = ownHarvests(found.harvestParents);
  return {
    crops: new Map([...varieties].map(([id, rows]) => [id, rows[0]?.cropId ?? ""])),
    varieties: [...varieties.values()].flatMap(varietyRecord),
    lots: await inTurns(eachInSteps(found.lots, (row) => lotRecord(row, found.parentsOfLots.get(row.id) ?? []))),
    growOuts: await inTurns(
      eachInSteps(found.growOuts, (row) =>
        growOutRecord(row, {
          parents: found.sownInGrowOuts.get(row.id) ?? [],
          seeds: found.seedOfPlants.get(row.id) ?? [],
          mostStanding: mostOf(row),
          harvests: harvestsOf(row.id),
        }),
      ),
    ),
    kinships: found.kinships,
  };
}

/** By the id of each record of a lot but the leading one: which leads. */
function leadingOf(lots: readonly LotSql[]): ReadonlyMap<string, string> {
  return new Map(lots.flatMap(({ id, sameAsId }) => (sameAsId === null ? [] : [[id, sameAsId] as const])));
}

/** One row for each own value of the crop, at least one. */
function varietyRecord(rows: readonly VarietySql[]): VarietyRecord[] {
  const [first] = rows;
  if (!first) return [];
  const { id, name, cropId: _crop, clonal, field: _field, value: _value, ...profile } = first;
  const own = rows.flatMap(({ field, value }) => (field === null || value === null ? [] : [{ field, value }]));
  return [{ id, name, profile: profileOfCrop(profile, own), clonal }];
}

// Field by field: a spread of thousands of rows is several times slower, and leaves much behind to be cleared away.
function lotRecord(row: LotSql, parents: readonly ParentRecord[]): LotRecord {
  return {
    id: row.id,
    number: row.number,
    varietyId: row.varietyId,
    holder: row.holder,
    kind: row.kind as LotKind,
    growOutId: row.growOutId,
    parents,
    inbreeding: row.inbreeding,
    founderLines: row.founderLines,
    thousandSeedGrams: row.thousandSeedGrams,
  };
}

function growOutRecord(
  row: GrowOutSql,
  of: {
    readonly parents: readonly ParentRecord[];
    readonly seeds: readonly SeedOfPlant[];
    readonly mostStanding: number | null;
    readonly harvests: GrowOutRecord["harvests"];
  },
): GrowOutRecord {
  const record: GrowOutRecord = {
    id: row.id,
    name: row.name,
    varietyId: row.varietyId,
    parents: of.parents,
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
