import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { ReplyInput } from "@/lib/schemas/transfers/transfer";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { unknownTransfer } from "./correct-transfer";

/**
 * Writes down what was answered to a transfer: its words stand with it, no answer is waited for any more, and where a steward of the registry
 * says whether the seed is still there, that is a holder's word. Refused: an unknown transfer; a day to come, or before it was handed over;
 * "still there" of somebody who is no steward here.
 */
export async function recordReply(
  db: Database,
  actor: Actor,
  transferId: string,
  { on, words, still }: ReplyInput,
  today: CivilDay,
): Promise<Outcome<Performed<{ transferId: string }>>> {
  const title = "An answer to seed that was handed over";
  return perform(db, actor, { action: "desk", title }, async (change, tx) => {
    const transfer = await tx.transfer.findUnique({ where: { id: transferId }, include: { lot: true } });
    if (!transfer) return refused(unknownTransfer(transferId));
    if (on.first > today)
      return refused(refusal("in-the-future", ["on"], on.text, "is still to come", `write a day up to ${today}`));
    if (on.last < transfer.onFirst) {
      const needed = `write a day from ${transfer.onFirst} on`;
      return refused(refusal("before-transfer", ["on"], on.text, "lies before it was handed over", needed));
    }
    if (still !== null && transfer.toStewardId === null) {
      const needed = "leave it unsaid: only a steward of this registry is counted as a holder";
      return refused(refusal("no-steward", ["still"], still, "is said by nobody on record", needed));
    }
    const note = [transfer.note, `${on.text}, their answer: ${words}`].filter(Boolean).join("\n");
    await change.update("Transfer", transferId, { note, replyDue: null });
    const { varietyId } = transfer.lot;
    if (still !== null && transfer.toStewardId !== null) {
      await change.create("HolderConfirmation", {
        ...{ id: uuidv7(), varietyId, stewardId: transfer.toStewardId, lotId: transfer.newLotId },
        ...{ on: on.text, onFirst: on.first, onLast: on.last, still, note: words },
      });
    }
    change.touch(varietyId);
    return accepted({ transferId });
  });
}
