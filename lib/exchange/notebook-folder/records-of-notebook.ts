import type {
  AllRecords,
  ByLot,
  GrowOutRecord,
  LotRecord,
  TestRecord,
  VarietyRecord,
} from "@/lib/registry/figures/records";
import type { BookedEntry } from "@/lib/registry/ledger/balance";
import { sameName } from "@/lib/registry/names/fold-name";
import type { GrowOutRow, LedgerRow, LotRow, Notebook, TestRow, VarietyRow } from "@/lib/schemas/notebook/rows";
import type { CropProfile } from "@/lib/science/crops/crop-profile";
import { clonal } from "@/lib/science/crops/mating";
import { grouped } from "./check";

/** The rows of a notebook as records for the figures; each record's id is its name for matching. */
export function recordsOfNotebook(notebook: Notebook, profileOf: (crop: string) => CropProfile): AllRecords {
  const seed = seedOfKeptPlants(notebook);
  return {
    varieties: notebook.varieties.map((row) => varietyRecord(row, profileOf(row.cells.crop))),
    lots: notebook.lots.map(lotRecord),
    growOuts: notebook.growOuts.map((row) => growOutRecord(row, seed)),
    ledger: ledgerOfLots(notebook.ledger),
    tests: testsOfLots(notebook.tests),
  };
}

export function varietyRecord({ cells }: VarietyRow, profile: CropProfile): VarietyRecord {
  return { id: sameName(cells.variety), name: cells.variety, profile, clonal: clonal(profile) };
}

export function lotRecord({ cells }: LotRow): LotRecord {
  const from = cells.from;
  return {
    id: sameName(cells.lot),
    number: cells.lot,
    varietyId: sameName(cells.variety),
    holder: cells.holder,
    kind: cells.kind,
    growOutId: from !== null && "growOut" in from ? sameName(from.growOut) : null,
    parents: from !== null && "lots" in from ? from.lots.map(({ lot, share }) => ({ id: sameName(lot), share })) : [],
    inbreeding: cells.inbreeding,
    thousandSeedGrams: cells.thousand_seed_grams,
  };
}

/** `seed`: the grams of each kept plant, by the grow-out's name for matching. */
export function growOutRecord(
  { cells }: Pick<GrowOutRow, "cells">,
  seed: ReadonlyMap<string, readonly number[]>,
): GrowOutRecord {
  const id = sameName(cells.grow_out);
  return {
    id,
    name: cells.grow_out,
    varietyId: sameName(cells.variety),
    parents: cells.parents.map(({ lot, share }) => ({ id: sameName(lot), share })),
    plantsStanding: cells.plants_standing,
    malesStanding: cells.males_standing,
    roguedBeforePollen: cells.rogued_before_pollen,
    seedParents: cells.seed_parents,
    seedShares: cells.seed_shares === "plants" ? (seed.get(id) ?? null) : cells.seed_shares,
    selfingRate: cells.selfing_rate,
    foreignPollen: cells.foreign_pollen,
  };
}

function seedOfKeptPlants({ plants }: Notebook): Map<string, number[]> {
  const kept = plants.filter(({ cells }) => cells.kept === "yes");
  const groups = grouped(kept, ({ cells }) => cells.grow_out);
  return new Map([...groups].map(([growOut, rows]) => [growOut, rows.map(({ cells }) => cells.seed_grams ?? 0)]));
}

function ledgerOfLots(rows: readonly LedgerRow[]): ByLot<BookedEntry> {
  const entries = rows.map(({ cells }, place) => ({
    lotId: sameName(cells.lot),
    id: String(place).padStart(9, "0"),
    kind: cells.kind,
    amount: cells.grams,
    unit: "g",
    onFirst: cells.date.first,
    onLast: cells.date.last,
    replacesId: null,
    takenBack: false,
  }));
  return grouped(entries, ({ lotId }) => lotId);
}

function testsOfLots(rows: readonly TestRow[]): ByLot<TestRecord> {
  const tests = [...grouped(rows, ({ cells }) => cells.test).values()].map((lines) => {
    const { test, lot, date } = (lines[0] as TestRow).cells;
    const replicates = [...grouped(lines, ({ cells }) => cells.replicate).values()];
    return {
      lotId: sameName(lot),
      id: sameName(test),
      name: test,
      date: date.text,
      first: date.first,
      sown: replicates.reduce((sum, counts) => sum + (counts[0]?.cells.sown ?? 0), 0),
      normal: lines.reduce((sum, { cells }) => sum + cells.normal, 0),
    };
  });
  return grouped(tests, ({ lotId }) => lotId);
}
