import { z } from "zod";
import { moments, organs, passStages, pullReasons, stages, thinnings, timings } from "../grow-outs/field-kinds";
import { bulkings, fatesOfSeed } from "../harvests/harvest-kinds";
import { fates, intents } from "../plants/plant-cells";

/*
 * What a phone records in the field: events, made once and never changed. Each stands for itself, so that it may come in any order and any
 * number of times: whatever names a plant brings the plant along.
 */

const id = z.uuid("is no id; as the phone made it");
const name = z
  .string()
  .trim()
  .min(1, "stands here empty; write what stands on the tag")
  .max(60, "is too long; at most 60 letters");
const words = z.string().trim().min(1).max(2000, "is too long; at most 2,000 letters");
const plants = z.int("is no count; a whole number of plants").min(0, "is below none; 0 or more").max(2_147_483_647);
const amount = z.number().positive("is no amount; a number above 0").max(1e9);
/** A civil day where the plot is, by the phone's calendar. */
const day = z.iso.date("is no day; as 2026-07-04");

/** A plant: its id is made where it is first marked or scored. Where two phones make one each for the same plant, a person says so. */
export const plantInField = z.strictObject({
  id,
  name,
  cell: name.nullable(),
  row: name.nullable(),
  /** place in its row, as the row counts */
  position: z.number().min(0).max(1e6).nullable(),
});
export type PlantInField = z.output<typeof plantInField>;

/** What the kinds say, each under its name. `replaces` names the record that it corrects. */
export const fieldBodies = {
  /** a tag put on a plant, with its intent */
  mark: z.strictObject({
    plant: plantInField,
    tag: name.nullable(),
    intent: z.enum(intents),
    words: words.nullable(),
    fate: z.enum(fates).nullable(),
    replaces: id.nullable(),
  }),
  /** one score; of a measure, a count, a step of a scale or yes (1) and no (0) the value, of a category or a date the text */
  score: z.strictObject({
    plant: plantInField,
    /** the version of the trait by which it was given */
    traitId: id,
    value: z.number().finite().nullable(),
    text: words.nullable(),
    replaces: id.nullable(),
  }),
  /** a walk through the plants; pulled is empty where none was found */
  walk: z.strictObject({
    stage: z.enum(passStages).nullable(),
    timing: z.enum(timings).nullable(),
    looked: plants.nullable(),
    pulled: z.array(z.strictObject({ reason: z.enum(pullReasons).nullable(), plants: plants.min(1) })).max(20),
    left: plants.nullable(),
    note: words.nullable(),
  }),
  count: z.strictObject({
    stage: z.enum(stages),
    plants,
    males: plants.nullable(),
    thinnedBy: z.enum(thinnings).nullable(),
    note: words.nullable(),
  }),
  flowering: z.strictObject({ organ: z.enum(organs), moment: z.enum(moments), note: words.nullable() }),
  /** one plant's seed taken in, or lost with why; of one harvest */
  taken: z.strictObject({
    harvestId: id,
    plant: plantInField,
    fate: z.enum(fatesOfSeed),
    grams: amount.nullable(),
    seeds: amount.nullable(),
    replaces: id.nullable(),
  }),
  /** a harvest is whole: the seed taken that belongs to it, each by its record */
  harvest: z.strictObject({
    harvestId: id,
    parts: z.array(id).min(1).max(2000),
    bulked: z.enum(bulkings),
    note: words.nullable(),
  }),
  /** a picture; the file itself is sent apart, under its hash */
  photo: z.strictObject({
    plant: plantInField.nullable(),
    traitId: id.nullable(),
    /** SHA-256 of the file, in hex */
    hash: z.string().regex(/^[0-9a-f]{64}$/, "is no SHA-256; 64 hexadecimal digits"),
    caption: words.nullable(),
  }),
  /** takes a record back, whether it was sent or not */
  undo: z.strictObject({ of: id }),
} as const;

export const fieldKinds = Object.keys(fieldBodies) as (keyof typeof fieldBodies)[];
export type FieldKind = keyof typeof fieldBodies;
export type FieldBody<K extends FieldKind> = z.output<(typeof fieldBodies)[K]>;

const envelope = {
  /** a time-ordered UUID, made on the phone: the record's own for ever */
  id,
  deviceId: id,
  /** the how-manieth record of its phone, from 1 */
  sequence: z.int().min(1),
  growOutId: id,
  on: day,
  /** the phone's clock, UTC; and how many minutes its place was ahead of UTC */
  recordedAt: z.iso.datetime("is no instant; as 2026-07-04T08:00:00.000Z"),
  recordedOffset: z.int().min(-1080).max(1080),
  /** whose hand it was */
  stewardId: id.nullable(),
};

const kinds = fieldKinds.map((kind) => z.strictObject({ ...envelope, kind: z.literal(kind), body: fieldBodies[kind] }));

/** One record as a phone made it. */
export const fieldRecord = z.discriminatedUnion("kind", kinds as unknown as [(typeof kinds)[number]]);

interface Envelope {
  readonly id: string;
  readonly deviceId: string;
  readonly sequence: number;
  readonly growOutId: string;
  readonly on: string;
  readonly recordedAt: string;
  readonly recordedOffset: number;
  readonly stewardId: string | null;
}

export type FieldRecordOf<K extends FieldKind> = Envelope & { readonly kind: K; readonly body: FieldBody<K> };
export type FieldRecord = { [K in FieldKind]: FieldRecordOf<K> }[FieldKind];
