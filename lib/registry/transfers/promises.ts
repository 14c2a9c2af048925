import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";

/** Writes down that a promise was kept, and when. Refused: an unknown promise, one that was kept already, a day to come. */
export async function keepPromise(
  db: Database,
  actor: Actor,
  promiseId: string,
  on: FuzzyDate,
  today: CivilDay,
): Promise<Outcome<Performed<{ promiseId: string }>>> {
  return perform(db, actor, { action: "desk", title: "A promise was kept" }, async (change, tx) => {
    const promise = await tx.promise.findUnique({ where: { id: promiseId } });
    if (!promise) return refused(unknownPromise(promiseId));
    if (promise.keptOn !== null) return refused(keptAlready(promise.keptOn));
    if (on.first > today)
      return refused(refusal("in-the-future", ["on"], on.text, "is still to come", `write a day up to ${today}`));
    await change.update("Promise", promiseId, { keptOn: on.text });
    change.touch(promise.varietyId);
    return accepted({ promiseId });
  });
}

/**
 * Lets a promise go that nobody waits for any more: it leaves the list, and its words stand with the reason as an observation. A loan that
 * is let go becomes a gift, and says so. Refused: an unknown promise, one that was kept.
 */
export async function letPromiseGo(
  db: Database,
  actor: Actor,
  promiseId: string,
  reason: string,
  today: CivilDay,
): Promise<Outcome<Performed<{ promiseId: string }>>> {
  return perform(db, actor, { action: "correct-at-desk", title: "A promise is let go", reason }, async (change, tx) => {
    const promise = await tx.promise.findUnique({ where: { id: promiseId }, include: { transfer: true, lot: true } });
    if (!promise) return refused(unknownPromise(promiseId));
    if (promise.keptOn !== null) return refused(keptAlready(promise.keptOn));
    const due = promise.due === null ? "" : `, due ${promise.due},`;
    const words = `The promise “${promise.words}”${due} is let go: ${reason}`;
    const varietyId = promise.varietyId ?? promise.lot?.varietyId ?? null;
    await change.create("Observation", {
      ...{ id: uuidv7(), varietyId, lotId: promise.lotId, stewardId: promise.stewardId, words },
      ...{ on: today, onFirst: today, onLast: today },
    });
    const { transfer } = promise;
    if (transfer !== null) {
      const note = [transfer.note, `${today}: ${words}`].filter(Boolean).join("\n");
      const kind = transfer.kind === "loan" ? "gift" : transfer.kind;
      await change.update("Transfer", transfer.id, { kind, note, replyDue: null });
    }
    await change.remove("Promise", [promiseId]);
    change.touch(varietyId);
    return accepted({ promiseId });
  });
}

function unknownPromise(promiseId: string): Refusal {
  return refusal("unknown", ["promise"], promiseId, "is no promise on record", "choose one of the list");
}

function keptAlready(keptOn: string): Refusal {
  return refusal("kept-already", ["promise"], keptOn, "is when it was kept", "nothing is left to do");
}
