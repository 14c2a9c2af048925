"use server";

import { mergeLots, takeMergeBack } from "@/lib/registry/lots/merge-lots";
import { sayTwoLots } from "@/lib/registry/lots/say-two-lots";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { MergeLotsSchema, WhySchema } from "@/lib/schemas/lots/merge-lots";
import { current } from "../../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../_form/form-answer";

/** Says that two records are of one lot. */
export async function merge(lotId: string, other: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("correct");
  const typed = textsOf(form);
  const input = parseForm(MergeLotsSchema, { ...typed, other });
  const outcome = input.ok ? await mergeLots(db, actor, lotId, input.value) : input;
  return answerOf(typed, outcome, ({ value }) => `/lots/${value.lotId}`);
}

/** Says that two records are two lots. */
export async function twoLots(
  lotId: string,
  otherId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, today } = await current("correct");
  const typed = textsOf(form);
  const input = parseForm(WhySchema, typed);
  const outcome = input.ok ? await sayTwoLots(db, actor, { lotId, otherId, why: input.value.why }, today) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}`);
}

/** Lets a record stand for itself again. */
export async function standAlone(recordId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("correct");
  const typed = textsOf(form);
  const input = parseForm(WhySchema, typed);
  const outcome = input.ok ? await takeMergeBack(db, actor, recordId, input.value.why) : input;
  return answerOf(typed, outcome, () => `/lots/${recordId}`);
}
