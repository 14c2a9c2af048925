"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeTrait, removeTrait } from "@/lib/registry/traits/change-trait";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import { current } from "../../../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../../../lots/_form/form-answer";

/** Defines a trait on a variety's page. */
export async function defineThisTrait(varietyId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("record");
  const typed = textsOf(form);
  const outcome = await defineTrait(db, actor, varietyId, typed);
  if (outcome.ok) revalidatePath("/", "layout");
  return answerOf(typed, outcome, () => `/varieties/${varietyId}/traits`);
}

/** Changes a trait; where it was used, by a new version. */
export async function changeThisTrait(
  varietyId: string,
  traitId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("record");
  const typed = textsOf(form);
  const outcome = await changeTrait(db, actor, varietyId, traitId, typed);
  if (outcome.ok) revalidatePath("/", "layout");
  return answerOf(typed, outcome, () => `/varieties/${varietyId}/traits`);
}

/** Takes away a trait that was never used. */
export async function takeTraitAway(varietyId: string, traitId: string): Promise<void> {
  const { db, actor } = await current("record");
  const removed = await removeTrait(db, actor, varietyId, traitId);
  revalidatePath("/", "layout");
  // One that was used meanwhile stays, and its page says how often.
  redirect(`/varieties/${varietyId}/traits${removed.ok ? "" : `/${traitId}`}`);
}
