"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { refusalSentence } from "@/lib/display/refusals";
import { correctSteward } from "@/lib/registry/stewards/correct-steward";
import { erasePerson } from "@/lib/registry/stewards/erase-person";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { recordSteward } from "@/lib/registry/stewards/record-steward";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { joinedWithMeanwhile } from "@/lib/schemas/written-meanwhile";
import { current } from "../../_session/current";
import { refusedForm } from "../../varieties/_forms/answer";
import { type FormAnswer, textsOfFields } from "../../varieties/_forms/field-spec";
import { stewardFields } from "../_words/steward-fields";

/** Records a steward. */
export async function storeSteward(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("desk");
  const stored = await recordSteward(db, actor, typed);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect("/stewards");
}

/** Stores what was corrected of a steward. */
export async function storeStewardCorrection(
  stewardId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("desk");
  const steward = (await listStewards(db)).find((each) => each.id === stewardId);
  const now = steward ? textsOfFields(stewardFields(steward)) : {};
  const { typed, texts, refusals } = joinedWithMeanwhile(textsOfForm(form), now);
  if (refusals.length > 0) return refusedForm(refusals, typed);
  const stored = await correctSteward(db, actor, stewardId, texts);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect("/stewards");
}

export interface ForgetAnswer {
  readonly refusals: readonly string[];
}

/** Erases a steward's name and contact for good, or answers why that is not safe yet. */
export async function forgetPerson(stewardId: string, _before: ForgetAnswer): Promise<ForgetAnswer> {
  const { db, actor } = await current("erase");
  const erased = await erasePerson(db, actor, stewardId);
  if (!erased.ok) return { refusals: erased.refusals.map(refusalSentence) };
  revalidatePath("/", "layout");
  redirect("/stewards");
}
