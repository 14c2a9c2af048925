"use server";

import { recordForeignPollen } from "@/lib/registry/grow-outs/record-foreign-pollen";
import { ForeignPollenSchema } from "@/lib/schemas/grow-outs/foreign-pollen";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";

/** Writes down how much of a grow-out's seed had a foreign father. */
export async function sayForeignPollen(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(ForeignPollenSchema, typed);
  const outcome = input.ok ? await recordForeignPollen(db, actor, growOutId, input.value) : input;
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}#how`);
}
