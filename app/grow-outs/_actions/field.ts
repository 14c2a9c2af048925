"use server";

import { wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { FieldTable } from "@/lib/registry/grow-outs/field-entries";
import { correctFlowering, recordFlowering } from "@/lib/registry/grow-outs/record-flowering";
import { correctRoguePass, recordRogueWalk } from "@/lib/registry/grow-outs/record-rogue-walk";
import { correctStageCount, recordStageCounts } from "@/lib/registry/grow-outs/record-stage-counts";
import { takeBackFieldRecord } from "@/lib/registry/grow-outs/take-back-field-record";
import {
  floweringCorrectionSchema,
  floweringNotesSchema,
  roguePassCorrectionSchema,
  rogueWalkSchema,
  stageCountCorrectionSchema,
  stageCountsSchema,
  takeBackFieldRecordSchema,
} from "@/lib/schemas/grow-outs/field-counts";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";
import { type FieldAnswer, fieldAnswer } from "../_field/field-answer";
import { stageAfterCount, whenSeen } from "../_words/field-words";

/** Writes down the counts of a sheet. */
export async function writeCounts(growOutId: string, _before: FieldAnswer, form: FormData): Promise<FieldAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(stageCountsSchema(settings.hemisphere), typed);
  if (!input.ok) return fieldAnswer(typed, input, "");
  const said = input.value.counts
    .map(({ stage, plants }) => `${wholeNumber(plants)} ${stageAfterCount[stage]}`)
    .join(", ");
  return fieldAnswer(typed, await recordStageCounts(db, actor, growOutId, input.value, today), said);
}

/** Puts a count right. */
export async function putCountRight(countId: string, _before: FieldAnswer, form: FormData): Promise<FieldAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(stageCountCorrectionSchema(settings.hemisphere), typed);
  if (!input.ok) return fieldAnswer(typed, input, "");
  const said = `${wholeNumber(input.value.plants)} ${stageAfterCount[input.value.stage]}`;
  return fieldAnswer(typed, await correctStageCount(db, actor, countId, input.value, today), said);
}

/** Writes down a walk through the plants. */
export async function writeWalk(growOutId: string, _before: FieldAnswer, form: FormData): Promise<FieldAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(rogueWalkSchema(settings.hemisphere), typed);
  if (!input.ok) return fieldAnswer(typed, input, "");
  const pulled = input.value.pulled.reduce((sum, line) => sum + line.plants, 0);
  const said = `${whenSeen(input.value.on.text)}, ${pulled === 0 ? "walked and none found" : `${counted(pulled, "plant")} pulled`}`;
  return fieldAnswer(typed, await recordRogueWalk(db, actor, growOutId, input.value, today), said);
}

/** Puts a line of a walk right. */
export async function putPassRight(passId: string, _before: FieldAnswer, form: FormData): Promise<FieldAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(roguePassCorrectionSchema(settings.hemisphere), typed);
  if (!input.ok) return fieldAnswer(typed, input, "");
  const said = `${counted(input.value.pulled, "plant")} pulled`;
  return fieldAnswer(typed, await correctRoguePass(db, actor, passId, input.value, today), said);
}

/** Writes down when it flowered. */
export async function writeFlowering(growOutId: string, _before: FieldAnswer, form: FormData): Promise<FieldAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(floweringNotesSchema(settings.hemisphere), typed);
  if (!input.ok) return fieldAnswer(typed, input, "");
  const said = input.value.notes.map(({ organ, moment, on }) => `${moment} ${organ} ${whenSeen(on.text)}`).join(", ");
  return fieldAnswer(typed, await recordFlowering(db, actor, growOutId, input.value, today), said);
}

/** Puts a flowering note right. */
export async function putFloweringRight(noteId: string, _before: FieldAnswer, form: FormData): Promise<FieldAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(floweringCorrectionSchema(settings.hemisphere), typed);
  if (!input.ok) return fieldAnswer(typed, input, "");
  const said = `${input.value.moment} ${input.value.organ} ${whenSeen(input.value.on.text)}`;
  return fieldAnswer(typed, await correctFlowering(db, actor, noteId, input.value, today), said);
}

/** Takes an entry back that never should have stood. */
export async function takeFieldRecordBack(
  growOutId: string,
  table: FieldTable,
  id: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(takeBackFieldRecordSchema, typed);
  const outcome = input.ok ? await takeBackFieldRecord(db, actor, table, id, input.value.why, today) : input;
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}#counts`);
}
