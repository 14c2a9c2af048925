import { type FateOfRecord, fieldRecord } from "@/lib/schemas/field/field-delivery";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { type Refusal, refusal } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";

/*
 * A record from the field as it is stored. Its state is "taken" where it stands in the registry, "set aside" where a person or the phone took it
 * back, and "question" for all that is not settled: with the code `waits` something has not come yet, with any other a person has to decide.
 */

export type StoredRecord = RowOf<"FieldRecord">;

/** What a record waits for: one before it of its phone, or another record, a file or a harvest by its id. */
export const waits = "waits";
/** Not a fault: the phone's clock was off as it sent the record. */
export const clockOff = "clock-off";
/** The phone took the record back itself. */
export const takenBack = "taken-back";

/** Whoever sent it does not record in its grow-out: whose that is may say that it stands. */
export const notTheirGrowOut = "not-their-grow-out";

/** Another record of the phone stands in its place, for as long as that one is not taken back. */
export const superseded = "superseded";

/** Its picture was erased for good: nothing is made of it, and nobody is asked. */
export const pictureErased = "picture-erased";

/** True where a record was taken back or set aside for good. */
export function isTakenBack(row: Pick<StoredRecord, "state" | "refusals">): boolean {
  return row.state === "set aside" && !refusalsOf(row).some(({ code }) => code === superseded);
}

/** The record as the phone made it. */
export function sentRecord(row: Pick<StoredRecord, "body">): FieldRecord {
  return fieldRecord.parse(JSON.parse(row.body)) as FieldRecord;
}

/** What stands against a stored record, without what is said of the clock. */
export function refusalsOf(row: Pick<StoredRecord, "refusals">): Refusal[] {
  return notesOf(row).filter(({ code }) => code !== clockOff);
}

/** Minutes by which the phone's clock was ahead as it sent the record; null: about right, or not known. */
export function clockAheadOf(row: Pick<StoredRecord, "refusals">): number | null {
  const note = notesOf(row).find(({ code }) => code === clockOff);
  return typeof note?.given === "number" ? note.given : null;
}

function notesOf({ refusals }: Pick<StoredRecord, "refusals">): Refusal[] {
  return refusals === null ? [] : (JSON.parse(refusals) as Refusal[]);
}

/** What is stored of them; the clock's note stays. */
export function refusalsStored(refusals: readonly Refusal[], clockAhead: number | null): string | null {
  const ahead = clockAhead === null ? [] : [clockNote(clockAhead)];
  const all = [...refusals, ...ahead];
  return all.length === 0 ? null : JSON.stringify(all);
}

function clockNote(minutes: number): Refusal {
  const words = `this phone's clock was ${Math.abs(minutes)} min ${minutes > 0 ? "ahead" : "behind"} as it sent this`;
  return { code: clockOff, path: ["sentAt"], given: minutes, needed: "set the phone's clock", sentence: words };
}

/** True where the record is stored and something that it belongs to has not come. */
export function isWaiting(row: Pick<StoredRecord, "state" | "refusals">): boolean {
  return row.state === "question" && refusalsOf(row).some(({ code }) => code === waits);
}

/** The id for which a record waits; null: for none. */
export function waitsFor(row: Pick<StoredRecord, "state" | "refusals">): string | null {
  const note = row.state === "question" ? refusalsOf(row).find(({ code }) => code === waits) : undefined;
  return typeof note?.given === "string" ? note.given : null;
}

/** Waits for another record, a file or a harvest, by its id. */
export function waitFor(id: string, what: string): Refusal {
  return refusal(waits, ["of"], id, "has not come yet", `it is taken when ${what} comes`);
}

/** Waits for the records before it. */
export function waitForTurn(sequence: number): Refusal {
  const sentence = "records that this phone made before it have not come yet; it is taken when they do";
  return { code: waits, path: ["sequence"], given: sequence, needed: "", sentence };
}

/** What became of a stored record, as it is answered to a phone that sends it again. */
export function fateOf(row: Pick<StoredRecord, "state" | "refusals">, isNew: boolean): FateOfRecord {
  if (row.state === "question") return isWaiting(row) ? "waiting" : "question";
  return isNew && row.state === "taken" ? "taken" : "held";
}

/** Whether two records say the same, in whatever order their fields stand. */
export function sameContent(one: unknown, other: unknown): boolean {
  return inOrder(one) === inOrder(other);
}

function inOrder(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(inOrder).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const entries = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
  return `{${entries.map(([key, each]) => `${JSON.stringify(key)}:${inOrder(each)}`).join(",")}}`;
}
