"use server";

import { gramsTyped, type UnitSettings } from "@/lib/display/units";
import { enterSentHarvest } from "@/lib/registry/field/enter-sent-harvest";
import { correctHarvest } from "@/lib/registry/harvests/correct-harvest";
import { recordHarvest } from "@/lib/registry/harvests/record-harvest";
import { type HarvestInput, harvestCorrectionSchema, newHarvestSchema } from "@/lib/schemas/harvests/harvest-entry";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { Outcome } from "@/lib/science/outcome";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";
import { unitsOf } from "../../lots/_words/units-of";
import { parentsOfTexts, type RowsOf, rowsTold } from "../_harvest/typed-harvest";

/** Enters a harvest, which makes a lot. */
export async function enterHarvest(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("record");
  const typed = textsOf(form);
  const rows = rowsTold(typed);
  const input = parseForm(newHarvestSchema(settings.hemisphere), { ...typed, parents: parentsOfTexts(typed, rows) });
  const outcome = input.ok
    ? await recordHarvest(db, actor, growOutId, inGrams(input.value, unitsOf(settings)), today)
    : input;
  return answerOf(
    typed,
    atRows(outcome, rows),
    ({ value }) => `/grow-outs/${growOutId}?wrote=${value.harvestId}#harvested`,
  );
}

/** Enters a harvest that a phone recorded, as it stands in its form. */
export async function enterHarvestOfField(
  growOutId: string,
  sentId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("record");
  const typed = textsOf(form);
  const rows = rowsTold(typed);
  const input = parseForm(newHarvestSchema(settings.hemisphere), { ...typed, parents: parentsOfTexts(typed, rows) });
  const outcome = input.ok
    ? await enterSentHarvest(db, actor, sentId, inGrams(input.value, unitsOf(settings)), today, new Date())
    : input;
  return answerOf(
    typed,
    atRows(outcome, rows),
    ({ value }) => `/grow-outs/${growOutId}?wrote=${value.harvestId}#harvested`,
  );
}

/** Puts a harvest right. */
export async function putHarvestRight(harvestId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("record");
  const typed = textsOf(form);
  const rows = rowsTold(typed);
  const shape = harvestCorrectionSchema(settings.hemisphere);
  const input = parseForm(shape, { ...typed, parents: parentsOfTexts(typed, rows) });
  const outcome = input.ok
    ? await correctHarvest(db, actor, harvestId, inGrams(input.value, unitsOf(settings)), today)
    : input;
  return answerOf(
    typed,
    atRows(outcome, rows),
    ({ value }) => `/grow-outs/${value.growOutId}?wrote=${harvestId}#harvested`,
  );
}

/** Weights typed in the steward's unit are stored in grams. */
function inGrams<Input extends HarvestInput>(input: Input, units: UnitSettings): Input {
  const grams = (typed: number | null) => (typed === null ? null : gramsTyped(typed, units));
  return {
    ...input,
    grams: grams(input.grams),
    parents: input.parents.map((parent) => ({ ...parent, grams: grams(parent.grams) })),
  };
}

/** Refusals of a seed parent lead to its row of the form. */
function atRows<T>(outcome: Outcome<T>, rows: RowsOf): Outcome<T> {
  if (outcome.ok) return outcome;
  return {
    ok: false,
    refusals: outcome.refusals.map((each) =>
      each.path[0] === "parents" ? { ...each, path: [rows, ...each.path.slice(1)] } : each,
    ),
  };
}
