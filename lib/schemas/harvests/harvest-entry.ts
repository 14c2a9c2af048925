import { z } from "zod";
import type { FuzzyDate, Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { count, day, decimal, name, neededField, oneOf, openField, words } from "../lots/form-fields";
import { readDecimal } from "../notebook/decimal";
import { type Bulking, bulkings, type FateOfSeed, fatesOfSeed } from "./harvest-kinds";

export { type Bulking, bulkings, type FateOfSeed, fatesOfSeed };

/** How the seed parents are told: plants of the grow-out, or bags of which only the number is known. */
export const waysToTell = ["plants", "count"] as const;

/** What is known of each: its weight, its number of seeds, or nothing. */
export const measuresOfEach = ["grams", "seeds", "nothing"] as const;
export type MeasureOfEach = (typeof measuresOfEach)[number];

/** More seed parents than this are told by their number alone. */
export const mostParentsInForm = 400;

/** One seed parent of a harvest as it was told. */
export interface ToldParent {
  /** its place in the form, where refusals lead */
  readonly row: number;
  readonly plantId: string | null;
  readonly grams: number | null;
  readonly seeds: number | null;
  /** why its seed is not in the lot */
  readonly lost: string | null;
}

/** A harvest as the registry records it. Null is not known. */
export interface HarvestInput {
  readonly on: FuzzyDate;
  readonly bulked: Bulking;
  /** plants whose seed is kept, where that was told as a number; else they are the parents that were not lost */
  readonly seedParents: number | null;
  readonly parents: readonly ToldParent[];
  readonly grams: number | null;
  readonly seeds: number | null;
  /** plants of the whole grow-out whose tassels were taken */
  readonly detasselled: number | null;
  /** how many of the seed parents were such plants */
  readonly seedParentsDetasselled: number | null;
  readonly mouldyShare: number | null;
  readonly note: string | null;
}

/** A new harvest makes a lot. */
export interface NewHarvestInput extends HarvestInput {
  readonly number: string | null;
  readonly holder: string | null;
  readonly newHolder: string | null;
}

/** A harvest as it should have been told, and what was wrong. */
export interface HarvestCorrectionInput extends HarvestInput {
  readonly reason: string;
}

const parentShape = z.object({
  plant: openField(words),
  amount: openField(decimal({ above: 0 })),
  fate: openField(fateOfSeed),
});

function harvestFields(hemisphere: Hemisphere) {
  return {
    on: neededField(day(hemisphere), "write the day of the harvest, or what is known of it, as 2026-09-20 or 2026-09"),
    bulked: neededField(oneOf(bulkings), "choose how the seed is put together"),
    told: neededField(oneOf(waysToTell), "choose which plants, or a count"),
    each: neededField(oneOf(measuresOfEach), "choose what you know of each"),
    seedParents: openField(count),
    parents: z.array(parentShape),
    grams: openField(decimal({ above: 0 })),
    seeds: openField(count),
    detasselled: openField(countOrNone),
    seedParentsDetasselled: openField(countOrNone),
    mouldyPercent: openField(decimal({ atLeast: 0, atMost: 100 })),
    note: openField(words),
  };
}

type Fields = z.output<z.ZodObject<ReturnType<typeof harvestFields>>>;

/** A harvest as it is typed in, with the lot that it makes. */
export function newHarvestSchema(hemisphere: Hemisphere) {
  return z
    .object({
      ...harvestFields(hemisphere),
      number: openField(name),
      holder: openField(name),
      newHolder: openField(name),
    })
    .transform(
      ({ number, holder, newHolder, ...fields }): NewHarvestInput => ({
        ...harvestOf(fields),
        number,
        holder,
        newHolder,
      }),
    );
}

/** A harvest put right. */
export function harvestCorrectionSchema(hemisphere: Hemisphere) {
  return z
    .object({ ...harvestFields(hemisphere), reason: neededField(words, "say in a few words what was wrong") })
    .transform(({ reason, ...fields }): HarvestCorrectionInput => ({ ...harvestOf(fields), reason }));
}

/**
 * Rows of plants that were not taken, and of bags that say nothing, are none. A row in which something was typed against its fate is kept,
 * and refused by the rule.
 */
function harvestOf({ told, each, parents, seedParents, mouldyPercent, ...fields }: Fields): HarvestInput {
  const rows = parents.flatMap(({ plant, amount, fate }, row): ToldParent[] => {
    const taken = fate ?? (told === "count" ? "kept" : "not taken");
    if (taken === "not taken" && amount === null) return [];
    if (told === "count" && amount === null && !taken.startsWith("lost")) return [];
    return [
      {
        row,
        plantId: told === "plants" ? plant : null,
        grams: each === "grams" ? amount : null,
        seeds: each === "seeds" ? amount : null,
        lost: taken === "not taken" ? notTaken : taken.startsWith("lost: ") ? taken.slice("lost: ".length) : null,
      },
    ];
  });
  return {
    ...fields,
    seedParents: told === "count" ? seedParents : null,
    parents: rows,
    mouldyShare: mouldyPercent === null ? null : mouldyPercent / 100,
  };
}

/** Stands for a row whose seed was measured although it is said not to have been taken: always refused. */
export const notTaken = "not taken";

/** One of the offered fates, or lost for another reason that stands in an older record. */
function fateOfSeed(text: string): Outcome<string> {
  const told = text.trim();
  return told.startsWith("lost: ") && told.length > "lost: ".length ? accepted(told) : oneOf(fatesOfSeed)(told);
}

/** A whole count, none included. */
function countOrNone(text: string): Outcome<number> {
  const read = readDecimal(text, ",");
  if (!read.ok) return read;
  if (Number.isInteger(read.value) && read.value >= 0 && read.value <= 2_147_483_647) return read;
  return refused(refusal("not-a-count", [], read.value, "is not a count", "write a whole number, 0 for none"));
}
