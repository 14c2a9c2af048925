"use server";

import { correctKinship, takeKinshipAway } from "@/lib/registry/kinships/correct-kinship";
import { recordKinship } from "@/lib/registry/kinships/record-kinship";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { CorrectKinshipSchema, KinshipSchema } from "@/lib/schemas/lots/lineage-claims";
import { WhySchema } from "@/lib/schemas/lots/merge-lots";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";

const page = (varietyId: string) => `/varieties/${varietyId}/kinship`;

/** Records how two founder lots are related. */
export async function storeKinship(varietyId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(KinshipSchema, typed);
  const outcome = input.ok ? await recordKinship(db, actor, input.value) : input;
  return answerOf(typed, outcome, () => page(varietyId));
}

/** Puts it right. */
export async function putKinshipRight(
  varietyId: string,
  kinshipId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("correct");
  const typed = textsOf(form);
  const input = parseForm(CorrectKinshipSchema, typed);
  const outcome = input.ok ? await correctKinship(db, actor, kinshipId, input.value) : input;
  return answerOf(typed, outcome, () => page(varietyId));
}

/** Takes it away again: it is not known after all. */
export async function dropKinship(
  varietyId: string,
  kinshipId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("correct");
  const typed = textsOf(form);
  const input = parseForm(WhySchema, typed);
  const outcome = input.ok ? await takeKinshipAway(db, actor, kinshipId, input.value.why) : input;
  return answerOf(typed, outcome, () => page(varietyId));
}
