"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { correctPhoto, takePhotoAway } from "@/lib/registry/photos/correct-photo";
import { erasePhoto } from "@/lib/registry/photos/erase-photo";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";
import { current } from "../../_session/current";
import { refusedForm } from "../../varieties/_forms/answer";
import type { FormAnswer } from "../../varieties/_forms/field-spec";

/** Puts right what is told of a picture. */
export async function putPictureRight(photoId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("picture");
  const stored = await correctPhoto(db, actor, photoId, typed);
  if (!stored.ok) return refusedForm(stored.refusals, typed);
  revalidatePath("/", "layout");
  redirect(`/pictures/${photoId}`);
}

/** Takes a picture away and leads to the record that it was of. */
export async function takePictureAway(
  photoId: string,
  back: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("picture");
  // The page has two forms with a reason, each under a name of its own.
  const stored = await takePhotoAway(db, actor, photoId, { why: typed.whyAway });
  if (!stored.ok)
    return refusedForm(
      stored.refusals.map((each) => ({ ...each, path: ["whyAway"] })),
      typed,
    );
  revalidatePath("/", "layout");
  redirect(back.startsWith("/") && !back.startsWith("//") ? back : "/");
}

/** Erases a picture for good and leads to the record that it was of. */
export async function erasePicture(
  photoId: string,
  back: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const typed = textsOfForm(form);
  const { db, actor } = await current("erase");
  const erased = await erasePhoto(db, actor, photoId, typed);
  if (!erased.ok) return refusedForm(erased.refusals, typed);
  revalidatePath("/", "layout");
  redirect(back.startsWith("/") && !back.startsWith("//") ? back : "/");
}
