"use server";

import { revalidatePath } from "next/cache";
import { notFound, redirect } from "next/navigation";
import { addOtherName } from "@/lib/registry/varieties/add-other-name";
import { addStrain } from "@/lib/registry/varieties/add-strain";
import { addTypeTrait } from "@/lib/registry/varieties/add-type-trait";
import { confirmHolder } from "@/lib/registry/varieties/confirm-holder";
import { tellPossiblySame } from "@/lib/registry/varieties/tell-possibly-same";
import { tellStory } from "@/lib/registry/varieties/tell-story";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { current } from "../../_session/current";
import { refusedForm } from "../_forms/answer";
import type { FormAnswer } from "../_forms/field-spec";
import type { Addition } from "../_words/additions";

const anchors: Readonly<Record<Addition, string>> = {
  name: "names",
  same: "names",
  strain: "strains",
  trait: "type",
  word: "holders",
  story: "story",
};

/** Adds another name, a strain, a line of the type description, a holder's word or a story to a variety. */
export async function storeAddition(
  varietyId: string,
  what: Addition,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor, today } = await current("desk");
  // What is added comes from the page, and anybody may write to it.
  if (!Object.hasOwn(anchors, what)) notFound();
  const stored = await {
    name: () => addOtherName(db, actor, varietyId, typed),
    same: () => tellPossiblySame(db, actor, varietyId, typed),
    strain: () => addStrain(db, actor, varietyId, typed),
    trait: () => addTypeTrait(db, actor, varietyId, typed),
    word: () => confirmHolder(db, actor, varietyId, typed, today),
    story: () => tellStory(db, actor, varietyId, typed),
  }[what]();
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(`/varieties/${varietyId}#${anchors[what]}`);
}
