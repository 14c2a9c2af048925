import { z } from "zod";
import { ToldAmountSchema, ToldSchema } from "./told";

const line = z.int("is no line; say which line it comes from").min(0);
const text = z.string().trim().max(2000, "is longer than 2,000 characters; make two lines of it");
const maybeText = text.nullable().transform((words) => (words === "" ? null : words));
/** EDTF; the registry reads it */
const date = z.string().trim().nullable();
/** names a lot of this booking, or one that stands already: `lot:` and its id */
const lotRef = z.string().min(1, "is no lot; choose one");

const ParentSchema = z.strictObject({
  lot: lotRef,
  share: z
    .number("is no share; write it between 0 and 1")
    .gt(0, "is no share; write it above 0")
    .max(1, "is more than all; write at most 1")
    .nullable(),
});

export const BookedLotSchema = z.strictObject({
  ref: z.string().min(1),
  line,
  number: z
    .string("is no lot number; write a word and a number")
    .trim()
    .min(1, "is no lot number; write a word and a number")
    .max(80, "is too long for a label; write at most 80 characters"),
  kind: z.enum(["founder", "harvest", "blend", "split"]),
  year: date,
  /** when a founder was first written of; it was harvested then or before */
  firstSeen: date,
  words: text,
  /** whose it was, or who holds it now */
  person: maybeText,
  /** stands for seed of which no line says where it came from */
  assumed: z.boolean(),
  growOut: z.string().nullable(),
  parents: z.array(ParentSchema).max(50),
});
export type BookedLot = z.infer<typeof BookedLotSchema>;

export const isolationMethods = ["distance", "time", "barrier", "cage", "bags", "hand pollination"] as const;

export const BookedGrowOutSchema = z.strictObject({
  ref: z.string().min(1),
  line,
  year: date,
  sown: date,
  parents: z.array(ParentSchema).min(1, "are missing; say which lot was sown, or that it is not known").max(50),
  seedsSown: ToldSchema.nullable(),
  emerged: ToldSchema.nullable(),
  plantsStanding: ToldSchema.nullable(),
  roguedBeforePollen: ToldSchema.nullable(),
  roguedAfterPollen: ToldSchema.nullable(),
  /** before or after pollen shed is not said */
  roguedUntimed: ToldSchema.nullable(),
  seedParents: ToldSchema.nullable(),
  /** ears and pods are not plants */
  seedParentsCounted: z.enum(["plants", "ears", "heads", "pods", "fruits"]).nullable(),
  seedShares: z.enum(["equal", "unequal"]).nullable(),
  bulked: z.enum(["equal seeds", "equal weight", "all together", "kept apart"]).nullable(),
  /** why no seed came; "" where nobody said why; null where seed came */
  outcome: text.nullable(),
  isolation: z.array(z.enum(isolationMethods)),
  neighbours: z.array(z.strictObject({ what: text.min(1), distanceMetres: z.number().min(0).nullable() })),
});
export type BookedGrowOut = z.infer<typeof BookedGrowOutSchema>;

export const transferManners = ["gift", "loan", "return", "exchange", "sale", "to a library"] as const;

export const BookedEntrySchema = z.strictObject({
  line,
  lot: lotRef,
  on: date,
  kind: z.enum(["received", "harvested", "sown", "given", "discarded", "weighed"]),
  amount: ToldAmountSchema.nullable(),
  other: maybeText,
  /** how it was given */
  manner: z.enum(transferManners).nullable(),
});
export type BookedEntry = z.infer<typeof BookedEntrySchema>;

export const BookedTestSchema = z.strictObject({
  line,
  lot: lotRef,
  on: date,
  up: ToldSchema.nullable(),
  of: ToldSchema.nullable(),
  days: z.number().min(0).nullable(),
  words: text,
});
export type BookedTest = z.infer<typeof BookedTestSchema>;

export const BookedVarietySchema = z.union([
  z.strictObject({ id: z.string().min(1) }),
  z.strictObject({
    name: z.string("is no name; write the variety's name").trim().min(1, "is no name; write the variety's name"),
    crop: z.string("is no crop; choose the crop").trim().min(1, "is no crop; choose the crop"),
    /** a crop that the list does not have, to be made one of the steward's own */
    ownCrop: z.boolean(),
  }),
]);

/** Rows of a notebook as a person has confirmed them: what each line makes, with the words of every line. */
export const NotebookBookingSchema = z.strictObject({
  variety: BookedVarietySchema,
  /** who keeps the seed; null where nobody says */
  holder: maybeText,
  lines: z
    .array(
      z.strictObject({
        words: text,
        year: date,
        kind: z.enum(["grow-out", "received", "test", "given", "gap", "failed", "blend", "split", "note"]),
      }),
    )
    .min(1, "are missing; type at least one line")
    .max(500, "are more than 500; book the first ones, then go on"),
  lots: z.array(BookedLotSchema).max(1000),
  growOuts: z.array(BookedGrowOutSchema).max(500),
  entries: z.array(BookedEntrySchema).max(2000),
  tests: z.array(BookedTestSchema).max(500),
});
export type NotebookBooking = z.infer<typeof NotebookBookingSchema>;

/** A reference to a lot that stands in the registry already. */
export function standingLotRef(id: string): string {
  return `lot:${id}`;
}

/** The id of a lot that stands already, or null where the reference names a lot of the booking. */
export function idOfStandingLot(ref: string): string | null {
  return ref.startsWith("lot:") ? ref.slice("lot:".length) : null;
}
