import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { HarvestCorrectionInput } from "@/lib/schemas/harvests/harvest-entry";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { standingEntries } from "../ledger/balance";
import { debtRefusal } from "../ledger/debt-refusal";
import { entriesOfLot } from "../ledger/entries-of-lot";
import { growOutForHarvest } from "./grow-out-for-harvest";
import { harvestFaults } from "./harvest-faults";
import { harvestWarnings } from "./harvest-warnings";
import { keepInStep } from "./keep-in-step";
import { entryOfHarvest, harvestRow, seedWeightOf, type WholeHarvest, wholeOf } from "./record-harvest";

export interface CorrectedHarvest {
  readonly harvestId: string;
  /** null: no lot of it is on record */
  readonly lotId: string | null;
  readonly growOutId: string;
  readonly warnings: readonly Assumption[];
}

/**
 * Puts a harvest right, with the reason: its seed parents, how they were put together, what it came to. What stood there stays in the
 * history; in the ledger of its lot a new entry takes the place of the old one, which stays to be read. Number and holder of the lot are
 * not changed here. The same is refused as of a new harvest, and an amount that later entries of the ledger have used up.
 */
export async function correctHarvest(
  db: Database,
  actor: Actor,
  harvestId: string,
  input: HarvestCorrectionInput,
  today: CivilDay,
): Promise<Outcome<Performed<CorrectedHarvest>>> {
  const operation = { action: "correct" as const, title: "A harvest put right", reason: input.reason };
  return perform(db, actor, operation, async (change, tx) => {
    const old = await tx.harvest.findUnique({ where: { id: harvestId }, include: { parents: true } });
    if (!old) return refused(unknownHarvest(harvestId));
    const read = await growOutForHarvest(tx, old.growOutId);
    if (!read.ok) return read;
    const growOut = read.value;
    const faults = harvestFaults(input, growOut);
    if (faults.length > 0) return refused(...faults);

    const { harvest, row, parentRows } = harvestRow(harvestId, input);
    const { id: _id, ...patch } = row;
    await change.update("Harvest", harvestId, patch);
    await change.remove(
      "HarvestSeedParent",
      old.parents.map(({ id }) => id),
    );
    await change.createAll("HarvestSeedParent", parentRows);
    const whole = wholeOf(input);
    if (old.lotId !== null) {
      const fault = await correctLotOf(change, tx, old.lotId, input, { was: old, is: whole });
      if (fault) return refused(fault);
    }
    const harvests = growOut.harvests.map((each) => (each.id === harvestId ? harvest : each));
    const step = await keepInStep(change, growOut, harvests, input.detasselled);
    if (!step.ok) return step;
    change.touch(growOut.varietyId);
    change.title = `Harvest of ${growOut.name} put right`;
    const warnings = harvestWarnings({ ...input, ...whole }, growOut, seedWeightOf(whole), today);
    return accepted({ harvestId, lotId: old.lotId, growOutId: growOut.id, warnings });
  });
}

export function unknownHarvest(harvestId: string): Refusal {
  return refusal("unknown", ["harvest"], harvestId, "is no harvest of this registry", "choose one of the list");
}

/** The lot's date, its ledger entry, and the seed weight that was taken from the harvest. */
async function correctLotOf(
  change: ChangeWriter,
  tx: Transaction,
  lotId: string,
  input: HarvestCorrectionInput,
  { was, is }: { was: WholeHarvest; is: WholeHarvest },
): Promise<Refusal | null> {
  const lot = await tx.lot.findUniqueOrThrow({ where: { id: lotId }, include: { ledger: true } });
  const whole = await entriesOfLot(tx, lotId);
  const weight = seedWeightOf(is);
  const followed = weight !== null && (lot.thousandSeedGrams === null || lot.thousandSeedGrams === seedWeightOf(was));
  await change.update("Lot", lotId, {
    year: input.on.text,
    yearFirst: input.on.first,
    yearLast: input.on.last,
    ...(followed ? { thousandSeedGrams: weight } : {}),
  });
  const entry = entryOfHarvest(lotId, input, is);
  const standing = standingEntries(lot.ledger).filter((each) => each.entry.kind === "harvested");
  if (standing.length > 1) {
    if (entry === null || entry.amount === (was.grams ?? was.seeds)) return null;
    const needed = "correct them in the ledger of the lot";
    return refusal("several-entries", ["grams"], entry.amount, `stands against ${standing.length} entries`, needed);
  }
  const written = entryInPlace(standing[0]?.entry ?? null, entry);
  if (written === null) return null;
  const debt = debtRefusal(whole, [...whole, written], written, lot.thousandSeedGrams);
  if (debt) return { ...debt, path: ["grams"] };
  await change.create("LedgerEntry", written);
  return null;
}

/** What takes the place of the entry that brought the seed in; null where nothing has to change. An amount that is gone takes it back. */
function entryInPlace(was: RowOf<"LedgerEntry"> | null, is: ReturnType<typeof entryOfHarvest>) {
  if (was === null) return is;
  const { extra: _extra, ...kept } = was;
  if (is === null) return { ...kept, id: uuidv7(), replacesId: was.id, takenBack: true };
  const same = was.amount === is.amount && was.unit === is.unit && was.on === is.on;
  return same ? null : { ...kept, ...is, replacesId: was.id };
}
