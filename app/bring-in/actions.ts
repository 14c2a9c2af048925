"use server";

import { redirect } from "next/navigation";
import { refusalSentence } from "@/lib/display/refusals";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { importEnded, importWrote } from "@/lib/exchange/bring-in/progress";
import { forgetUpload, uploadedFiles } from "@/lib/exchange/bring-in/uploads";
import { current } from "../_session/current";
import type { ImportState } from "./_components/confirm-import";

/** Brings an upload in, whole or not at all. */
export async function bringIn(_state: ImportState, form: FormData): Promise<ImportState> {
  const upload = String(form.get("upload") ?? "");
  const { db, actor } = await current("import");
  const files = await uploadedFiles(db.location.folder, upload);
  if (!files) return { refusals: ["These files are no longer here; choose them again."] };
  if (!files.ok) return { refusals: files.refusals.map(refusalSentence) };
  const outcome = await importFolder(db, actor, files.value, (written) => importWrote(upload, written));
  importEnded(upload);
  if (!outcome.ok) return { refusals: outcome.refusals.map((each) => each.sentence) };
  await forgetUpload(db.location.folder, upload);
  redirect(outcome.value.changeSetId ? `/bring-in/done/${outcome.value.changeSetId}` : "/lots");
}
