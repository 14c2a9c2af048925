"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { recordVariety } from "@/lib/registry/varieties/record-variety";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { current } from "../../_session/current";
import { refusedForm } from "../_forms/answer";
import type { FormAnswer } from "../_forms/field-spec";

/** Records a variety and leads to its page. A crop that is not on the list is written in a field of its own. */
export async function storeVariety(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { crop = "", otherCrop = "", ...rest } = typed;
  const own = otherCrop.trim() !== "";
  const { db, actor } = await current("desk");
  const input = { ...rest, crop: own ? otherCrop : crop, ownCrop: own ? "yes" : "no" };
  const stored = await recordVariety(db, actor, input);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(`/varieties/${stored.value.value.varietyId}`);
}
