import { growOutNode, lotNode } from "@/lib/registry/figures/lineage-nodes";
import { lineageOfRecords } from "@/lib/registry/figures/lineage-of-records";
import { plotParentsOfRecord } from "@/lib/registry/figures/plot-parents-of-record";
import type { GrowOutRecord, LotRecord } from "@/lib/registry/figures/records";
import { sameName } from "@/lib/registry/names/fold-name";
import type { GrowOutRow, LotRow } from "@/lib/schemas/notebook/rows";
import { clonal } from "@/lib/science/crops/mating";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import type { Refusal } from "@/lib/science/outcome";
import { type Check, faultAt, grouped, profileOf } from "./check";
import type { SeedOfPlants } from "./check-plants";
import { type Entry, tainted } from "./entries";
import { growOutRecord, lotRecord } from "./records-of-notebook";

type GrowOut = Entry<"growOuts">;
type Lot = Entry<"lots">;

/** Which column of grow_outs.csv a field of the calculation comes from. */
const columnOf: Readonly<Record<string, string>> = {
  pollenParents: "plants_standing",
  seedParents: "seed_parents",
  seedShares: "seed_shares",
  pollenShares: "plants_standing",
  selfingRate: "selfing_rate",
  selfIncompatible: "plants_standing",
  sexes: "males_standing",
  foreignPollen: "foreign_pollen",
  parents: "parents",
};

/**
 * Whatever the calculations refuse of a grow-out that gave a lot is a fault of its line. Then all that is sound is followed down
 * its lineage, in case something can only be seen there.
 */
export function checkLineage(check: Check, seed: SeedOfPlants): void {
  const harvests = grouped(check.entries.lots.bearers(), (lot) => growOutOf(lot));
  const refusedHere = new Set<string>();
  for (const [key, lots] of harvests) {
    const growOut = check.entries.growOuts.get(key);
    if (!growOut || (growOut.draft === null && lots.every((lot) => lot.record !== null))) continue;
    const faults = plantFaults(check, growOut, seed);
    if (faults.length > 0) refusedHere.add(key);
    for (const fault of faults) {
      const column = columnOf[String(fault.path[0])] ?? null;
      if (column !== null) growOut.draft?.faulty.add(column);
      faultAt(check, [growOut, ...lots.filter((lot) => lot.record === null)], column, fault);
    }
  }
  followSound(check, seed);
}

function growOutOf({ cells }: Lot): string | null {
  return cells.from !== null && "growOut" in cells.from ? cells.from.growOut : null;
}

const plantColumns = [
  "grow_out",
  "variety",
  "plants_standing",
  "males_standing",
  "rogued_before_pollen",
  "rogued_after_pollen",
  "seed_parents",
  "seed_shares",
  "selfing_rate",
];

function plantFaults(check: Check, growOut: GrowOut, seed: SeedOfPlants): readonly Refusal[] {
  const profile = profileOf(check, growOut.cells.variety);
  if (profile === null || tainted(growOut, ...plantColumns)) return [];
  const record = recordOf(growOut, seed);
  if (record === null || (growOut.cells.seed_shares === "plants" && record.seedShares === null)) return [];
  const { parents } = plotParentsOfRecord(record, profile);
  return parents === null ? [] : plotParentsFaults(parents);
}

/** The grow-out's counts, whatever became of its parents' cell. */
function recordOf({ cells }: GrowOut, seed: SeedOfPlants): GrowOutRecord | null {
  if (cells.grow_out === null || cells.variety === null) return null;
  const whole = { ...cells, parents: cells.parents ?? [] } as GrowOutRow["cells"];
  return growOutRecord({ cells: whole }, seed);
}

function followSound(check: Check, seed: SeedOfPlants): void {
  const sound = new SoundLots(check);
  const lots = sound.lots.map(({ cells }) => lotRecord({ cells: cells as LotRow["cells"], extra: {} }));
  const growOuts = sound.growOuts.flatMap((growOut) => recordOf(growOut, seed) ?? []);
  const varieties = [...check.profiles].flatMap(([id, profile]) =>
    profile === null ? [] : [{ id, name: id, profile, clonal: clonal(profile) }],
  );
  const followed = lineageOfRecords({ varieties, lots, growOuts });
  if (followed.ok) return;
  for (const fault of followed.refusals) reportAt(check, fault, lots);
}

function reportAt(check: Check, fault: Refusal, lots: readonly LotRecord[]): void {
  const [table, id, field] = fault.path;
  const key = String(id);
  const column = columnOf[String(field)] ?? null;
  if (table === "growOuts") faultAt(check, [check.entries.growOuts.get(key)], column, fault);
  else faultAt(check, [check.entries.lots.get(lots.find((lot) => lot.id === key)?.number ?? key)], "from", fault);
}

/** Lots and grow-outs without a fault that bears on the lineage, and whose ancestors have none either. */
class SoundLots {
  readonly lots: Lot[] = [];
  readonly growOuts: GrowOut[] = [];
  readonly #sound = new Map<string, boolean>();

  constructor(check: Check) {
    const lots = check.entries.lots.bearers();
    const growOuts = check.entries.growOuts.bearers();
    const parents = new Map<string, string[]>();
    for (const lot of lots) {
      const from = lot.cells.from;
      const above = from !== null && "lots" in from ? from.lots.map((each) => lotNode(sameName(each.lot))) : [];
      const growOut = growOutOf(lot);
      const key = lotNode(sameName(lot.cells.lot ?? ""));
      parents.set(key, growOut === null ? above : [growOutNode(sameName(growOut))]);
      this.#sound.set(key, !tainted(lot, "lot", "variety", "kind", "from", "inbreeding"));
    }
    for (const growOut of growOuts) {
      const key = growOutNode(sameName(growOut.cells.grow_out ?? ""));
      parents.set(
        key,
        (growOut.cells.parents ?? []).map((each) => lotNode(sameName(each.lot))),
      );
      this.#sound.set(key, !tainted(growOut, ...plantColumns, "parents", "foreign_pollen"));
    }
    this.#spread(parents);
    this.lots = lots.filter((lot) => this.#sound.get(lotNode(sameName(lot.cells.lot ?? ""))) === true);
    this.growOuts = growOuts.filter(
      (growOut) => this.#sound.get(growOutNode(sameName(growOut.cells.grow_out ?? ""))) === true,
    );
  }

  /** What descends from something unsound is unsound. */
  #spread(parents: ReadonlyMap<string, readonly string[]>): void {
    const children = new Map<string, string[]>();
    for (const [key, above] of parents) {
      for (const parent of above) {
        const list = children.get(parent);
        if (list) list.push(key);
        else children.set(parent, [key]);
      }
    }
    const unsound = new Set([...this.#sound].flatMap(([key, sound]) => (sound ? [] : [key])));
    for (const key of unsound) for (const child of children.get(key) ?? []) unsound.add(child);
    for (const key of unsound) this.#sound.set(key, false);
  }
}
