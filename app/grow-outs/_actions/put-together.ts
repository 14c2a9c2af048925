"use server";

import { gramsTyped } from "@/lib/display/units";
import { putTogether } from "@/lib/registry/harvests/put-together";
import { putTogetherSchema } from "@/lib/schemas/harvests/put-together";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";
import { unitsOf } from "../../lots/_words/units-of";

/** Puts bags that were kept apart into one jar; a weight that was typed is in the steward's unit. */
export async function putBagsTogether(
  growOutId: string,
  harvestId: string,
  inGramsTyped: boolean,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(putTogetherSchema(settings.hemisphere), typed);
  if (!input.ok) return answerOf(typed, input, () => "");
  const { wanted } = input.value;
  const amount = wanted !== null && inGramsTyped ? gramsTyped(wanted, unitsOf(settings)) : wanted;
  const outcome = await putTogether(db, actor, harvestId, { ...input.value, wanted: amount });
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}?wrote=${harvestId}#harvested`);
}
