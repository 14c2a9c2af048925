"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { refusalSentence } from "@/lib/display/refusals";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { current } from "../../_session/current";

export interface UndoAnswer {
  readonly refusals: readonly string[];
}

/** Takes a change set back, or answers why it cannot be: what depends on it, by name. */
export async function takeBack(changeSetId: string, _before: UndoAnswer): Promise<UndoAnswer> {
  const { db, actor } = await current("undo");
  const undone = await undoChangeSet(db, actor, changeSetId);
  if (!undone.ok) return { refusals: undone.refusals.map(refusalSentence) };
  revalidatePath("/", "layout");
  redirect(`/history?undone=${undone.value.revision}`);
}
