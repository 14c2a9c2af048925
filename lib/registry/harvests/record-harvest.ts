import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { HarvestInput, NewHarvestInput } from "@/lib/schemas/harvests/harvest-entry";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type Assumption, accepted, type Outcome, refused } from "@/lib/science/outcome";
import { thousandSeedWeight } from "@/lib/science/seed-weight/thousand-seed-weight";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import type { FromPhone } from "../grow-outs/field-entry";
import { holderOfLot } from "../lots/holder-of-lot";
import { newLabelCode } from "../lots/new-label-code";
import { numberFaults } from "../lots/number-faults";
import { foldName } from "../names/fold-name";
import { growOutForHarvest } from "./grow-out-for-harvest";
import type { HarvestOfGrowOut } from "./harvest";
import { harvestFaults, seedParentsTold } from "./harvest-faults";
import { harvestWarnings } from "./harvest-warnings";
import { keepInStep } from "./keep-in-step";
import { amountsOf, storedShares } from "./shares-of-harvest";
import { writeToldHarvest } from "./told-harvest";

/** What a harvest left: the lot that it became, and what looks implausible of it. */
export interface RecordedHarvest {
  readonly harvestId: string;
  readonly lotId: string;
  readonly number: string;
  readonly warnings: readonly Assumption[];
}

/**
 * Enters a harvest of a grow-out. It becomes one lot of its own, with its first ledger entry, and the grow-out's figures follow. Seed that is
 * kept apart is one lot too: every lot of a grow-out is the same pool of plants in the lineage, and what lies in each bag stands with its
 * seed parent, so that equal shares can still be taken.
 *
 * Refused: no seed parent; more of them than plants that were left to flower (females where the sexes are separate); plants of another
 * grow-out or twice; more seed together than the bags held; in equal parts more than the smallest allows; more tassels than plants; a
 * number that is taken. What looks implausible is stored and warned of.
 */
export async function recordHarvest(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: NewHarvestInput,
  today: CivilDay,
): Promise<Outcome<Performed<RecordedHarvest>>> {
  return perform(db, actor, { action: "record", title: "A harvest" }, (change) =>
    enterHarvest(change, growOutId, input, today),
  );
}

/** Writes a harvest with the lot that it makes; `id` is that of its row, `from` the phone that it was recorded on. */
export async function enterHarvest(
  change: ChangeWriter,
  growOutId: string,
  input: NewHarvestInput,
  today: CivilDay,
  { id, from, stewardId = null }: { id?: string; from?: FromPhone; stewardId?: string | null } = {},
): Promise<Outcome<RecordedHarvest>> {
  const { tx } = change;
  const read = await growOutForHarvest(tx, growOutId);
  if (!read.ok) return read;
  const growOut = read.value;
  const holder = await holderOfLot(tx, change, input);
  const faults = [
    ...harvestFaults(input, growOut),
    ...(await numberFaults(tx, input.number)),
    ...(holder.ok ? [] : holder.refusals),
  ];
  if (faults.length > 0 || !holder.ok) return refused(...faults);

  const told = await writeToldHarvest(change, growOut);
  const code = await newLabelCode(tx);
  const number = input.number ?? code;
  const [harvestId, lotId] = [id ?? uuidv7(), uuidv7()];
  const whole = wholeOf(input);
  const weight = seedWeightOf(whole);
  await change.create("Lot", {
    id: lotId,
    number,
    numberKey: foldName(number),
    code,
    varietyId: growOut.varietyId,
    holderId: holder.value,
    kind: "harvest",
    growOutId,
    origin: "own grow-out",
    year: input.on.text,
    yearFirst: input.on.first,
    yearLast: input.on.last,
    thousandSeedGrams: weight,
  });
  const harvest = harvestRow(harvestId, input);
  await change.create("Harvest", { ...harvest.row, growOutId, lotId, stewardId, ...from });
  await change.createAll("HarvestSeedParent", harvest.parentRows);
  await firstEntry(change, lotId, input, whole);
  if (weight !== null)
    await change.create("SeedWeighing", { id: uuidv7(), lotId, on: input.on.text, ...weighed(whole) });
  const harvests = [...growOut.harvests, ...(told ? [told] : []), harvest.harvest];
  const step = await keepInStep(change, growOut, harvests, input.detasselled);
  if (!step.ok) return step;
  change.touch(growOut.varietyId);
  change.title = `Harvest of ${growOut.name}: lot ${number}`;
  const warnings = harvestWarnings({ ...input, ...whole }, growOut, weight, today);
  return accepted({ harvestId, lotId, number, warnings });
}

/** Seed in all: as it was measured, else what lies in the bags where it all went in. */
export interface WholeHarvest {
  readonly grams: number | null;
  readonly seeds: number | null;
}

export function wholeOf(input: HarvestInput): WholeHarvest {
  const { grams, seeds, bulked } = input;
  if (grams !== null || seeds !== null) return { grams, seeds };
  const bags = amountsOf(input.parents);
  const complete = bags !== null && bags.amounts.length === seedParentsTold(input);
  if (!complete || bulked === "equal seeds" || bulked === "equal weight") return { grams, seeds };
  const sum = Number(bags.amounts.reduce((total, amount) => total + amount, 0).toFixed(6));
  return bags.unit === "g" ? { grams: sum, seeds } : { grams, seeds: sum };
}

/** Counted and weighed in all, a harvest gives its own thousand-seed weight. */
export function seedWeightOf({ grams, seeds }: WholeHarvest): number | null {
  if (grams === null || seeds === null) return null;
  const weight = thousandSeedWeight({ counts: [{ seeds, grams }] });
  return weight.ok ? weight.value.thousandSeedGrams : null;
}

function weighed({ grams, seeds }: WholeHarvest) {
  return { grams: grams ?? 0, seeds: seeds ?? 0, note: "the whole harvest" };
}

/** A harvest as rows of the tables, and as the pool reads it. */
export function harvestRow(id: string, input: HarvestInput) {
  const whole = wholeOf(input);
  const bare: HarvestOfGrowOut = {
    id,
    bulked: input.bulked,
    seedParents: seedParentsTold(input),
    detasselled: input.seedParentsDetasselled,
    ...whole,
    parents: input.parents.map((parent) => ({ ...parent, share: null })),
  };
  const shares = storedShares(bare);
  const parents = input.parents.map(({ plantId, grams, seeds, lost }, place) => ({
    plantId,
    grams,
    seeds,
    lost,
    share: shares[place] ?? null,
  }));
  const { parents: _parents, ...fields } = bare;
  return {
    harvest: { ...bare, parents },
    row: {
      ...fields,
      on: input.on.text,
      onFirst: input.on.first,
      onLast: input.on.last,
      mouldyShare: input.mouldyShare,
      note: input.note,
    },
    parentRows: parents.map((parent) => ({ id: uuidv7(), harvestId: id, ...parent })),
  };
}

/** The entry that brings the seed into the jar; none where nobody measured it. */
export function entryOfHarvest(lotId: string, input: HarvestInput, { grams, seeds }: WholeHarvest) {
  const amount = grams ?? seeds;
  if (amount === null) return null;
  const { text: on, first: onFirst, last: onLast } = input.on;
  const unit = grams === null ? "seeds" : "g";
  return {
    id: uuidv7(),
    lotId,
    on,
    onFirst,
    onLast,
    kind: "harvested",
    amount,
    unit,
    replacesId: null,
    takenBack: false,
  };
}

async function firstEntry(change: ChangeWriter, lotId: string, input: HarvestInput, whole: WholeHarvest) {
  const entry = entryOfHarvest(lotId, input, whole);
  if (entry) await change.create("LedgerEntry", entry);
}
