"use server";

import { redirect } from "next/navigation";
import { correctPlotDates, putOnPlot, takeOffPlot } from "@/lib/registry/grow-outs/put-on-plot";
import { plotDatesSchema, plotOfGrowOutSchema } from "@/lib/schemas/grow-outs/plot-of-grow-out";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";

/** Puts a grow-out on a plot. */
export async function put(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(plotOfGrowOutSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await putOnPlot(db, actor, growOutId, input.value) : input;
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}`);
}

/** Puts the days on one of its plots right. */
export async function putDaysRight(
  growOutId: string,
  standId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(plotDatesSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await correctPlotDates(db, actor, standId, input.value) : input;
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}`);
}

/** It never stood on that plot. */
export async function takeOff(growOutId: string, standId: string): Promise<void> {
  const { db, actor } = await current("record");
  await takeOffPlot(db, actor, standId);
  redirect(`/grow-outs/${growOutId}/plot`);
}
