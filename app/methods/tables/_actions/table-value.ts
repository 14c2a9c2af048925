"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { removeTableValue } from "@/lib/registry/tables/remove-table-value";
import { setTableValue } from "@/lib/registry/tables/set-table-value";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { current } from "../../../_session/current";
import { refusedForm } from "../../../varieties/_forms/answer";
import type { FormAnswer } from "../../../varieties/_forms/field-spec";
import { afterOwnValue } from "../_words/addresses";

/** Stores an own value in a published table, with its reason. */
export async function storeTableValue(
  at: { readonly table: string; readonly row: string; readonly field: string; readonly crop?: string },
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("settings");
  const { crop, ...place } = at;
  const { value = "", reason = "", source } = typed;
  const stored = await setTableValue(db, actor, { ...place, value, reason, source });
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(afterOwnValue(at.table, crop));
}

/** Lets the table's value hold again; `back` is a path of this registry. */
export async function dropTableValue(id: string, back: string): Promise<void> {
  const { db, actor } = await current("settings");
  await removeTableValue(db, actor, id);
  revalidatePath("/", "layout");
  redirect(back.startsWith("/") && !back.startsWith("//") ? back : "/methods/tables");
}
