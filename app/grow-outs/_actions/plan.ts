"use server";

import { correctGrowOut } from "@/lib/registry/grow-outs/correct-grow-out";
import { planGrowOut } from "@/lib/registry/grow-outs/plan-grow-out";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { correctGrowOutSchema, PlanGrowOutSchema } from "@/lib/schemas/grow-outs/plan-grow-out";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { joinedWithMeanwhile } from "@/lib/schemas/written-meanwhile";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";
import { fieldsOfGrowOut } from "../_form/fields-of-grow-out";
import { parentsOfTexts } from "../_form/typed-parents";

/** Plans a grow-out of a variety. */
export async function makePlan(varietyId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(PlanGrowOutSchema, { ...typed, parents: parentsOfTexts(typed) });
  const outcome = input.ok ? await planGrowOut(db, actor, varietyId, input.value) : input;
  return answerOf(typed, outcome, ({ value }) => `/grow-outs/${value.growOutId}`);
}

/** Puts a plan, or the record of a grow-out, right. */
export async function putRight(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record");
  const read = await readGrowOut(db, growOutId);
  const { typed, texts, refusals } = joinedWithMeanwhile(textsOf(form), read ? fieldsOfGrowOut(read) : {});
  if (refusals.length > 0) return { typed, refusals, done: null };
  const input = parseForm(correctGrowOutSchema(settings.hemisphere), { ...texts, parents: parentsOfTexts(texts) });
  const outcome = input.ok ? await correctGrowOut(db, actor, growOutId, input.value) : input;
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}`);
}
