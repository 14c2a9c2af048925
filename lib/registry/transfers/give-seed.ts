import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { GiveInput } from "@/lib/schemas/transfers/transfer";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { debtRefusal } from "../ledger/debt-refusal";
import { entriesOfLot } from "../ledger/entries-of-lot";
import { amountFaults, unknownLot } from "../ledger/record-ledger-entry";
import { seedsIn } from "../lots/live-seeds";
import { type WrittenSplit, writeSplit } from "../lots/write-split";
import { gramsOfAmount } from "./after-giving";
import { containerAt } from "./container-at";
import { depositWithHolder } from "./deposit-with-holder";
import { type AboutToGive, givingRefusals, givingRules, overruledInWords } from "./giving-rules";
import { type GivingRead, readGiving } from "./read-giving";
import { type Recipient, recipientOf } from "./recipient";
import type { GivenSeed, TransferDraft } from "./transfer-draft";
import { toldInWords, whatToSay } from "./what-to-say";

/**
 * Gives, lends, returns or deposits seed of a lot. To a steward of the registry it becomes a lot of its own there (a split) with one ledger
 * entry on each side; to somebody outside it is one entry "given"; into the holder's own other building it is a container, and no seed
 * leaves the ledger. All name the transfer. A return stands in quarantine at the other end.
 * Refused: a rule that stands against it without a reason (see givingRules); more than the jar holds; a day to come; a caution that was not
 * told; a loan without its promise and the day on which to ask.
 */
export async function giveSeed(
  db: Database,
  actor: Actor,
  lotId: string,
  input: GiveInput,
  { settings, today }: { settings: Settings; today: CivilDay },
): Promise<Outcome<Performed<GivenSeed>>> {
  const read = await readGiving(db, lotId, { settings, today });
  if (!read) return refused(unknownLot(lotId));
  const { lot } = read.jar;
  const operation = {
    action: "desk" as const,
    title: `Lot ${lot.number}: ${doneWords[input.kind]}, ${input.amount} ${input.unit}`,
    reason: input.override,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const recipient = await recipientOf(tx, change, input);
    if (!recipient.ok) return refused(...recipient.refusals, ...plainFaults(input, today));
    const giving = aboutToGive(read, input, recipient.value);
    const rules = givingRules(read.ground, giving);
    const faults = [
      ...plainFaults(input, today),
      ...ownHandFaults(read, input, giving),
      ...toldFaults(read, input, giving),
      ...givingRefusals(rules, lot.number, input.override),
    ];
    if (faults.length > 0) return refused(...faults);
    const transfer: TransferDraft = {
      id: uuidv7(),
      kind: input.kind,
      lotId,
      fromStewardId: lot.holderId,
      toStewardId: recipient.value.stewardId,
      toWords: recipient.value.words,
      on: input.on.text,
      onFirst: input.on.first,
      onLast: input.on.last,
      amount: input.amount,
      unit: input.unit,
      purpose: input.purpose,
      conditions: input.conditions,
      told: toldInWords(whatToSay(read.toTell), input.told, input.toldWords),
      replyDue: input.replyDue?.text ?? null,
      note: notesOf(input.note, overruledInWords(rules, input.override)),
    };
    const given = giving.staysWithHolder
      ? await depositWithHolder(change, tx, read, input, transfer)
      : recipient.value.stewardId === null
        ? await giveOutside(change, tx, read, input, transfer)
        : await giveToSteward(change, tx, read, input, transfer, actor.stewardId);
    if (!given.ok) return given;
    await writePromise(change, input, transfer, lot.varietyId);
    change.touch(lot.varietyId);
    return given;
  });
}

const doneWords: Readonly<Record<GiveInput["kind"], string>> = {
  gift: "given away",
  loan: "lent",
  return: "given back",
  exchange: "given in exchange",
  "safety duplicate": "a safety duplicate",
  "to a library": "to a library",
};

/** What is about to leave, in grams and seeds, and to what kind of hand. */
function aboutToGive(read: GivingRead, input: GiveInput, recipient: Recipient): AboutToGive {
  const { lot } = read.jar;
  const grams = gramsOfAmount(input.amount, input.unit, lot.thousandSeedGrams);
  const perGram = { min: lot.crop.seedsPerGramMin, max: lot.crop.seedsPerGramMax };
  return {
    kind: input.kind,
    staysWithHolder: recipient.stewardId !== null && recipient.stewardId === lot.holderId,
    toLibrary: recipient.toLibrary,
    outside: recipient.stewardId === null,
    grams,
    seeds: seedsIn(grams, lot.thousandSeedGrams, perGram),
  };
}

function plainFaults(input: GiveInput, today: CivilDay): Refusal[] {
  const faults: Refusal[] = [];
  if (input.on.first > today)
    faults.push(refusal("in-the-future", ["on"], input.on.text, "is still to come", `write a day up to ${today}`));
  if (input.kind === "loan" && input.replyDue === null)
    faults.push(refusal("missing", ["replyDue"], "", "says when to ask", "write by when an answer is due, as 2028-10"));
  if (input.kind === "loan" && input.promise === null)
    faults.push(refusal("missing", ["promise"], "", "is promised", "write what was promised, in their words"));
  if (input.replyDue && input.replyDue.last < input.on.first) {
    const needed = "write a day after it was handed over";
    faults.push(refusal("due-before", ["replyDue"], input.replyDue.text, "lies before it was handed over", needed));
  }
  return faults;
}

/** In the holder's own hand only a deposit in another building makes sense: everything else moves no seed. */
function ownHandFaults({ jar, buildings }: GivingRead, input: GiveInput, giving: AboutToGive): Refusal[] {
  if (!giving.staysWithHolder) return [];
  const name = jar.lot.holder ?? "the holder";
  if (input.kind !== "safety duplicate") {
    const needed = "choose somebody else; for another jar of your own write a container or split the lot";
    return [refusal("own-hand", ["holder"], name, "holds this lot already", needed)];
  }
  const at = input.building ?? input.place;
  if (at === null) {
    const needed = "write the other building: in the same house it is no safety duplicate";
    return [refusal("missing", ["building"], "", "says in which building", needed)];
  }
  if (buildings.some((building) => building.toLowerCase() === at.toLowerCase())) {
    const needed = "choose another building: one fire, one flood is one place";
    return [refusal("same-building", ["building"], at, "holds this lot already", needed)];
  }
  return [];
}

/** What can hurt is said before the seed goes into another hand. */
function toldFaults(read: GivingRead, input: GiveInput, giving: AboutToGive): Refusal[] {
  if (giving.staysWithHolder) return [];
  return whatToSay(read.toTell)
    .filter((saying) => saying.must && !input.told.includes(saying.key))
    .map((saying) => {
      const head = saying.words.split(". ")[0] ?? saying.key;
      return refusal("not-told", ["told"], head, "can hurt somebody and was not told", "say it, and tick it as told");
    });
}

function notesOf(note: string | null, overruled: string | null): string | null {
  const notes = [note, overruled].filter((each) => each !== null);
  return notes.length === 0 ? null : notes.join("\n");
}

async function giveToSteward(
  change: ChangeWriter,
  tx: Transaction,
  { jar: { lot } }: GivingRead,
  input: GiveInput,
  transfer: TransferDraft,
  actorStewardId: string | null,
): Promise<Outcome<GivenSeed>> {
  const back = input.kind === "return";
  const split: Outcome<WrittenSplit> = await writeSplit(change, tx, {
    lotId: lot.id,
    amount: input.amount,
    unit: input.unit,
    on: input.on,
    number: input.number,
    holderId: transfer.toStewardId ?? null,
    ...(back ? { status: "quarantine" as const } : {}),
    reason: doneWords[input.kind],
    override: input.override,
    stewardId: actorStewardId,
    transfer: async (newLotId) => {
      await change.create("Transfer", { ...transfer, newLotId });
      return transfer.id;
    },
  });
  if (!split.ok) return split;
  const { lotId: newLotId, number: newNumber } = split.value;
  if (back) {
    const statusReason = `came back on ${input.on.text}; not compared yet`;
    await change.update("Lot", newLotId, { statusReason });
  }
  if (input.place !== null || input.building !== null)
    await containerAt(change, tx, { lotId: newLotId, holderId: transfer.toStewardId ?? null, ...input });
  return accepted({ transferId: transfer.id, newLotId, newNumber });
}

/** Seed that leaves the registry: one entry, with the words of who got it. */
async function giveOutside(
  change: ChangeWriter,
  tx: Transaction,
  { jar: { lot } }: GivingRead,
  input: GiveInput,
  transfer: TransferDraft,
): Promise<Outcome<GivenSeed>> {
  const { amount, unit, on } = input;
  const faults = amountFaults({ kind: "given", amount, unit }, lot.thousandSeedGrams, lot.number);
  if (faults.length > 0) return refused(...faults);
  const entry = {
    ...{ id: uuidv7(), lotId: lot.id, on: on.text, onFirst: on.first, onLast: on.last },
    ...{ kind: "given", amount, unit, replacesId: null, takenBack: false },
    other: transfer.toWords,
    notes: null,
    transferId: transfer.id,
  };
  const before = await entriesOfLot(tx, lot.id);
  const debt = debtRefusal(before, [...before, entry], entry, lot.thousandSeedGrams);
  if (debt) return refused(debt);
  await change.create("Transfer", transfer);
  await change.create("LedgerEntry", entry);
  return accepted({ transferId: transfer.id, newLotId: null, newNumber: null });
}

async function writePromise(
  change: ChangeWriter,
  input: GiveInput,
  transfer: TransferDraft,
  varietyId: string,
): Promise<void> {
  if (input.promise === null) return;
  await change.create("Promise", {
    id: uuidv7(),
    transferId: transfer.id,
    varietyId,
    lotId: transfer.lotId,
    stewardId: transfer.toStewardId ?? null,
    words: input.promise,
    due: input.replyDue?.text ?? null,
  });
}
