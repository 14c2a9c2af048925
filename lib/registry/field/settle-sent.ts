import type { Refusal } from "@/lib/science/outcome";
import { clockAheadOf, refusalsStored, type StoredRecord } from "./stored-record";
import { dayAt, type Taking } from "./taking";

/** What a stored record becomes, and what is said of it. */
interface Settled {
  readonly state: "taken" | "set aside";
  /** how it came to be set aside */
  readonly code?: string;
  /** the answer to the question that was asked of it */
  readonly words: string;
}

/** Settles a record that is stored: its state, and the questions that were asked of it. */
export async function settleSent(
  { change, tx, now, actor }: Pick<Taking, "change" | "tx" | "now" | "actor">,
  stored: StoredRecord,
  { state, code, words }: Settled,
): Promise<void> {
  const note: Refusal[] = code === undefined ? [] : [{ code, path: [], given: null, needed: "", sentence: words }];
  await change.update("FieldRecord", stored.id, { state, refusals: refusalsStored(note, clockAheadOf(stored)) });
  const asked = await tx.question.findMany({ where: { fieldRecordId: stored.id, answeredAt: null } });
  await change.updateMany(
    "Question",
    asked.map(({ id }) => ({ id, patch: { answer: words, answeredAt: dayAt(now, actor.offsetMinutes) } })),
  );
}
