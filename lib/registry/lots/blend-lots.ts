import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { BlendInput } from "@/lib/schemas/lots/blend-lots";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { type BookedEntry, balanceOf } from "../ledger/balance";
import { foldName } from "../names/fold-name";
import { type BlendPart, debtsOfParts, kindFaults, objectionsToBlend, partsOfBlend, seedWeightOf } from "./blend-parts";
import { holderOfLot } from "./holder-of-lot";
import { type LotRead, lotsInHand } from "./lot-in-hand";
import { newLabelCode } from "./new-label-code";
import { numberFaults } from "./number-faults";
import { reasonKept, refusalsOf } from "./objections";
import { whatIsSaidOfMix } from "./what-is-said-of-mix";

export interface BlendMade {
  readonly lotId: string;
  readonly number: string;
  /** numbers of the lots of which nothing is left unblended */
  readonly emptied: readonly string[];
}

/**
 * Mixes seed of lots of one variety into a new lot: "blended-out" in each ledger, "blended-in" for each in the new one, the shares of the
 * living seeds as its parents, a thousand-seed weight worked out of the parts, and the making with its reason.
 *
 * Refused: fewer than two lots, one twice, lots of different crops or varieties, a crop kept by division; amounts that are nothing, not
 * whole seeds, or more than a jar holds; a lot without seed weight; a number that is taken; treated seed, and a lot that is finished, dead,
 * discarded or not for seed. Without `override` a lot on hold, in quarantine, closed, warned of, of unknown treatment, untested, or of a
 * strain not shown to be one with the others; with it the reason is kept and the new lot stands on hold or in quarantine as its part did.
 */
export async function blendLots(db: Database, actor: Actor, input: BlendInput): Promise<Outcome<Performed<BlendMade>>> {
  const title = `A blend of ${input.parts.length} lots${input.number ? `: ${input.number}` : ""}`;
  return perform(db, actor, { action: "record", title, reason: input.reason }, async (change, tx) => {
    const found = await lotsOf(tx, input);
    if (!found.ok) return found;
    const lots = found.value;
    const kinds = kindFaults(lots);
    if (kinds.length > 0) return refused(...kinds);
    const objections = objectionsToBlend(lots);
    const { parts, refusals } = partsOfBlend(lots, input.parts);
    const holder = await holderOfLot(tx, change, input);
    const at = (number: string) => ["parts", lots.findIndex((lot) => lot.number === number), "lot"];
    const out = (part: BlendPart) => ({ ...entryOf(input.on, part), lotId: part.lot.id, kind: "blended-out" });
    const faults: Refusal[] = [
      ...refusalsOf(objections, input.override, at),
      ...refusals,
      ...debtsOfParts(lots, parts, out),
      ...(holder.ok ? [] : holder.refusals),
      ...(await numberFaults(tx, input.number)),
    ];
    if (faults.length > 0 || !holder.ok) return refused(...faults);

    const code = await newLabelCode(tx);
    const lotId = uuidv7();
    const number = input.number ?? code;
    await change.create("Lot", {
      ...whatIsSaidOfMix(lots, input.on),
      ...{ id: lotId, number, numberKey: foldName(number), code, kind: "blend", origin: "blend" },
      holderId: holder.value,
      thousandSeedGrams: seedWeightOf(parts),
      notes: input.notes,
    });
    await change.create(
      "LedgerEntry",
      ...parts.flatMap((part) => [
        { ...out(part), other: number, otherLotId: lotId },
        {
          ...{ ...entryOf(input.on, part), lotId, kind: "blended-in" },
          ...{ other: part.lot.number, otherLotId: part.lot.id },
        },
      ]),
    );
    await change.create(
      "LotParent",
      ...parts.map(({ lot, share }) => ({ id: uuidv7(), lotId, parentLotId: lot.id, share })),
    );
    const words = wordsOfPersons(lots, input);
    await change.create("LotMaking", {
      ...{ id: uuidv7(), lotId, kind: "blend", on: input.on.text, onFirst: input.on.first, onLast: input.on.last },
      reason: [reasonKept(input.reason, objections, input.override), ...words].join("; "),
      stewardId: actor.stewardId,
    });
    change.touch(...lots.map((lot) => lot.varietyId));
    return accepted({
      lotId,
      number,
      emptied: parts.filter((part) => nothingLeft(part, out(part))).map((part) => part.lot.number),
    });
  });
}

async function lotsOf(tx: Transaction, { parts }: BlendInput): Promise<Outcome<LotRead[]>> {
  const ids = parts.map((part) => part.lot);
  const byId = await lotsInHand(tx, ids);
  const missing = ids.flatMap((id, place) =>
    byId.has(id)
      ? []
      : [refusal("unknown-lot", ["parts", place, "lot"], id, "is no lot of this registry", "choose one of the list")],
  );
  return missing.length > 0 ? refused(...missing) : accepted(ids.flatMap((id) => byId.get(id) ?? []));
}

function entryOf(on: FuzzyDate, { grams }: BlendPart) {
  const day = { on: on.text, onFirst: on.first, onLast: on.last };
  return { id: uuidv7(), ...day, amount: grams, unit: "g", replacesId: null, takenBack: false };
}

/** Whether the jar holds nothing more on the last day of its ledger, but for the rounding of sums. */
function nothingLeft({ lot }: BlendPart, entry: BookedEntry): boolean {
  return (balanceOf([...lot.ledger, entry], lot.thousandSeedGrams).grams ?? 0) < 1e-6;
}

/** What a person took to live of a lot without a test is kept with the reason: no record says it otherwise. */
function wordsOfPersons(lots: readonly LotRead[], { parts }: BlendInput): string[] {
  return parts.flatMap(({ living }, place) =>
    living === null
      ? []
      : [`of lot ${lots[place]?.number}, untested, ${Number((living * 100).toFixed(1))} % were taken to live`],
  );
}
