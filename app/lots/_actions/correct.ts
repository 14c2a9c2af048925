"use server";

import { correctLot } from "@/lib/registry/lots/correct-lot";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { correctLotSchema } from "@/lib/schemas/lots/record-lot";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../_form/form-answer";

/** Puts fields of a lot right. */
export async function putLotRight(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("correct-at-desk");
  const typed = textsOf(form);
  const input = parseForm(correctLotSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await correctLot(db, actor, lotId, input.value) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}`);
}
