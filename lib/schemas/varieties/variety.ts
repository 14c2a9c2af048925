import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { ticked } from "../lots/form-fields";
import {
  neededChoice,
  neededWords,
  optionalAmount,
  optionalChoice,
  optionalCount,
  optionalDate,
  optionalWords,
} from "./fields";

/** What the keepers of a variety aim at. */
export const aims = ["true-to-type", "broad-and-alive", "improved"] as const;
export type Aim = (typeof aims)[number];

/** Who may see a variety. */
export const sensitivities = ["public", "circle", "held"] as const;

/** What a strain is to the variety. */
export const strainRelations = ["same", "selected from", "possibly the same", "crossed with"] as const;

/** The part of a plant that a line of the type description speaks of. */
export const plantParts = ["seed", "seedling", "leaf", "flower", "fruit", "root", "whole plant"] as const;

const nameOfVariety = neededWords("write the name as its keepers say it");

/** A new variety. `ownCrop` makes a crop of the steward's own where the list has none of that name. */
export const RecordVarietySchema = z.strictObject({
  name: nameOfVariety,
  crop: neededWords("write the crop, such as pea or maize"),
  ownCrop: ticked,
  aim: optionalChoice(aims),
  story: optionalWords,
  typeDescription: optionalWords,
});

/** The fields of a variety that can be corrected. A correction has those that it changes and may leave the others out. */
export const CorrectVarietySchema = z.strictObject({
  name: nameOfVariety,
  aim: optionalChoice(aims),
  story: optionalWords,
  typeDescription: optionalWords,
  cautions: optionalWords,
  rights: optionalWords,
  sensitivity: neededChoice(sensitivities),
  plantsWanted: optionalCount,
  seedParentsWanted: optionalCount,
  isolationWantedM: optionalAmount,
  note: optionalWords,
  reason: optionalWords,
});

/** Another name or spelling. */
export const OtherNameSchema = z.strictObject({
  name: neededWords("write the other name"),
  kind: optionalChoice(["other", "spelling", "old", "local", "trade"]),
  source: optionalWords,
});

/** Another variety on record that is possibly the same, by its id, and who says so. */
export const PossiblySameSchema = z.strictObject({
  other: neededWords("choose the variety that may be the same"),
  source: neededWords("write who says so, or what speaks for it"),
});

/** One steward's long keeping of the variety. */
export function strainSchema(hemisphere: Hemisphere) {
  return z.strictObject({
    name: neededWords("write what the strain is called, such as the keeper's name"),
    steward: optionalWords,
    place: optionalWords,
    keptFrom: optionalDate(hemisphere),
    keptTo: optionalDate(hemisphere),
    difference: optionalWords,
    relation: optionalChoice(strainRelations),
    note: optionalWords,
  });
}

/** One line of the type description. */
export const TypeTraitSchema = z.strictObject({
  trait: neededWords("write the trait, such as seed colour"),
  allowed: neededWords("write what the variety may look like in it"),
  offType: optionalWords,
  part: optionalChoice(plantParts),
});

/** What a holder said, and when. */
export function holderWordSchema(hemisphere: Hemisphere) {
  return z.strictObject({
    steward: neededWords("write whose word it is"),
    on: optionalDate(hemisphere),
    still: neededChoice(["yes", "no", "unknown"]),
    lot: optionalWords,
    grams: optionalAmount,
    note: optionalWords,
  });
}

/** A story in the teller's words. */
export function storySchema(hemisphere: Hemisphere) {
  return z.strictObject({
    words: neededWords("write the story in the teller's words"),
    teller: optionalWords,
    toldOn: optionalDate(hemisphere),
    about: optionalDate(hemisphere),
  });
}
