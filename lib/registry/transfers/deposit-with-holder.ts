import type { Transaction } from "@/lib/db";
import type { GiveInput } from "@/lib/schemas/transfers/transfer";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { tolerableDebtGrams } from "../ledger/balance";
import { amountFaults } from "../ledger/record-ledger-entry";
import { gramsOfAmount } from "./after-giving";
import { containerAt } from "./container-at";
import type { GivingRead } from "./read-giving";
import type { GivenSeed, TransferDraft } from "./transfer-draft";

/**
 * A safety duplicate in another building of the same holder: a container there. The seed stays in the lot and in its ledger.
 * Refused where the jar does not hold as much.
 */
export async function depositWithHolder(
  change: ChangeWriter,
  tx: Transaction,
  { jar }: GivingRead,
  input: GiveInput,
  transfer: TransferDraft,
): Promise<Outcome<GivenSeed>> {
  const { lot, figures } = jar;
  const { amount, unit } = input;
  const faults = amountFaults({ kind: "given", amount, unit }, lot.thousandSeedGrams, lot.number);
  if (faults.length > 0) return refused(...faults);
  const grams = gramsOfAmount(amount, unit, lot.thousandSeedGrams);
  const held = figures?.gramsOnHand ?? null;
  if (held !== null && grams !== null && grams > held + tolerableDebtGrams) {
    const most = Math.floor(held * 100) / 100;
    return refused(
      refusal("more-than-there-is", ["amount"], amount, "is more than the jar holds", `write at most ${most} g`),
    );
  }
  await change.create("Transfer", transfer);
  await containerAt(change, tx, { lotId: lot.id, holderId: lot.holderId, ...input });
  return accepted({ transferId: transfer.id, newLotId: null, newNumber: null });
}
