import { z } from "zod";
import { CountSchema } from "./counts";

/** What counted as germinated: the whole seedling, or a root that showed. The two are never read as one. */
export const testBases = ["normal seedlings", "sprouted"] as const;
export type TestBasis = (typeof testBases)[number];

const words = z.string().trim().max(2000, "is longer than 2,000 characters; keep the rest as a story of the lot");
const maybeWords = words
  .nullable()
  .default(null)
  .transform((text) => (text === "" ? null : text));

export const ReplicateSchema = z.strictObject({
  name: words.min(1, "is no name; number the replicates 1, 2, 3"),
  sown: z
    .number("is not a count; write how many seeds were laid out")
    .int("is not a whole number; write how many seeds were laid out")
    .min(1, "is too few; a replicate has at least one seed")
    .max(10_000, "is more than a replicate holds; write at most 10,000"),
  counts: z.array(CountSchema).max(400, "is more than 400 counts; put days together").default([]),
});

/** Whether the seeds laid out are booked in the lot's ledger as tested, and how their weight is known. */
export const SeedsUsedSchema = z.discriminatedUnion("book", [
  z.strictObject({ book: z.literal("no") }),
  z.strictObject({ book: z.literal("by-seed-weight") }),
  z.strictObject({
    book: z.literal("weighed"),
    grams: z.number("is not a weight; write the grams as a number").gt(0, "is no weight; write the grams, above 0"),
  }),
]);
export type SeedsUsed = z.infer<typeof SeedsUsedSchema>;

/** A germination test as it is written down: what was set up, and whatever was counted so far. */
export const TestEntrySchema = z.strictObject({
  lotId: z.string("is no lot; choose the lot that was tested").min(1, "is no lot; choose the lot that was tested"),
  /** null lets the registry name it after the lot */
  name: maybeWords,
  /** day of setting up, EDTF */
  on: z
    .string("is no date; write the day it was set up")
    .trim()
    .min(1, "is no date; write the day it was set up, or about when"),
  basis: z.enum(testBases, "is no basis; say what was counted: normal seedlings or sprouted").nullable().default(null),
  method: maybeWords,
  temperature: maybeWords,
  preTreatment: maybeWords,
  finalCountDay: z
    .number("is not a day; write the days from setting up to the last count")
    .min(1, "is too early; the last count is at least a day after setting up")
    .max(400, "is more than 400 days; write the days from setting up to the last count")
    .nullable()
    .default(null),
  note: maybeWords,
  replicates: z
    .array(ReplicateSchema)
    .min(1, "are missing; a test has at least one replicate")
    .max(40, "are more than 40; record them as two tests"),
  seedsUsed: SeedsUsedSchema.default({ book: "no" }),
});
export type TestEntry = z.infer<typeof TestEntrySchema>;
