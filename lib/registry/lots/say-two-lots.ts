import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { unknownLot } from "../ledger/record-ledger-entry";
import { recordOfLot } from "./record-of-lot";

/**
 * Says that two records are two lots, however alike they look: the question whether they are one is answered, and asked no more.
 * Refused: a record that is not here, one named twice, and two that are read as one already.
 */
export async function sayTwoLots(
  db: Database,
  actor: Actor,
  input: { readonly lotId: string; readonly otherId: string; readonly why: string },
  today: string,
): Promise<Outcome<Performed<{ questionId: string }>>> {
  const [one, other] = [await recordOfLot(db.read, input.lotId), await recordOfLot(db.read, input.otherId)];
  if (!one || !other) return refused(unknownLot(one ? input.otherId : input.lotId));
  const title = `Lots ${one.number} and ${other.number} are two`;
  return perform(db, actor, { action: "correct", title, reason: input.why }, async (change) => {
    if (one.id === other.id)
      return refused(refusal("of-itself", ["other"], other.number, "is this record itself", "name another record"));
    if ((one.sameAsId ?? one.id) === (other.sameAsId ?? other.id)) {
      const needed = "take that back first";
      return refused(refusal("same-already", ["other"], other.number, `is read as one with ${one.number}`, needed));
    }
    const questionId = uuidv7();
    await change.create("Question", {
      ...{ id: questionId, kind: "same lot", lotId: one.id, otherLotId: other.id, varietyId: one.varietyId },
      sentence: `Are lots ${one.number} and ${other.number} one lot that was entered twice?`,
      ...{ raisedAt: today, answer: input.why, answeredAt: today },
    });
    change.touch(one.varietyId);
    return accepted({ questionId });
  });
}
