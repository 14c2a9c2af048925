"use server";

import { correctLot } from "@/lib/registry/lots/correct-lot";
import { readHead } from "@/lib/registry/lots/read-head";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { correctLotSchema } from "@/lib/schemas/lots/record-lot";
import { joinedWithMeanwhile } from "@/lib/schemas/written-meanwhile";
import { current } from "../../_session/current";
import { fieldsOfLot } from "../_form/fields-of-lot";
import { answerOf, type FormAnswer, textsOf } from "../_form/form-answer";

/** Puts fields of a lot right. */
export async function putLotRight(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("correct-at-desk");
  const lot = await readHead(db.read, lotId);
  const { typed, texts, refusals } = joinedWithMeanwhile(textsOf(form), lot ? fieldsOfLot(lot) : {});
  if (refusals.length > 0) return { typed, refusals, done: null };
  const input = parseForm(correctLotSchema(settings.hemisphere), texts);
  const outcome = input.ok ? await correctLot(db, actor, lotId, input.value) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}`);
}
