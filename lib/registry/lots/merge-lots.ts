import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { MergeLotsInput } from "@/lib/schemas/lots/merge-lots";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { unknownLot } from "../ledger/record-ledger-entry";
import { readDescent } from "./descent";
import { mergeFaults, parentageFaults } from "./merge-faults";
import { recordNamed, recordOfLot } from "./record-of-lot";

/**
 * Says that two records are of one lot. From then on lists show one, figures read the ledgers, tests and offspring of both as one, and the
 * other's number, code and address lead to the leading one. What is said of the lot itself, its parents first of all, is what the leading
 * record says. No row is rewritten, so that taking it back is exact.
 * Refused as `mergeFaults` says, and where the two name different parents and nobody said which hold.
 */
export async function mergeLots(
  db: Database,
  actor: Actor,
  lotId: string,
  input: MergeLotsInput,
): Promise<Outcome<Performed<{ lotId: string; number: string }>>> {
  const own = await recordOfLot(db.read, lotId);
  if (!own) return refused(unknownLot(lotId));
  const named = await recordNamed(db.read, input.other);
  if (!named) {
    const needed = "write a number as it stands in the list of lots, or the code of a label";
    return refused(refusal("unknown-lot", ["other"], input.other, "is no lot of this registry", needed));
  }
  const [first, second] = input.leads === "this" ? [own, named] : [named, own];
  const title = `Lot ${second.number} is the same as lot ${first.number}: read as one`;
  return perform(db, actor, { action: "correct", title, reason: input.why }, async (change, tx) => {
    const [leading, other] = [await recordOfLot(tx, first.id), await recordOfLot(tx, second.id)];
    if (!leading || !other) return refused(unknownLot(lotId));
    const descent = await readDescent(tx, leading.variety.cropId, { claims: true });
    const faults = mergeFaults(descent, { leading, other });
    if (faults.length === 0) faults.push(...parentageFaults({ leading, other }, input.parentage));
    if (faults.length > 0) return refused(...faults);
    await change.update("Lot", other.id, { sameAsId: leading.id });
    change.touch(leading.varietyId);
    return accepted({ lotId: leading.id, number: leading.number });
  });
}

/**
 * Takes it back: the record stands for itself again, with the rows that were its own all along. What was written since stays with the record
 * under which it was written. Refused: a record that is not read as another.
 */
export async function takeMergeBack(
  db: Database,
  actor: Actor,
  recordId: string,
  why: string,
): Promise<Outcome<Performed<{ lotId: string; leadingId: string }>>> {
  const record = await recordOfLot(db.read, recordId);
  if (!record) return refused(unknownLot(recordId));
  const title = `Lot ${record.number} stands for itself again`;
  return perform(db, actor, { action: "correct", title, reason: why }, async (change, tx) => {
    const leadingId = (await tx.lot.findUnique({ where: { id: recordId } }))?.sameAsId ?? null;
    if (leadingId === null) {
      const needed = "nothing is to be taken back";
      return refused(refusal("not-merged", ["lot"], record.number, "is read as no other lot", needed));
    }
    await change.update("Lot", recordId, { sameAsId: null });
    change.touch(record.varietyId);
    return accepted({ lotId: recordId, leadingId });
  });
}
