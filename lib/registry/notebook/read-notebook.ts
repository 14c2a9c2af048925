import type { Client, Transaction } from "@/lib/db";
import type { LedgerKind, LotKind, LotSource, SeedSharesCell, StewardKind } from "@/lib/schemas/notebook/kinds";
import type {
  GrowOutRow,
  LedgerRow,
  LotRow,
  Notebook,
  PlantRow,
  StewardRow,
  TestRow,
  VarietyRow,
} from "@/lib/schemas/notebook/rows";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";

import { grouped } from "../change-set/grouped";
import { standingEntries } from "../ledger/balance";
import { scoreCell } from "./scores-of-plants";

type Reader = Client | Transaction;

/** The whole registry as the rows of a notebook folder, in the order of entry; each row carries the id of its record. */
export async function readNotebook(db: Reader): Promise<Notebook> {
  const stewards = await readStewards(db);
  const stewardNames = new Map(stewards.map((row) => [row.id as string, row.cells.steward]));
  const varieties = await readVarieties(db);
  const varietyNames = new Map(varieties.map((row) => [row.id as string, row.cells.variety]));
  const lotNumbers = new Map(
    (await db.lot.findMany({ select: { id: true, number: true } })).map((lot) => [lot.id, lot.number]),
  );
  const growOuts = await readGrowOuts(db, stewardNames, varietyNames, lotNumbers);
  const growOutNames = new Map(growOuts.map((row) => [row.id as string, row.cells.grow_out]));
  return {
    stewards,
    varieties,
    growOuts,
    lots: await readLots(db, stewardNames, varietyNames, lotNumbers, growOutNames),
    plants: await readPlants(db, growOutNames),
    tests: await readTests(db, lotNumbers),
    ledger: await readLedger(db, lotNumbers),
  };
}

type Names = ReadonlyMap<string, string>;
const byEntry = { orderBy: { id: "asc" } } as const;

// Relations are read as tables of their own and joined here: a list of all ids would be more arguments than a statement takes.
async function readStewards(db: Reader): Promise<StewardRow[]> {
  const names = new Map((await db.person.findMany()).map((person) => [person.stewardId, person.name]));
  return (await db.steward.findMany(byEntry)).map((steward) => ({
    id: steward.id,
    cells: {
      steward: names.get(steward.id) ?? `a steward ${steward.id.slice(-6)}`,
      place: steward.place,
      kind: steward.kind as StewardKind | null,
    },
    extra: extraOf(steward.extra),
  }));
}

async function readVarieties(db: Reader): Promise<VarietyRow[]> {
  const crops = new Map(
    (await db.crop.findMany({ select: { id: true, key: true, own: true, commonName: true } })).map((crop) => [
      crop.id,
      crop.own ? crop.commonName : crop.key,
    ]),
  );
  return (await db.variety.findMany(byEntry)).map((variety) => ({
    id: variety.id,
    cells: {
      variety: variety.name,
      crop: named(crops, variety.cropId),
      story: variety.story,
      type_description: variety.typeDescription,
    },
    extra: extraOf(variety.extra),
  }));
}

/** A single lot gave all plants. Where nobody knows the shares of several, even ones stand in; a file of their own says so. */
function sharesTold(parents: readonly { readonly lotId: string; readonly share: number | null }[]) {
  const known = parents.every((parent) => parent.share !== null);
  return parents.map(({ lotId, share }) => ({ lotId, share: known && share !== null ? share : 1 / parents.length }));
}

async function readGrowOuts(db: Reader, stewards: Names, varieties: Names, lots: Names): Promise<GrowOutRow[]> {
  const growOuts = await db.growOut.findMany(byEntry);
  const parents = grouped(await db.growOutParent.findMany(byEntry), (parent) => parent.growOutId);
  const plotOf = new Map(
    (await db.plot.findMany({ select: { id: true, name: true, stewardId: true } })).map((plot) => [plot.id, plot]),
  );
  // The line names a plot of its own steward alone; another's plot, and further plots, stand in a file of their own.
  const ownPlot = (plotId: string | undefined, stewardId: string | null) => {
    const plot = plotOf.get(plotId ?? "");
    return plot && plot.stewardId === stewardId ? plot.name : null;
  };
  const plots = grouped(await db.growOutPlot.findMany(byEntry), (stand) => stand.growOutId);
  return growOuts.map((growOut) => ({
    id: growOut.id,
    cells: {
      grow_out: growOut.name,
      variety: named(varieties, growOut.varietyId),
      steward: stewards.get(growOut.stewardId ?? "") ?? null,
      plot: ownPlot(plots.get(growOut.id)?.[0]?.plotId, growOut.stewardId),
      sown: dateOf(growOut.sown),
      parents: sharesTold(parents.get(growOut.id) ?? []).map(({ lotId, share }) => ({
        lot: named(lots, lotId),
        share,
      })),
      seeds_sown: growOut.seedsSown,
      plants_standing: growOut.plantsStanding,
      males_standing: growOut.malesStanding,
      rogued_before_pollen: growOut.roguedBeforePollen,
      rogued_after_pollen: growOut.roguedAfterPollen,
      seed_parents: growOut.seedParents,
      seed_shares: sharesOf(growOut.seedShares, growOut.seedSharesCv),
      selfing_rate: growOut.selfingRate,
      foreign_pollen: growOut.foreignPollen,
      outcome: growOut.outcome,
    },
    extra: extraOf(growOut.extra),
  }));
}

function sharesOf(kind: string | null, cv: number | null): SeedSharesCell | null {
  if (kind === "cv") return cv === null ? null : { cv };
  return kind === "equal" || kind === "plants" ? kind : null;
}

async function readLots(
  db: Reader,
  stewards: Names,
  varieties: Names,
  numbers: Names,
  growOuts: Names,
): Promise<LotRow[]> {
  const lots = await db.lot.findMany(byEntry);
  const parents = grouped(await db.lotParent.findMany(byEntry), (parent) => parent.lotId);
  return lots.map((lot) => ({
    id: lot.id,
    cells: {
      lot: lot.number,
      variety: named(varieties, lot.varietyId),
      holder: stewards.get(lot.holderId ?? "") ?? null,
      year: dateOf(lot.year),
      kind: lot.kind as LotKind,
      from: sourceOf({ ...lot, parents: parents.get(lot.id) ?? [] }, numbers, growOuts),
      thousand_seed_grams: lot.thousandSeedGrams,
      inbreeding: lot.inbreeding,
      notes: lot.notes,
    },
    extra: extraOf(lot.extra),
  }));
}

interface WithSource {
  readonly kind: string;
  readonly growOutId: string | null;
  readonly parents: readonly { readonly parentLotId: string; readonly share: number | null }[];
}

function sourceOf(lot: WithSource, numbers: Names, growOuts: Names): LotSource | null {
  if (lot.growOutId) return { growOut: named(growOuts, lot.growOutId) };
  if (lot.parents.length === 0) return null;
  return { lots: lot.parents.map((parent) => ({ lot: named(numbers, parent.parentLotId), share: parent.share ?? 1 })) };
}

async function readPlants(db: Reader, growOuts: Names): Promise<PlantRow[]> {
  const plants = await db.plant.findMany(byEntry);
  const traits = new Map(
    (await db.trait.findMany({ select: { id: true, name: true } })).map((trait) => [trait.id, trait.name]),
  );
  const scores = new Map<string, Record<string, string>>();
  for (const score of await db.score.findMany({ ...byEntry, where: { replacedBy: null, takenBack: false } })) {
    const own = scores.get(score.plantId) ?? {};
    own[`score:${named(traits, score.traitId)}`] = scoreCell(score);
    scores.set(score.plantId, own);
  }
  return plants.map((plant) => ({
    id: plant.id,
    cells: {
      grow_out: named(growOuts, plant.growOutId),
      plant: plant.name,
      cell: plant.cell,
      kept: plant.kept === null ? null : plant.kept ? "yes" : "no",
      seed_grams: plant.seedGrams,
    },
    extra: { ...scores.get(plant.id), ...extraOf(plant.extra) },
  }));
}

async function readTests(db: Reader, lots: Names): Promise<TestRow[]> {
  const replicates = grouped(await db.testReplicate.findMany(byEntry), (replicate) => replicate.testId);
  const counts = grouped(await standingCounts(db), (count) => count.replicateId);
  return (await db.germinationTest.findMany(byEntry)).flatMap((test) =>
    (replicates.get(test.id) ?? []).flatMap((replicate) =>
      (counts.get(replicate.id) ?? []).map((count) => ({
        id: count.id,
        cells: {
          test: test.name,
          lot: named(lots, test.lotId),
          date: dateOf(test.on) as FuzzyDate,
          replicate: replicate.name,
          sown: replicate.sown,
          day: count.day,
          normal: count.normal,
          abnormal: count.abnormal,
          hard: count.hard,
          fresh: count.fresh,
          dead: count.dead,
        },
        extra: extraOf(count.extra),
      })),
    ),
  );
}

/** Counts that no later one replaces. */
async function standingCounts(db: Reader) {
  const counts = await db.testCount.findMany(byEntry);
  const replaced = new Set(counts.flatMap((count) => count.replacesId ?? []));
  return counts.filter((count) => !replaced.has(count.id) && !count.takenBack);
}

/** The entries that stand, each in the place of the first of its chain: a correction comes where the old entry stood. */
async function readLedger(db: Reader, lots: Names): Promise<LedgerRow[]> {
  const standing = standingEntries(await db.ledgerEntry.findMany(byEntry)).filter(({ entry }) => entry.unit === "g");
  standing.sort((one, other) => (one.place < other.place ? -1 : one.place > other.place ? 1 : 0));
  return standing.map(({ entry }) => ({
    id: entry.id,
    cells: {
      lot: named(lots, entry.lotId),
      date: dateOf(entry.on) as FuzzyDate,
      kind: entry.kind as LedgerKind,
      grams: entry.amount,
      other: entry.other,
      notes: entry.notes,
    },
    extra: extraOf(entry.extra),
  }));
}

const dates = new Map<string, FuzzyDate>();

/** A stored date was accepted when it was stored. */
function dateOf(text: string | null): FuzzyDate | null {
  if (text === null) return null;
  const known = dates.get(text);
  if (known) return known;
  const read = parseDate(text);
  if (!read.ok) throw new Error(`a stored date is not one: ${text}`);
  if (dates.size > 20_000) dates.clear();
  dates.set(text, read.value);
  return read.value;
}

function named(names: Names, id: string): string {
  const name = names.get(id);
  if (name === undefined) throw new Error(`no record ${id}`);
  return name;
}

export function extraOf(text: string | null): Record<string, string> {
  return text === null ? {} : (JSON.parse(text) as Record<string, string>);
}
