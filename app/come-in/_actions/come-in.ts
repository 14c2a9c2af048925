"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { setCookies } from "@/app/_session/set-cookies";
import { isShared } from "@/app/_session/shared";
import { siteNow } from "@/app/_session/site";
import { refusedForm } from "@/app/varieties/_forms/answer";
import type { FormAnswer } from "@/app/varieties/_forms/field-spec";
import { comeIn } from "@/lib/registry/accounts/come-in";
import { setPassphrase } from "@/lib/registry/accounts/set-passphrase";
import { ownRegistry } from "@/lib/registry/open-registry";
import { withoutSecrets } from "@/lib/schemas/accounts/without-secrets";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";

/** Makes an account by an invitation, and signs it in. */
export async function makeAccount(code: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  return through(comeIn, code, form);
}

/** Sets a new passphrase by a way in that the owner gave, and signs the device in. */
export async function makePassphrase(code: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  return through(setPassphrase, code, form);
}

async function through(operation: typeof comeIn, code: string, form: FormData): Promise<FormAnswer> {
  if (!isShared()) redirect("/");
  const typed = textsOfForm(form);
  const done = await operation(await ownRegistry(), await siteNow(), new Headers(await headers()), code, typed);
  if (!done.ok) return refusedForm(done.refusals, withoutSecrets(typed));
  await setCookies(done.value);
  redirect("/");
}
