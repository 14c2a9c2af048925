import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { PutTogetherInput } from "@/lib/schemas/harvests/put-together";
import { cappedTaking } from "@/lib/science/harvest/capped-taking";
import { equalTakings } from "@/lib/science/harvest/equal-takings";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { debtRefusal } from "../ledger/debt-refusal";
import { entriesOfLot } from "../ledger/entries-of-lot";
import { unknownHarvest } from "./correct-harvest";
import { growOutForHarvest } from "./grow-out-for-harvest";
import { type HarvestOfGrowOut, keptParents, type SeedParent } from "./harvest";
import { keepInStep } from "./keep-in-step";
import { amountsOf, storedShares } from "./shares-of-harvest";

/** Why the seed of a small bag is not in the lot. */
export const LEFT_OUT = "left out, too little in it";

/** What lies in the jar now. */
export interface PutTogether {
  readonly growOutId: string;
  readonly lotId: string;
  /** in the unit of the bags */
  readonly total: number;
  readonly seedParents: number;
}

/**
 * Puts bags that were kept apart together in one jar: the same of each (the smallest that is not left out sets how much), as evenly as an
 * amount allows (small bags whole, of the others all the same), or the whole of each. What is left over leaves the ledger as discarded, and
 * the grow-out's figures follow. Seed that was mixed stays mixed.
 * Refused: a harvest whose bags are not apart, of which a bag was not measured or no lot is on record; more than the bags hold; a jar that
 * no longer holds what the bags held.
 */
export async function putTogether(
  db: Database,
  actor: Actor,
  harvestId: string,
  input: PutTogetherInput,
): Promise<Outcome<Performed<PutTogether>>> {
  return perform(db, actor, { action: "record", title: "Bags put together" }, async (change, tx) => {
    const found = await tx.harvest.findUnique({ where: { id: harvestId }, include: { lot: true } });
    if (!found) return refused(unknownHarvest(harvestId));
    const read = await growOutForHarvest(tx, found.growOutId);
    if (!read.ok) return read;
    const growOut = read.value;
    const old = growOut.harvests.find(({ id }) => id === harvestId);
    if (!old || found.lot === null || old.bulked !== "kept apart")
      return refused(
        refusal(
          "not-apart",
          ["way"],
          old?.bulked ?? "",
          "is how it lies already",
          "only bags that are apart can be mixed",
        ),
      );
    const bags = amountsOf(old.parents);
    if (bags === null || bags.amounts.length !== old.seedParents) {
      const needed = "put the harvest right first, with what lies in each";
      return refused(refusal("not-measured", ["way"], "kept apart", "has bags that were not measured", needed));
    }
    const taken = takenOf(input, bags.amounts);
    if (!taken.ok) return taken;
    const { amounts, equal } = taken.value;
    const total = sumOf(amounts);
    const left = Number((sumOf(bags.amounts) - total).toFixed(6));
    const fault = await discardRest(change, tx, found.lot, input, left, bags.unit);
    if (fault) return refused(fault);

    const harvest = mixed(old, amounts, equal, bags.unit);
    await change.update("Harvest", harvestId, {
      bulked: harvest.bulked,
      seedParents: harvest.seedParents,
      grams: harvest.grams,
      seeds: harvest.seeds,
      detasselled: harvest.detasselled,
      note: [old.note, input.note].filter(Boolean).join("; ") || null,
    });
    await change.updateMany(
      "HarvestSeedParent",
      old.parents.flatMap(({ id }, place) => {
        const parent = harvest.parents[place];
        return parent
          ? [{ id, patch: { grams: parent.grams, seeds: parent.seeds, lost: parent.lost, share: parent.share } }]
          : [];
      }),
    );
    const harvests = growOut.harvests.map((each) => (each.id === harvestId ? harvest : each));
    const step = await keepInStep(change, growOut, harvests, null);
    if (!step.ok) return step;
    change.touch(growOut.varietyId);
    change.title = `Bags of lot ${found.lot.number} put together`;
    return accepted({ growOutId: growOut.id, lotId: found.lot.id, total, seedParents: harvest.seedParents ?? 0 });
  });
}

/** What is taken of each bag, in their order: nothing of one that is left out. */
function takenOf(
  { way, leftOut, wanted }: PutTogetherInput,
  bags: readonly number[],
): Outcome<{ amounts: readonly number[]; equal: boolean }> {
  if (way === "all") return accepted({ amounts: bags, equal: false });
  if (way === "as even as can be") {
    if (wanted === null)
      return refused(refusal("missing", ["wanted"], "", "stands here", "write how much is wanted in all"));
    const taking = cappedTaking(bags, wanted);
    return taking.ok ? accepted({ amounts: taking.value.takings, equal: false }) : taking;
  }
  const takings = equalTakings(bags);
  if (!takings.ok) return takings;
  const taking = takings.value.find((each) => each.leftOut === (leftOut ?? 0));
  if (!taking) {
    const needed = `choose ${takings.value.map((each) => each.leftOut).join(", ")}`;
    return refused(refusal("no-gain", ["leftOut"], leftOut, "bags left out give no more than fewer", needed));
  }
  return accepted({ amounts: bags.map((amount) => (amount >= taking.each ? taking.each : 0)), equal: true });
}

/** The harvest as it lies in one jar. */
function mixed(
  old: HarvestOfGrowOut,
  amounts: readonly number[],
  equal: boolean,
  unit: "g" | "seeds",
): HarvestOfGrowOut {
  let place = 0;
  const parents = old.parents.map((parent): SeedParent => {
    if (parent.lost !== null) return parent;
    const amount = amounts[place] ?? 0;
    place += 1;
    if (amount === 0) return { ...parent, lost: LEFT_OUT };
    // In equal parts what a plant bore stays to be read; otherwise its share is what was taken of it.
    return equal ? parent : { ...parent, ...(unit === "g" ? { grams: amount } : { seeds: amount }) };
  });
  const seedParents = keptParents(parents).length;
  const total = Number(sumOf(amounts).toFixed(6));
  const bare: HarvestOfGrowOut = {
    ...old,
    bulked: equal ? (unit === "g" ? "equal weight" : "equal seeds") : "all together",
    seedParents,
    detasselled: old.detasselled === null ? null : Math.min(old.detasselled, seedParents),
    grams: unit === "g" ? total : null,
    seeds: unit === "seeds" ? total : null,
    parents,
  };
  const shares = storedShares(bare);
  return { ...bare, parents: parents.map((parent, index) => ({ ...parent, share: shares[index] ?? null })) };
}

async function discardRest(
  change: ChangeWriter,
  tx: Transaction,
  lot: { id: string; number: string; thousandSeedGrams: number | null },
  { on }: PutTogetherInput,
  amount: number,
  unit: "g" | "seeds",
) {
  if (amount <= 0) return null;
  const row = {
    ...{ id: uuidv7(), lotId: lot.id, on: on.text, onFirst: on.first, onLast: on.last },
    ...{ kind: "discarded", amount, unit, replacesId: null, takenBack: false },
    notes: "what was left in the bags when they were put together",
  };
  const before = await entriesOfLot(tx, lot.id);
  const debt = debtRefusal(before, [...before, row], row, lot.thousandSeedGrams);
  if (debt) {
    const needed = "weigh the bags again and put the harvest right first";
    return refusal("bags-changed", ["way"], lot.number, "no longer holds what its bags held", needed);
  }
  await change.create("LedgerEntry", row);
  return null;
}

function sumOf(amounts: readonly number[]): number {
  return amounts.reduce((sum, amount) => sum + amount, 0);
}
