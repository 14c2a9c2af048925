"use server";

import { gramsTyped } from "@/lib/display/units";
import { giveSeed } from "@/lib/registry/transfers/give-seed";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { giveSchema } from "@/lib/schemas/transfers/transfer";
import { current } from "../../../_session/current";
import { answerOf, type FormAnswer, textsOf, tickedOf } from "../../_form/form-answer";
import { unitsOf } from "../../_words/units-of";

/** Gives, lends, returns or deposits seed of a lot. */
export async function giveFromLot(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(giveSchema(settings.hemisphere), { ...typed, told: tickedOf(typed, "told.") });
  if (!input.ok) return answerOf(typed, input, () => "");
  const { amount, unit } = input.value;
  const inBase = unit === "g" ? gramsTyped(amount, unitsOf(settings)) : amount;
  const outcome = await giveSeed(db, actor, lotId, { ...input.value, amount: inBase }, { settings, today });
  return answerOf(typed, outcome, ({ value }) => `/sharing/${value.transferId}`);
}
