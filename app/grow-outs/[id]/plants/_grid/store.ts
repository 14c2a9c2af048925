"use server";

import { revalidatePath } from "next/cache";
import { refusalSentence } from "@/lib/display/refusals";
import { savedWords, savePlants } from "@/lib/registry/plants/save-plants";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { savePlantsSchema } from "@/lib/schemas/plants/save-plants";
import { current } from "../../../../_session/current";

/** What storing the grid answered: what was stored, or each refusal with its row and column (or its field). */
export type Stored =
  | { readonly ok: true; readonly words: string; readonly changeSetId: string | null }
  | { readonly ok: false; readonly refusals: readonly { row: string; column: string; sentence: string }[] };

/** Stores the changed cells of a grow-out's grid as one entry of the history, or none of them. */
export async function storePlants(growOutId: string, sent: Record<string, unknown>): Promise<Stored> {
  const { db, actor, settings } = await current("record-in-field");
  const input = parseForm(savePlantsSchema(settings.hemisphere), sent);
  const outcome = input.ok ? await savePlants(db, actor, growOutId, input.value, settings.hemisphere) : input;
  if (!outcome.ok) {
    return {
      ok: false,
      refusals: outcome.refusals.map((each) => ({
        row: String(each.path[0] ?? ""),
        column: String(each.path[1] ?? ""),
        sentence: refusalSentence(each),
      })),
    };
  }
  revalidatePath("/", "layout");
  return { ok: true, words: savedWords(outcome.value.value), changeSetId: outcome.value.changeSetId };
}
