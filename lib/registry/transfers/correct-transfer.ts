import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { CorrectTransferInput } from "@/lib/schemas/transfers/transfer";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { debtRefusal } from "../ledger/debt-refusal";
import { entriesOfLot } from "../ledger/entries-of-lot";
import { amountFaults } from "../ledger/record-ledger-entry";

/**
 * Puts a transfer right, so that both sides agree: each standing entry of it is replaced by one of the new day and amount that points to it.
 * An amount that is left empty stays as it is where no ledger says it.
 * Who gave and who got is not changed here: a transfer entered with the wrong hand is taken back in the history and entered again.
 * Refused: an unknown transfer; an amount that a jar does not hold, or that has no weight there; a day to come.
 */
export async function correctTransfer(
  db: Database,
  actor: Actor,
  transferId: string,
  input: CorrectTransferInput,
  today: CivilDay,
): Promise<Outcome<Performed<{ transferId: string }>>> {
  const transfer = await db.read.transfer.findUnique({ where: { id: transferId }, include: { lot: true } });
  if (!transfer) return refused(unknownTransfer(transferId));
  const title = `Lot ${transfer.lot.number}: ${transfer.kind} put right`;
  return perform(db, actor, { action: "correct-at-desk", title, reason: input.reason }, async (change, tx) => {
    if (input.on.first > today)
      return refused(refusal("in-the-future", ["on"], input.on.text, "is still to come", `write a day up to ${today}`));
    const faults = await replaceEntries(change, tx, transferId, input);
    if (faults.length > 0) return refused(...faults);
    const { on, reason: _reason, replyDue, amount, unit, ...said } = input;
    await change.update("Transfer", transferId, {
      ...said,
      ...(amount === null ? {} : { amount, unit }),
      ...{ on: on.text, onFirst: on.first, onLast: on.last },
      replyDue: replyDue?.text ?? null,
    });
    return accepted({ transferId });
  });
}

export function unknownTransfer(transferId: string): Refusal {
  return refusal("unknown", ["transfer"], transferId, "is no transfer of this registry", "choose one of the list");
}

/** The entries of a transfer that count: each by one of the day and amount as they should have been. */
async function replaceEntries(
  change: ChangeWriter,
  tx: Transaction,
  transferId: string,
  { on, amount, unit }: CorrectTransferInput,
): Promise<Refusal[]> {
  const standing = await tx.ledgerEntry.findMany({
    where: { transferId, replacedBy: null, takenBack: false },
    include: { lot: true },
    orderBy: { id: "asc" },
  });
  if (standing.length > 0 && amount === null)
    return [refusal("missing", ["amount"], "", "says how much it was", "write how much, as 12.5")];
  const faults: Refusal[] = [];
  for (const { lot, ...entry } of standing) {
    change.touch(lot.varietyId);
    if (amount === null) continue;
    if (entry.on === on.text && entry.amount === amount && entry.unit === unit) continue;
    const { extra: _extra, ...same } = entry;
    const row = {
      ...same,
      ...{ id: uuidv7(), on: on.text, onFirst: on.first, onLast: on.last },
      ...{ amount, unit, replacesId: entry.id, takenBack: false },
    };
    const unfit = amountFaults(row, lot.thousandSeedGrams, lot.number);
    const before = await entriesOfLot(tx, lot.id);
    const debt = unfit.length > 0 ? null : debtRefusal(before, [...before, row], row, lot.thousandSeedGrams);
    faults.push(...unfit, ...(debt ? [debt] : []));
    if (faults.length === 0) await change.create("LedgerEntry", row);
  }
  return faults;
}
