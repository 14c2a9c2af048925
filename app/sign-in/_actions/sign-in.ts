"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { setCookies } from "@/app/_session/set-cookies";
import { isShared } from "@/app/_session/shared";
import { siteNow } from "@/app/_session/site";
import { wayBack } from "@/app/_session/way-back";
import { refusedForm } from "@/app/varieties/_forms/answer";
import type { FormAnswer } from "@/app/varieties/_forms/field-spec";
import { signIn } from "@/lib/registry/accounts/sign-in";
import { ownRegistry } from "@/lib/registry/open-registry";
import { withoutSecrets } from "@/lib/schemas/accounts/without-secrets";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";

/** Signs in and leads back to where somebody was. */
export async function signInHere(then: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  if (!isShared()) redirect("/");
  const typed = textsOfForm(form);
  const done = await signIn(await ownRegistry(), await siteNow(), new Headers(await headers()), typed);
  if (!done.ok) return refusedForm(done.refusals, withoutSecrets(typed));
  await setCookies(done.value);
  redirect(wayBack(then));
}
