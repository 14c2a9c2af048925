import { uuidv7 } from "uuidv7";
import type { FieldBody, FieldKind } from "@/lib/schemas/field/field-records";
import type { NewRecord } from "./kept-rows";

/** The phone's clock and calendar at one moment. */
export interface Moment {
  /** milliseconds since 1970 */
  readonly at: number;
  /** minutes by which the place is ahead of UTC */
  readonly offset: number;
}

/** This moment on this phone. */
export function momentNow(): Moment {
  const now = new Date();
  return { at: now.getTime(), offset: -now.getTimezoneOffset() };
}

/** The civil day of a moment by the phone's calendar, as `2026-07-04`. */
export function dayOf({ at, offset }: Moment): string {
  return new Date(at + offset * 60_000).toISOString().slice(0, 10);
}

/** A record of what was just done, with an id of its own. It is nowhere until the store has it. */
export function newRecord<K extends FieldKind>(
  kind: K,
  body: FieldBody<K>,
  { growOutId, stewardId }: { readonly growOutId: string; readonly stewardId: string | null },
  moment: Moment,
): NewRecord {
  // the pairing of kind and body is what the parameters say; the union cannot be told it one by one
  return {
    id: uuidv7(),
    growOutId,
    stewardId,
    on: dayOf(moment),
    recordedAt: new Date(moment.at).toISOString(),
    recordedOffset: moment.offset,
    kind,
    body,
  } as NewRecord;
}

/** An id for a plant or a harvest that begins on this phone. */
export function newId(): string {
  return uuidv7();
}
