import { z } from "zod";
import { fieldRecord } from "./field-records";
import { mostAtOnce } from "./heap";

/*
 * How a phone brings its records home: it sends them in heaps, again and again, until each is named in an answer. A file that carries the
 * records home has the same shape.
 */

const device = z.strictObject({ id: z.uuid(), name: z.string().trim().min(1).max(60) });

/** A heap whose records are looked at one by one, so that one that is not right holds up no other. */
export const fieldDelivery = z.strictObject({
  device,
  /** the phone's clock as it sends, so that it can be told how wrong it is */
  sentAt: z.iso.datetime(),
  /**
   * the lowest sequence of which the phone has had no answer yet. The records of one phone are taken in their order: one of this heap waits while
   * an earlier one from there on has not come. Left out, none waits for that reason
   */
  unansweredFrom: z.int().min(1).optional(),
  records: z.array(z.unknown()).max(mostAtOnce),
});
export type FieldDelivery = z.output<typeof fieldDelivery>;

/** A file with the records of a phone. */
export const fieldFile = z.strictObject({
  kind: z.literal("kinrow field records"),
  version: z.literal(1),
  device,
  savedAt: z.iso.datetime(),
  records: z.array(z.unknown()),
});

export { fieldRecord, mostAtOnce };

/**
 * What became of a record. Taken: it stands in the registry. Held: it stood there already. Waiting: it is stored, and something that it belongs to
 * has not come yet. Question: it is stored, and a person has to settle it. Refused: it is none of this registry's (the phone keeps it and shows why).
 */
export const fatesOfRecord = ["taken", "held", "waiting", "question", "refused"] as const;
export type FateOfRecord = (typeof fatesOfRecord)[number];

export const fieldAnswer = z.object({
  /** the registry's clock */
  now: z.iso.datetime(),
  answers: z.array(z.object({ id: z.string(), fate: z.enum(fatesOfRecord), sentence: z.string().nullable() })),
});
export type FieldAnswer = z.output<typeof fieldAnswer>;
