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

import { standingEntries } from "../ledger/balance";

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

async function readStewards(db: Reader): Promise<StewardRow[]> {
  const stewards = await db.steward.findMany({ ...byEntry, include: { person: true } });
  return stewards.map((steward) => ({
    id: steward.id,
    cells: {
      steward: steward.person?.name ?? `a steward ${steward.id.slice(-6)}`,
      place: steward.place,
      kind: steward.kind as StewardKind | null,
    },
    extra: extraOf(steward.extra),
  }));
}

async function readVarieties(db: Reader): Promise<VarietyRow[]> {
  const varieties = await db.variety.findMany({
    ...byEntry,
    include: { crop: { select: { key: true, own: true, commonName: true } } },
  });
  return varieties.map((variety) => ({
    id: variety.id,
    cells: {
      variety: variety.name,
      crop: variety.crop.own ? variety.crop.commonName : variety.crop.key,
      story: variety.story,
      type_description: variety.typeDescription,
    },
    extra: extraOf(variety.extra),
  }));
}

async function readGrowOuts(db: Reader, stewards: Names, varieties: Names, lots: Names): Promise<GrowOutRow[]> {
  const growOuts = await db.growOut.findMany({
    ...byEntry,
    include: { parents: byEntry, plots: { ...byEntry, include: { plot: { select: { name: true } } } } },
  });
  return growOuts.map((growOut) => ({
    id: growOut.id,
    cells: {
      grow_out: growOut.name,
      variety: named(varieties, growOut.varietyId),
      steward: stewards.get(growOut.stewardId ?? "") ?? null,
      plot: growOut.plots[0]?.plot.name ?? null,
      sown: dateOf(growOut.sown),
      parents: growOut.parents.map((parent) => ({ lot: named(lots, parent.lotId), share: parent.share ?? 1 })),
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
  const lots = await db.lot.findMany({ ...byEntry, include: { parents: byEntry } });
  return lots.map((lot) => ({
    id: lot.id,
    cells: {
      lot: lot.number,
      variety: named(varieties, lot.varietyId),
      holder: stewards.get(lot.holderId ?? "") ?? null,
      year: dateOf(lot.year),
      kind: lot.kind as LotKind,
      from: sourceOf(lot, numbers, growOuts),
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
    own[`score:${named(traits, score.traitId)}`] = score.text ?? String(score.value);
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
  const tests = await db.germinationTest.findMany({
    ...byEntry,
    include: {
      replicates: { ...byEntry, include: { counts: { ...byEntry, where: { replacedBy: null, takenBack: false } } } },
    },
  });
  return tests.flatMap((test) =>
    test.replicates.flatMap((replicate) =>
      replicate.counts.map((count) => ({
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
