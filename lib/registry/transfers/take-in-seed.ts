import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { TakeInInput } from "@/lib/schemas/transfers/transfer";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { amountFaults } from "../ledger/record-ledger-entry";
import { holderOfLot } from "../lots/holder-of-lot";
import { varietyByName } from "../lots/variety-by-name";
import { stewardNamed } from "../stewards/steward-named";
import { type Answered, answeredTransfer } from "./answered-transfer";
import { giversLot, type TakingIn, writeFounder, writePartOfGiversLot } from "./lot-taken-in";
import { strainOf } from "./strain-of";
import type { TransferTakenIn } from "./transfer-draft";

/** What taking seed in left in the tables. */
export interface TakenInSeed {
  readonly lotId: string;
  readonly number: string;
  readonly transferId: string;
}

/**
 * Takes seed in: a lot with its own number, in quarantine, with the story in the giver's words, the ledger's entry and the transfer. From a
 * giver whose lot is on record it is part of that lot (with an entry on each side); else its parents are unknown before here. A return
 * names the transfer that it answers, and may keep what was promised with it.
 * Refused: an unknown variety, steward, lot or transfer; neither a story nor the word that nothing was told; a day to come.
 */
export async function takeInSeed(
  db: Database,
  actor: Actor,
  input: TakeInInput,
  today: CivilDay,
): Promise<Outcome<Performed<TakenInSeed>>> {
  const title = `Taken in: ${input.variety}, ${input.kind === "return" ? "back again" : `by ${input.kind}`}`;
  return perform(db, actor, { action: "desk", title }, async (change, tx) => {
    const variety = await varietyByName(tx, input.variety);
    const holder = await holderOfLot(tx, change, input);
    const giver = await giverOf(tx, input);
    const from = variety.ok ? await giversLot(tx, input.fromLot, variety.value) : accepted(null);
    const answered = variety.ok ? await answeredTransfer(tx, input.answers, variety.value.id) : accepted(null);
    const faults = [
      ...[variety, holder, giver, from, answered].flatMap((each) => (each.ok ? [] : each.refusals)),
      ...plainFaults(input, today),
    ];
    if (faults.length > 0 || !variety.ok || !holder.ok || !giver.ok || !from.ok || !answered.ok)
      return refused(...faults);
    const taking: TakingIn = {
      input,
      varietyId: variety.value.id,
      holderId: holder.value,
      giverId: giver.value ?? from.value?.holderId ?? null,
      giverName: input.giver ?? input.giverWords,
      strainId: await strainOf(change, tx, variety.value.id, input.strain, giver.value),
      statusReason: `came ${input.kind === "return" ? "back" : "in"} on ${input.on.text}; not compared yet`,
    };
    const transfer = transferOf(taking, answered.value);
    const lot = from.value
      ? await writePartOfGiversLot(change, tx, taking, from.value, transfer, actor.stewardId)
      : await writeFounder(change, tx, taking, transfer);
    if (!lot.ok) return lot;
    await writeWords(change, taking, lot.value.lotId, actor.stewardId);
    if (input.keepsPromise) await keepPromisesOf(change, tx, answered.value, input.on.text);
    change.touch(variety.value.id);
    return accepted({ ...lot.value, transferId: transfer.id });
  });
}

/** Without the lot, which is written with it. A return is of the lot that it answers; other seed that comes from outside, of its own lot. */
function transferOf({ input, holderId, giverId }: TakingIn, answered: Answered | null): TransferTakenIn {
  return {
    id: uuidv7(),
    kind: input.kind,
    lotId: answered ? (answered.newLotId ?? answered.lotId) : null,
    fromStewardId: giverId,
    toStewardId: holderId,
    on: input.on.text,
    onFirst: input.on.first,
    onLast: input.on.last,
    amount: input.amount,
    unit: input.unit,
  };
}

async function giverOf(tx: Transaction, { giver, giverWords }: TakeInInput): Promise<Outcome<string | null>> {
  if (giver !== null && giverWords !== null) {
    const needed = "leave one of the two empty: the steward or the words";
    return refused(refusal("two-givers", ["giverWords"], giverWords, "stands here beside a steward", needed));
  }
  return giver === null ? accepted(null) : stewardNamed(tx, giver, "giver");
}

function plainFaults(input: TakeInInput, today: CivilDay): Refusal[] {
  const faults: Refusal[] = [];
  if (input.on.first > today)
    faults.push(refusal("in-the-future", ["on"], input.on.text, "is still to come", `write a day up to ${today}`));
  if (input.story === null && !input.nothingTold) {
    const needed = "write it at once in the giver's words, or tick that nothing was told";
    faults.push(refusal("missing", ["story"], "", "is told of it", needed));
  }
  if (input.story !== null && input.nothingTold) {
    const needed = "leave the box empty where something was told";
    faults.push(refusal("told-and-not", ["story"], input.story, 'stands beside "nothing was told"', needed));
  }
  if (input.amount === null) return faults;
  const kind = { kind: "received", amount: input.amount, unit: input.unit };
  return [...faults, ...amountFaults(kind, input.thousandSeedGrams, input.number ?? "that comes in")];
}

async function writeWords(
  change: ChangeWriter,
  { input, giverName, varietyId }: TakingIn,
  lotId: string,
  stewardId: string | null,
): Promise<void> {
  const toldOn = input.on.text;
  if (input.story !== null) {
    const story = { id: uuidv7(), varietyId, lotId, words: input.story, teller: giverName, stewardId, toldOn };
    await change.create("Story", story);
  }
  if (input.looked !== null) {
    const on = { on: input.on.text, onFirst: input.on.first, onLast: input.on.last };
    await change.create("Observation", {
      ...{ id: uuidv7(), lotId, ...on },
      words: `Looked at when it came in: ${input.looked}`,
      howSure: "first hand",
      stewardId,
    });
  }
}

async function keepPromisesOf(
  change: ChangeWriter,
  tx: Transaction,
  answered: Answered | null,
  keptOn: string,
): Promise<void> {
  if (answered === null) return;
  const open = await tx.promise.findMany({ where: { transferId: answered.id, keptOn: null }, select: { id: true } });
  await change.updateMany(
    "Promise",
    open.map(({ id }) => ({ id, patch: { keptOn } })),
  );
}
