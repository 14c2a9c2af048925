"use server";

import { settleFieldRecords } from "@/lib/registry/field/settle-field-records";
import { answerSamePlant, takeSamePlantBack } from "@/lib/registry/plants/same-plant";
import { samePlantSchema, settleFieldSchema } from "@/lib/schemas/field/settle-field";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { WhySchema } from "@/lib/schemas/lots/merge-lots";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";

/** Settles a record from the field, with others against which the same stands where that was ticked. */
export async function settleRecord(
  recordId: string,
  alike: readonly string[],
  back: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("correct-in-field");
  const typed = textsOf(form);
  const input = parseForm(settleFieldSchema, typed);
  const ids = typed.alike === "yes" ? [...new Set([recordId, ...alike])] : [recordId];
  const outcome = input.ok ? await settleFieldRecords(db, actor, ids, input.value, new Date()) : input;
  return answerOf(typed, outcome, () => back);
}

/** Says whether two records are one plant. */
export async function answerSame(
  questionId: string,
  back: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, today } = await current("correct-in-field");
  const typed = textsOf(form);
  const input = parseForm(samePlantSchema, typed);
  const outcome = input.ok
    ? await answerSamePlant(db, actor, questionId, { same: input.value.same === "one", why: input.value.why }, today)
    : input;
  return answerOf(typed, outcome, () => back);
}

/** Lets a record stand for a plant of its own again. */
export async function plantAlone(
  plantId: string,
  back: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("correct-in-field");
  const typed = textsOf(form);
  const input = parseForm(WhySchema, typed);
  const outcome = input.ok ? await takeSamePlantBack(db, actor, plantId, input.value.why) : input;
  return answerOf(typed, outcome, () => back);
}
