import { z } from "zod";
import type { ChoiceGround } from "../plants/choice-ground";
import { intents } from "../plants/plant-cells";
import { plantInField } from "./field-records";

/*
 * What a phone takes to the field of one grow-out: all that is needed there with no signal. It is made anew each time it is asked for, and a
 * phone keeps the last one it could store.
 */

const text = z.string();
const count = z.int().nullable();

export const traitInField = z.object({
  /** the version that scores are given on */
  id: text,
  /** the id of its first version: one trait over its versions */
  first: text,
  name: text,
  kind: z.enum(["count", "measure", "scale", "yes-no", "category", "date"]),
  unit: text.nullable(),
  direction: text.nullable(),
  target: z.number().nullable(),
  scaleLow: z.number().nullable(),
  scaleHigh: z.number().nullable(),
  /** what the steps of its scale are called, or its categories */
  steps: z.array(z.object({ value: z.number().nullable(), words: text })),
  /** pictures that show it, by hash */
  photos: z.array(text),
});
export type TraitInField = z.output<typeof traitInField>;

export const markInPack = z.object({
  id: text,
  tag: text.nullable(),
  intent: z.enum(intents),
  words: text.nullable(),
  fate: text.nullable(),
  on: text,
  by: text.nullable(),
});

export const scoreInPack = z.object({
  id: text,
  /** the first version of its trait */
  trait: text,
  value: z.number().nullable(),
  text: text.nullable(),
  on: text.nullable(),
  by: text.nullable(),
});

export const plantInPack = z.object({
  plant: plantInField,
  /** the mark that stands; null: only scored */
  mark: markInPack.nullable(),
  scores: z.array(scoreInPack),
});
export type PlantInPack = z.output<typeof plantInPack>;

export const fieldPack = z.object({
  version: z.literal(1),
  madeAt: z.iso.datetime(),
  growOut: z.object({ id: text, name: text, sown: text.nullable(), purpose: text.nullable(), plots: z.array(text) }),
  variety: z.object({
    id: text,
    name: text,
    seedCoat: text.nullable(),
    aim: text.nullable(),
    cautions: text.nullable(),
  }),
  crop: z.object({
    ...{ key: text, name: text, plantsMin: count },
    /** males and females are different plants, so that males are counted apart; a pack of an earlier release does not say */
    separate: z.boolean().optional(),
  }),
  plan: z.object({ plants: count, seedParents: count, seedParentsWanted: count }),
  /** whose hand the records are, as the registry knows who took the pack */
  hand: z.object({ stewardId: text.nullable(), name: text }),
  traits: z.array(traitInField),
  /** the type description, trait by trait, in words */
  type: z.array(z.object({ trait: text, words: text })),
  plants: z.array(plantInPack),
  counts: z.array(z.object({ stage: text, plants: z.int(), on: text.nullable() })),
  walks: z.array(
    z.object({
      on: text,
      stage: text.nullable(),
      timing: text.nullable(),
      looked: count,
      pulled: z.int(),
      reason: text.nullable(),
    }),
  ),
  flowering: z.array(z.object({ organ: text, moment: text, on: text })),
  harvests: z.array(z.object({ lot: text.nullable(), on: text.nullable(), seedParents: count })),
  /** what is usual to be careful about at this work, with who says so */
  cautions: z.array(text),
  /** what a choice among the plants is made from, as it stood when the pack was made; a pack of an earlier release has none */
  choice: z.custom<ChoiceGround>((value) => typeof value === "object" && value !== null).optional(),
});
export type FieldPack = z.output<typeof fieldPack>;
