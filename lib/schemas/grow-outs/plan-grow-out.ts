import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { count, day, decimal, type FieldReader, name, neededField, oneOf, openField, words } from "../lots/form-fields";

/** What a grow-out is made for. */
export const growOutPurposes = ["renew", "increase", "food", "compare", "teach"] as const;
export type GrowOutPurpose = (typeof growOutPurposes)[number];

/** As many lots as one grow-out may be sown from. */
export const parentsAtOnce = 8;

const percent = decimal({ above: 0, atMost: 100 });

/** A share typed in percent, with or without its sign, as a share of 1. */
export const shareInPercent: FieldReader<number> = (text): Outcome<number> => {
  const read = percent(text.replace(/%\s*$/, ""));
  return read.ok ? accepted(read.value / 100) : read;
};

/** What the plants of a lot are in a cross. */
export const crossRoles = ["seed parent", "pollen parent"] as const;
export type CrossRole = (typeof crossRoles)[number];

/** One lot that is to be sown. A line without a lot says nothing. */
const parent = z.object({
  lot: openField(name),
  share: openField(shareInPercent),
  role: openField(oneOf(crossRoles)).optional(),
});

const plan = {
  name: neededField(name, "write what it is called, such as the variety and the year"),
  purpose: openField(oneOf(growOutPurposes)),
  steward: openField(name),
  parents: z.array(parent),
  plantsPlanned: openField(count),
  seedParentsPlanned: openField(count),
  note: openField(words),
};

/** A plot that is chosen by its id, or one that is not on record yet. */
export const plotFields = {
  plot: openField(name),
  newPlot: openField(name),
  place: openField(words),
};

/** A grow-out before anything is sown. Lots are named by their ids. */
export const PlanGrowOutSchema = z.object({ ...plan, ...plotFields });
export type PlanGrowOutInput = z.output<typeof PlanGrowOutSchema>;

/** What of a grow-out can be put right. */
export function correctGrowOutSchema(hemisphere: Hemisphere) {
  return z.object({
    ...plan,
    sown: openField(day(hemisphere)),
    seedsSown: openField(count),
    reason: openField(words),
  });
}
export type CorrectGrowOutInput = z.output<ReturnType<typeof correctGrowOutSchema>>;
