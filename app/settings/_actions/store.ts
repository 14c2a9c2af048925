"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeSettings } from "@/lib/registry/settings/change-settings";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { SettingsFormSchema } from "@/lib/schemas/varieties/settings-form";
import { current } from "../../_session/current";
import { refusedForm } from "../../varieties/_forms/answer";
import type { FormAnswer } from "../../varieties/_forms/field-spec";

/** Stores the settings; percentages become shares. */
export async function storeSettings(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("settings");
  const typed = textsOfForm(form);
  const read = parseForm(SettingsFormSchema, typed);
  if (!read.ok) return refusedForm(read.refusals, typed);
  const stored = await changeSettings(db, actor, read.value);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect("/settings?stored=yes");
}
