import { z } from "zod";
import type { FuzzyDate, Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { accepted, refusal } from "@/lib/science/outcome";
import { day, type FieldReader, name, neededField, oneOf, openField, words } from "../lots/form-fields";
import { readDecimal } from "../notebook/decimal";
import {
  type Moment,
  moments,
  type Organ,
  organs,
  type PullReason,
  passStages,
  pullReasons,
  type Stage,
  stages,
  type Thinning,
  type Timing,
  thinnings,
  timings,
} from "./field-kinds";

/*
 * What is typed in of an evening from notes made in the field. Every field is text; one left empty is not known.
 */

/** A whole number of plants, none included. */
export const plantsCounted: FieldReader<number> = (text) => {
  const read = readDecimal(text, ",");
  if (!read.ok) return read;
  if (Number.isInteger(read.value) && read.value >= 0 && read.value <= 2_147_483_647) return read;
  const needed = "write a whole number of plants, 0 or more";
  return { ok: false, refusals: [refusal("not-a-count", [], read.value, "is no number of plants", needed)] };
};

/** Why an entry is put right or taken back. */
const why = neededField(words, "say in a few words what was wrong");
export const takeBackFieldRecordSchema = z.object({ why });

/** The name under which a field of a sheet goes: `up.plants`, `pollen.first`, `pulled.off-type-colour`. */
export const sheetField = (row: string, field: string) => `${row.replaceAll(" ", "-")}.${field.replaceAll(" ", "-")}`;

export interface StageCountInput {
  readonly stage: Stage;
  readonly plants: number;
  readonly males: number | null;
  readonly on: FuzzyDate | null;
  readonly thinnedBy: Thinning | null;
  readonly note: string | null;
}

export interface StageCountsInput {
  readonly counts: readonly StageCountInput[];
  readonly stewardId: string | null;
}

/** The sheet of counts: a row a stage, of which any may stay empty; at least one is filled in. */
export function stageCountsSchema(hemisphere: Hemisphere) {
  const rows = stages.flatMap((stage) => [
    [sheetField(stage, "plants"), openField(plantsCounted)],
    [sheetField(stage, "males"), openField(plantsCounted)],
    [sheetField(stage, "on"), openField(day(hemisphere))],
    [sheetField(stage, "note"), openField(words)],
  ]);
  const shape = { ...Object.fromEntries(rows), "thinned.thinnedBy": openField(oneOf(thinnings)), by: openField(name) };
  return z.object(shape as z.ZodRawShape).transform((typed, context): StageCountsInput => {
    const read = typed as Readonly<Record<string, unknown>>;
    const counts = stages.flatMap((stage): StageCountInput[] => {
      const cell = (field: string) => read[sheetField(stage, field)] ?? null;
      const plants = cell("plants") as number | null;
      const rest = {
        males: cell("males") as number | null,
        on: cell("on") as FuzzyDate | null,
        thinnedBy: cell("thinnedBy") as Thinning | null,
        note: cell("note") as string | null,
      };
      if (plants !== null) return [{ stage, plants, ...rest }];
      if (Object.values(rest).some((value) => value !== null))
        fault(context, sheetField(stage, "plants"), "write how many plants, or empty the row");
      return [];
    });
    if (counts.length === 0 && context.issues.length === 0)
      fault(context, sheetField("up", "plants"), "write the plants of one stage at least");
    return { counts, stewardId: (read.by as string | null) ?? null };
  });
}

/** A count as it should have been, and what was wrong. */
export function stageCountCorrectionSchema(hemisphere: Hemisphere) {
  return z.object({
    stage: neededField(oneOf(stages), "choose what was counted"),
    plants: neededField(plantsCounted, "write how many plants"),
    males: openField(plantsCounted),
    on: openField(day(hemisphere)),
    thinnedBy: openField(oneOf(thinnings)),
    note: openField(words),
    why,
  });
}
export type StageCountCorrection = z.output<ReturnType<typeof stageCountCorrectionSchema>>;

export interface RogueWalkInput {
  readonly on: FuzzyDate;
  readonly stage: string | null;
  readonly timing: Timing | null;
  readonly looked: number | null;
  /** a line for each reason; none at all where the walk found none */
  readonly pulled: readonly { readonly reason: PullReason | null; readonly plants: number }[];
  readonly left: number | null;
  readonly note: string | null;
  readonly stewardId: string | null;
}

/** Under which reason plants were pulled of which nobody said why. */
export const reasonNotSaid = "not said";
export const pulledRows = [...pullReasons, reasonNotSaid] as const;

/** Stands for a timing of which nobody said anything. */
export const timingNotSaid = "not said";
const timing: FieldReader<Timing | null> = (text) => {
  const read = oneOf([...timings, timingNotSaid])(text);
  if (!read.ok) return read;
  return accepted(read.value === timingNotSaid ? null : read.value);
};

function walkFields(hemisphere: Hemisphere) {
  return {
    on: neededField(day(hemisphere), "write the day of the walk, or what is known of it, as 2026-07-04 or 2026-07"),
    stage: openField(oneOf(passStages)),
    timing: neededField(timing, "say whether pollen had flown, or that it is not written down"),
    looked: openField(plantsCounted),
    left: openField(plantsCounted),
    note: openField(words),
  };
}

/** A walk through the plants: what was looked at, and how many were pulled for which reason; or that none was found. */
export function rogueWalkSchema(hemisphere: Hemisphere) {
  const rows = pulledRows.map((reason) => [sheetField("pulled", reason), openField(plantsCounted)]);
  const shape = {
    ...walkFields(hemisphere),
    ...(Object.fromEntries(rows) as Record<string, ReturnType<typeof openField<number>>>),
    noneFound: openField(words),
    by: openField(name),
  };
  return z.object(shape as z.ZodRawShape).transform((typed, context): RogueWalkInput => {
    const read = typed as Readonly<Record<string, unknown>>;
    const pulled = pulledRows.flatMap((reason) => {
      const plants = read[sheetField("pulled", reason)] as number | null;
      return plants ? [{ reason: reason === reasonNotSaid ? null : reason, plants }] : [];
    });
    const zeros = pulledRows.some((reason) => read[sheetField("pulled", reason)] === 0);
    if (pulled.length === 0 && !zeros && read.noneFound === null)
      fault(context, "noneFound", "write how many were pulled, or say that you walked and found none");
    if (pulled.length > 0 && read.noneFound !== null)
      fault(context, "noneFound", "leave it, for plants were pulled", "cannot stand beside the plants pulled");
    const { on, stage, timing, looked, left, note } = read as unknown as RogueWalkInput;
    return { on, stage, timing, looked, pulled, left, note, stewardId: (read.by as string | null) ?? null };
  });
}

/** A line of a walk as it should have been, and what was wrong. */
export function roguePassCorrectionSchema(hemisphere: Hemisphere) {
  return z.object({
    ...walkFields(hemisphere),
    // A notebook names stages and reasons in its own words, and they stay.
    stage: openField(words),
    pulled: neededField(plantsCounted, "write how many were pulled; 0 where none was found"),
    reason: openField(words),
    why,
  });
}
export type RoguePassCorrection = z.output<ReturnType<typeof roguePassCorrectionSchema>>;

export interface FloweringNotesInput {
  readonly notes: readonly { readonly organ: Organ; readonly moment: Moment; readonly on: FuzzyDate }[];
  readonly note: string | null;
  readonly stewardId: string | null;
}

/** The sheet of flowering: first, half and last of each organ; at least one is filled in. */
export function floweringNotesSchema(hemisphere: Hemisphere) {
  const cells = organs.flatMap((organ) => moments.map((moment) => ({ organ, moment })));
  const rows = cells.map(({ organ, moment }) => [sheetField(organ, moment), openField(day(hemisphere))]);
  const shape = { ...Object.fromEntries(rows), note: openField(words), by: openField(name) };
  return z.object(shape as z.ZodRawShape).transform((typed, context): FloweringNotesInput => {
    const read = typed as Readonly<Record<string, unknown>>;
    const notes = cells.flatMap(({ organ, moment }) => {
      const on = (read[sheetField(organ, moment)] ?? null) as FuzzyDate | null;
      return on === null ? [] : [{ organ, moment, on }];
    });
    if (notes.length === 0) fault(context, "", "write the day of one of them at least");
    return {
      notes,
      note: (read.note as string | null) ?? null,
      stewardId: (read.by as string | null) ?? null,
    };
  });
}

/** A flowering note as it should have been, and what was wrong. */
export function floweringCorrectionSchema(hemisphere: Hemisphere) {
  return z.object({
    organ: neededField(oneOf(organs), "choose what flowered"),
    moment: neededField(oneOf(moments), "choose first, half or last"),
    on: neededField(day(hemisphere), "write the day, or what is known of it, as 2026-07-04 or 2026-07"),
    note: openField(words),
    why,
  });
}
export type FloweringCorrection = z.output<ReturnType<typeof floweringCorrectionSchema>>;

function fault(context: z.RefinementCtx, field: string, needed: string, wrong = "stands here"): void {
  const path = field === "" ? [] : [field];
  const params = { refusal: refusal("missing", path, "", wrong, needed) };
  context.addIssue({ code: "custom", path, message: params.refusal.sentence, params });
}
