"use server";

import { readContainer } from "@/lib/registry/containers/read-container";
import { changeContainer, recordContainer } from "@/lib/registry/containers/record-container";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { containerSchema } from "@/lib/schemas/lots/record-container";
import { joinedWithMeanwhile } from "@/lib/schemas/written-meanwhile";
import { current } from "../../_session/current";
import { fieldsOfContainer } from "../_form/fields-of-container";
import { answerOf, type FormAnswer, textsOf } from "../_form/form-answer";

/** Says in which container part of a lot is kept. */
export async function addContainer(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(containerSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await recordContainer(db, actor, lotId, input.value) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}#containers`);
}

/** Says that a container stands elsewhere, holds another amount, or was opened. */
export async function moveContainer(
  lotId: string,
  containerId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const container = await readContainer(db.read, lotId, containerId);
  const now = container ? fieldsOfContainer(container) : {};
  const { typed, texts, refusals } = joinedWithMeanwhile(textsOf(form), now);
  if (refusals.length > 0) return { typed, refusals, done: null };
  const input = parseForm(containerSchema(settings.hemisphere), texts);
  const outcome = input.ok ? await changeContainer(db, actor, containerId, input.value) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}#containers`);
}
