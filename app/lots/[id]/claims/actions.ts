"use server";

import { correctClaim } from "@/lib/registry/claims/correct-claim";
import { judgeClaim } from "@/lib/registry/claims/judge-claim";
import { tellClaim } from "@/lib/registry/claims/tell-claim";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { claimSchema, correctClaimSchema, JudgeClaimSchema } from "@/lib/schemas/lots/lineage-claims";
import { current } from "../../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../_form/form-answer";

/** Writes down what is told of where a lot is from. */
export async function tell(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(claimSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await tellClaim(db, actor, lotId, input.value, today) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}#lineage`);
}

/** Puts a claim right. */
export async function putClaimRight(claimId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("correct");
  const typed = textsOf(form);
  const input = parseForm(correctClaimSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await correctClaim(db, actor, claimId, input.value, today) : input;
  return answerOf(typed, outcome, ({ value }) => `/lots/${value.lotId}#claim-${value.claimId}`);
}

/** Says how a claim stands. */
export async function judge(claimId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor } = await current("decide");
  const typed = textsOf(form);
  const input = parseForm(JudgeClaimSchema, typed);
  const outcome = input.ok ? await judgeClaim(db, actor, claimId, input.value) : input;
  return answerOf(typed, outcome, ({ value }) => `/lots/${value.lotId}#claim-${claimId}`);
}
