"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { chooseSeedCoat } from "@/lib/registry/varieties/choose-seed-coat";
import { correctStrain } from "@/lib/registry/varieties/correct-strain";
import { correctTypeTrait } from "@/lib/registry/varieties/correct-type-trait";
import { correctVariety } from "@/lib/registry/varieties/correct-variety";
import { varietyOf } from "@/lib/registry/varieties/variety-of";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { joinedWithMeanwhile } from "@/lib/schemas/written-meanwhile";
import { current } from "../../_session/current";
import { refusedForm } from "../_forms/answer";
import { type FormAnswer, textsOfFields } from "../_forms/field-spec";
import { varietyFields } from "../_words/variety-fields";

/** Stores what was corrected of a variety. */
export async function storeCorrection(varietyId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("record");
  const found = await varietyOf(db.read, varietyId);
  const now = found.ok ? textsOfFields(varietyFields(found.value)) : {};
  const { typed, texts, refusals } = joinedWithMeanwhile(textsOfForm(form), now);
  if (refusals.length > 0) return refusedForm(refusals, typed);
  const stored = await correctVariety(db, actor, varietyId, texts);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(`/varieties/${varietyId}`);
}

/** Stores a corrected line of the type description. */
export async function storeTraitCorrection(
  typeTraitId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("record");
  const stored = await correctTypeTrait(db, actor, typeTraitId, typed);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(`/varieties/${stored.value.value.varietyId}#type`);
}

/** Stores what was put right of a strain. */
export async function storeStrainCorrection(
  strainId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("correct");
  const stored = await correctStrain(db, actor, strainId, typed);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(`/varieties/${stored.value.value.varietyId}/strains/${strainId}`);
}

/** Stores the seed-coat mark that was chosen, or none: then it is drawn from the name. */
export async function storeSeedCoat(varietyId: string, form: FormData): Promise<void> {
  const { drawn, ...choice } = textsOfForm(form);
  const { db, actor } = await current("record");
  await chooseSeedCoat(db, actor, varietyId, drawn === "yes" ? null : choice);
  revalidatePath("/", "layout");
  redirect(`/varieties/${varietyId}`);
}
