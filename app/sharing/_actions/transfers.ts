"use server";

import { gramsTyped } from "@/lib/display/units";
import { correctTransfer } from "@/lib/registry/transfers/correct-transfer";
import { keepPromise, letPromiseGo } from "@/lib/registry/transfers/promises";
import { recordReply } from "@/lib/registry/transfers/record-reply";
import { takeInSeed } from "@/lib/registry/transfers/take-in-seed";
import { confirmHolder } from "@/lib/registry/varieties/confirm-holder";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import {
  correctTransferSchema,
  keptPromiseSchema,
  letGoSchema,
  replySchema,
  takeInSchema,
} from "@/lib/schemas/transfers/transfer";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";
import { unitsOf } from "../../lots/_words/units-of";

/** Takes seed in, into quarantine. */
export async function takeIn(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(takeInSchema(settings.hemisphere), typed);
  if (!input.ok) return answerOf(typed, input, () => "");
  const { amount, unit } = input.value;
  const inBase = amount !== null && unit === "g" ? gramsTyped(amount, unitsOf(settings)) : amount;
  const outcome = await takeInSeed(db, actor, { ...input.value, amount: inBase }, today);
  return answerOf(typed, outcome, ({ value }) => `/lots/${value.lotId}`);
}

/** Puts a transfer right, on both sides of the ledger. */
export async function putTransferRight(id: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(correctTransferSchema(settings.hemisphere), typed);
  if (!input.ok) return answerOf(typed, input, () => "");
  const { amount, unit } = input.value;
  const inBase = amount !== null && unit === "g" ? gramsTyped(amount, unitsOf(settings)) : amount;
  const outcome = await correctTransfer(db, actor, id, { ...input.value, amount: inBase }, today);
  return answerOf(typed, outcome, () => `/sharing/${id}`);
}

/** Writes down what was answered to seed that was handed over. */
export async function writeAnswer(id: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(replySchema(settings.hemisphere), typed);
  const outcome = input.ok ? await recordReply(db, actor, id, input.value, today) : input;
  return answerOf(typed, outcome, () => `/sharing/${id}`);
}

/** Writes down that a promise was kept. */
export async function promiseKept(
  id: string,
  leadsTo: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(keptPromiseSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await keepPromise(db, actor, id, input.value.on, today) : input;
  return answerOf(typed, outcome, () => leadsTo);
}

/** Lets a promise go that nobody waits for any more. */
export async function promiseLetGo(
  id: string,
  leadsTo: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(letGoSchema, typed);
  const outcome = input.ok ? await letPromiseGo(db, actor, id, input.value.reason, today) : input;
  return answerOf(typed, outcome, () => leadsTo);
}

/** Writes a holder's word down from the list of who holds what. */
export async function holderSaid(
  varietyId: string,
  steward: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, today } = await current("desk");
  const typed = textsOf(form);
  const outcome = await confirmHolder(db, actor, varietyId, { ...typed, steward }, today);
  return answerOf(typed, outcome, () => `/sharing/holders/${varietyId}`);
}
