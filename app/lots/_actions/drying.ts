"use server";

import { gramsTyped } from "@/lib/display/units";
import { endDrying, recordDrying } from "@/lib/registry/drying/record-drying";
import { recordMoisture } from "@/lib/registry/drying/record-moisture";
import { driedSchema, dryingSchema, moistureReadingSchema } from "@/lib/schemas/drying/drying-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../_form/form-answer";
import { unitsOf } from "../_words/units-of";

/** Writes a moisture reading down. */
export async function readMoisture(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(moistureReadingSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await recordMoisture(db, actor, lotId, input.value) : input;
  return answerOf(typed, outcome, ({ value }) => `/lots/${lotId}/dry?wrote=${value.readingId}#moisture`);
}

/** Lays seed out to dry. */
export async function layOut(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(dryingSchema(settings.hemisphere), typed);
  const outcome = input.ok
    ? await recordDrying(db, actor, lotId, {
        ...input.value,
        startGrams: gramsTyped(input.value.startGrams, unitsOf(settings)),
      })
    : input;
  return answerOf(typed, outcome, ({ value }) => `/lots/${lotId}/dry?wrote=${value.dryingId}#dryings`);
}

/** Says what dried seed weighs. */
export async function writeDried(
  lotId: string,
  dryingId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(driedSchema(settings.hemisphere), typed);
  const outcome = input.ok
    ? await endDrying(db, actor, dryingId, {
        ...input.value,
        endGrams: gramsTyped(input.value.endGrams, unitsOf(settings)),
      })
    : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}/dry?wrote=${dryingId}#dryings`);
}
