"use server";

import { gramsTyped } from "@/lib/display/units";
import { recordLot } from "@/lib/registry/lots/record-lot";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { recordLotSchema } from "@/lib/schemas/lots/record-lot";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../_form/form-answer";
import { unitsOf } from "../_words/units-of";

/** Enters a lot by hand. */
export async function enterLot(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(recordLotSchema(settings.hemisphere), typed);
  if (!input.ok) return answerOf(typed, input, () => "");
  const { amount } = input.value;
  const grams = amount === null ? null : gramsTyped(amount, unitsOf(settings));
  const outcome = await recordLot(db, actor, { ...input.value, amount: grams });
  return answerOf(typed, outcome, ({ value }) => `/lots/${value.lotId}`);
}
