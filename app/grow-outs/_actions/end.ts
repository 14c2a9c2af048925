"use server";

import { endGrowOut } from "@/lib/registry/grow-outs/end-grow-out";
import { endGrowOutSchema } from "@/lib/schemas/grow-outs/end-grow-out";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";

/** Ends a grow-out, or says that it still stands. */
export async function end(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(endGrowOutSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await endGrowOut(db, actor, growOutId, input.value) : input;
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}`);
}
