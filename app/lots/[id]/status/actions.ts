"use server";

import { decideLot } from "@/lib/registry/lots/decide-lot";
import { moveLot } from "@/lib/registry/lots/move-lot";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { decideSchema, moveLotSchema } from "@/lib/schemas/lots/lot-moves";
import { current } from "../../../_session/current";
import { answerOf, type FormAnswer, textsOf, tickedOf } from "../../_form/form-answer";

/** Decides about a lot that stood in quarantine. */
export async function decide(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("decide");
  const typed = textsOf(form);
  const answers = tickedOf(typed, "answers.");
  const input = parseForm(decideSchema(settings.hemisphere), { ...typed, answers });
  const outcome = input.ok ? await decideLot(db, actor, lotId, input.value, today) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}`);
}

/** Moves a lot on in its life. */
export async function move(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("decide");
  const typed = textsOf(form);
  const input = parseForm(moveLotSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await moveLot(db, actor, lotId, input.value, today) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}`);
}
