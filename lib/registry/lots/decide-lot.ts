import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { DecideInput } from "@/lib/schemas/lots/lot-moves";
import type { Comparison } from "@/lib/schemas/transfers/transfer";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { balanceOf } from "../ledger/balance";
import { entriesOfLot } from "../ledger/entries-of-lot";
import { unknownLot } from "../ledger/record-ledger-entry";
import { strainOf } from "../transfers/strain-of";
import { writeMove } from "./move-lot";
import { recordIdsOfLot } from "./same-lot";

/**
 * Decides about a lot that stood in quarantine once it was grown apart and compared: the same (may blend), a strain of its own, different (on
 * hold, with a question under which name it is kept) or spoiled (discarded, with what is left of it out of the ledger). Open questions that
 * this settles are answered by it. A lot found the same, or a strain of its own, was grown true and seen.
 * Refused: a lot that does not stand in quarantine; a finding that wants growing without a grow-out on record (unless ticked); a strain
 * without a name; a day to come. Source: trade.md 3.10.
 */
export async function decideLot(
  db: Database,
  actor: Actor,
  lotId: string,
  input: DecideInput,
  today: string,
): Promise<Outcome<Performed<{ lotId: string }>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId }, include: { variety: true } });
  if (!lot) return refused(unknownLot(lotId));
  const title = `Lot ${lot.number}: compared and found ${foundWords[input.found]}`;
  return perform(db, actor, { action: "decide", title, reason: input.how }, async (change, tx) => {
    const lotIds = { in: await recordIdsOfLot(tx, lotId) };
    const grown = (await tx.growOutParent.count({ where: { lotId: lotIds } })) > 0;
    const open = await tx.question.findMany({ where: { lotId: lotIds, answeredAt: null } });
    const faults = [
      ...standingFaults(lot.status, input, today),
      ...grownFaults(input, grown),
      ...questionFaults(input, open),
    ];
    if (faults.length > 0) return refused(...faults);
    const { variety, ...row } = lot;
    const status = statusAfter(input);
    await writeMove(change, row, {
      status,
      on: input.on,
      reason: `compared on ${input.on.text}: ${foundWords[input.found]}. ${input.how}`,
      stewardId: actor.stewardId,
    });
    if (input.found === "same" || input.found === "own strain")
      await change.update("Lot", lotId, { identityGrade: "grown true and seen by the steward" });
    if (input.found === "own strain")
      await change.update("Lot", lotId, {
        strainId: await strainOf(change, tx, lot.varietyId, input.strain, null, input.difference),
      });
    if (input.found === "different") await askUnderWhichName(change, row, variety.name, input);
    if (input.found === "spoiled") await discardRest(change, tx, row, input);
    for (const question of open.filter((each) => input.answers.includes(each.id)))
      await change.update("Question", question.id, { answer: input.how, answeredAt: input.on.first });
    return accepted({ lotId });
  });
}

const foundWords: Readonly<Record<Comparison, string>> = {
  same: "the same",
  "own strain": "a strain of its own",
  different: "different",
  spoiled: "spoiled",
};

function statusAfter({ found, status }: DecideInput): string {
  if (found === "different") return "hold";
  if (found === "spoiled") return "discarded";
  return status ?? "usable";
}

function standingFaults(status: string | null, input: DecideInput, today: string): Refusal[] {
  const faults: Refusal[] = [];
  if (status !== "quarantine") {
    const needed = "only a lot in quarantine is decided about; move any other on by its status";
    faults.push(refusal("not-in-quarantine", ["found"], status, "is how this lot stands", needed));
  }
  if (input.on.first > today)
    faults.push(refusal("in-the-future", ["on"], input.on.text, "is still to come", `write a day up to ${today}`));
  if (input.found === "own strain" && input.strain === null)
    faults.push(
      refusal("missing", ["strain"], "", "names the strain", "write what it is called, as its keeper’s name"),
    );
  return faults;
}

/** Seed tells little of itself: what it grows into is compared. What is spoiled needs no growing to be seen. */
function grownFaults({ found, grownUnrecorded }: DecideInput, grown: boolean): Refusal[] {
  if (found === "spoiled" || grown || grownUnrecorded) return [];
  const needed = "grow it apart beside the home strain first; if it was, write the grow-out down or tick that it was";
  return [
    refusal("not-grown", ["found"], found, "is seen on plants, and no grow-out of this lot is on record", needed),
  ];
}

function questionFaults({ answers }: DecideInput, open: readonly { id: string }[]): Refusal[] {
  const unknown = answers.find((id) => !open.some((question) => question.id === id));
  if (unknown === undefined) return [];
  return [refusal("unknown", ["answers"], unknown, "is no open question of this lot", "choose one of the list")];
}

async function askUnderWhichName(
  change: ChangeWriter,
  lot: RowOf<"Lot">,
  variety: string,
  input: DecideInput,
): Promise<void> {
  await change.create("Question", {
    id: uuidv7(),
    kind: "name",
    sentence: `Lot ${lot.number} was grown beside ${variety} and found different: under which name is it kept, or is it given up?`,
    lotId: lot.id,
    varietyId: lot.varietyId,
    raisedAt: input.on.first,
  });
}

/** What is left of it leaves the ledger; a lot of unknown amount has nothing to enter. */
async function discardRest(
  change: ChangeWriter,
  tx: Transaction,
  lot: RowOf<"Lot">,
  input: DecideInput,
): Promise<void> {
  const entries = await entriesOfLot(tx, lot.id);
  const { grams } = balanceOf(entries, lot.thousandSeedGrams);
  if (grams === null || grams <= 0) return;
  await change.create("LedgerEntry", {
    ...{ id: uuidv7(), lotId: lot.id, on: input.on.text, onFirst: input.on.first, onLast: input.on.last },
    ...{ kind: "discarded", amount: grams, unit: "g", notes: input.how },
  });
}
