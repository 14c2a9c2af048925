"use server";

import { redirect } from "next/navigation";
import { metresTyped } from "@/lib/display/units";
import { claimIsolation } from "@/lib/registry/neighbours/claim-isolation";
import {
  correctIsolationMethod,
  recordIsolationMethod,
  removeIsolationMethod,
} from "@/lib/registry/neighbours/record-isolation-method";
import { recordLook, takeLookBack } from "@/lib/registry/neighbours/record-look";
import { correctNeighbour, recordNeighbour, removeNeighbour } from "@/lib/registry/neighbours/record-neighbour";
import { recordNeighbourFlowering } from "@/lib/registry/neighbours/record-neighbour-flowering";
import { parseForm, ticked } from "@/lib/schemas/lots/form-fields";
import { isolationClaimSchema } from "@/lib/schemas/neighbours/isolation-claim";
import { isolationMethodSchema } from "@/lib/schemas/neighbours/isolation-method";
import { lookSchema } from "@/lib/schemas/neighbours/look";
import { neighbourSchema } from "@/lib/schemas/neighbours/neighbour";
import { neighbourFloweringSchema } from "@/lib/schemas/neighbours/neighbour-flowering";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";
import { unitsOf } from "../../lots/_words/units-of";

/** Writes down a neighbour source of a grow-out. */
export async function enterNeighbour(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("record-in-field");
  const typed = textsOf(form);
  const input = await neighbourTyped(typed);
  const outcome = input.ok ? await recordNeighbour(db, actor, growOutId, input.value) : input;
  return answerOf(typed, outcome, () => pageOf(growOutId));
}

/** Puts a neighbour source right. */
export async function putNeighbourRight(
  growOutId: string,
  neighbourId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("record-in-field");
  const typed = textsOf(form);
  const input = await neighbourTyped(typed);
  const outcome = input.ok ? await correctNeighbour(db, actor, neighbourId, input.value) : input;
  return answerOf(typed, outcome, () => pageOf(growOutId));
}

/** Takes a neighbour source out. */
export async function takeNeighbourOut(growOutId: string, neighbourId: string): Promise<void> {
  const { db, actor } = await current("record-in-field");
  await removeNeighbour(db, actor, neighbourId);
  redirect(pageOf(growOutId));
}

/** Notes a day on which a neighbour source was seen in flower. */
export async function noteNeighbourFlowering(
  growOutId: string,
  neighbourId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(neighbourFloweringSchema(settings.hemisphere), typed);
  const correct = ticked.parse(typed.correct);
  const outcome = input.ok
    ? await recordNeighbourFlowering(db, actor, neighbourId, input.value, today, correct)
    : input;
  return answerOf(typed, outcome, () => `${pageOf(growOutId)}#flowering`);
}

/** Writes down that somebody looked for neighbours. */
export async function enterLook(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(lookSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await recordLook(db, actor, growOutId, input.value, today) : input;
  return answerOf(typed, outcome, () => pageOf(growOutId));
}

/** Takes back that somebody looked. */
export async function nobodyLooked(growOutId: string): Promise<void> {
  const { db, actor } = await current("record-in-field");
  await takeLookBack(db, actor, growOutId);
  redirect(pageOf(growOutId));
}

/** Writes down what was done to keep other pollen off. */
export async function enterMethod(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(isolationMethodSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await recordIsolationMethod(db, actor, growOutId, input.value) : input;
  return answerOf(typed, outcome, () => `${pageOf(growOutId)}#methods`);
}

/** Puts right what was written of a method. */
export async function putMethodRight(
  growOutId: string,
  methodId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(isolationMethodSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await correctIsolationMethod(db, actor, methodId, input.value) : input;
  return answerOf(typed, outcome, () => `${pageOf(growOutId)}#methods`);
}

/** Takes a method out that was not used. */
export async function takeMethodOut(growOutId: string, methodId: string): Promise<void> {
  const { db, actor } = await current("record-in-field");
  await removeIsolationMethod(db, actor, methodId);
  redirect(`${pageOf(growOutId)}#methods`);
}

/** Stores with lots of the grow-out what is claimed of their isolation. */
export async function claimForLots(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(isolationClaimSchema, typed);
  const outcome = input.ok ? await claimIsolation(db, actor, growOutId, input.value) : input;
  return answerOf(typed, outcome, () => `${pageOf(growOutId)}#claim`);
}

function pageOf(growOutId: string): string {
  return `/grow-outs/${growOutId}/neighbours`;
}

async function neighbourTyped(typed: Readonly<Record<string, string>>): Promise<Outcome<NeighbourTyped>> {
  const { settings } = await current("record-in-field");
  const read = parseForm(neighbourSchema(settings.hemisphere), typed);
  if (!read.ok) return read;
  const { distance, ...rest } = read.value;
  return accepted({ ...rest, distanceMetres: distance === null ? null : metresTyped(distance, unitsOf(settings)) });
}

type NeighbourTyped = Parameters<typeof recordNeighbour>[3];
