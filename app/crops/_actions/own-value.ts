"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { removeOwnValue } from "@/lib/registry/crops/remove-own-value";
import { setOwnValue } from "@/lib/registry/crops/set-own-value";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { current } from "../../_session/current";
import { refusedForm } from "../../varieties/_forms/answer";
import type { FormAnswer } from "../../varieties/_forms/field-spec";

/** Stores an own value of a crop with its reason. */
export async function storeOwnValue(
  crop: { readonly id: string; readonly key: string; readonly field: string },
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("settings");
  const { value = "", reason = "", source } = typed;
  const stored = await setOwnValue(db, actor, { cropId: crop.id, field: crop.field, value, reason, source });
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(`/crops/${encodeURIComponent(crop.key)}#${crop.field}`);
}

/** Lets the list's value hold again. */
export async function dropOwnValue(overrideId: string, key: string): Promise<void> {
  const { db, actor } = await current("settings");
  await removeOwnValue(db, actor, overrideId);
  revalidatePath("/", "layout");
  redirect(`/crops/${encodeURIComponent(key)}`);
}
