"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { setCookies } from "@/app/_session/set-cookies";
import { signedInOrAsked } from "@/app/_session/signed-in";
import { siteNow } from "@/app/_session/site";
import { refusedForm } from "@/app/varieties/_forms/answer";
import type { FormAnswer } from "@/app/varieties/_forms/field-spec";
import { changePassphrase } from "@/lib/registry/accounts/change-passphrase";
import { endSession } from "@/lib/registry/accounts/end-session";
import { removePasskey } from "@/lib/registry/accounts/remove-passkey";
import { signOut } from "@/lib/registry/accounts/sign-out";
import { ownRegistry } from "@/lib/registry/open-registry";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";

/** Signs this device out. */
export async function leave(): Promise<void> {
  if (await signedInOrAsked()) await setCookies(await signOut(await ownRegistry(), await siteNow(), await sent()));
  redirect("/sign-in");
}

/** Changes the own passphrase. */
export async function newPassphrase(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const member = await signedInOrAsked();
  if (!member) redirect("/your-way-in");
  const done = await changePassphrase(await ownRegistry(), await siteNow(), await sent(), member, textsOfForm(form));
  if (!done.ok) return refusedForm(done.refusals, {});
  await setCookies(done.value);
  redirect("/your-way-in?stored=yes");
}

/** Signs another device of one's own out. */
export async function endOwnDevice(form: FormData): Promise<void> {
  const member = await signedInOrAsked();
  if (member) await endSession(await ownRegistry(), member.actor, String(form.get("id") ?? ""));
  redirect("/your-way-in");
}

/** Takes a passkey of one's own away. */
export async function dropPasskey(form: FormData): Promise<void> {
  const member = await signedInOrAsked();
  if (member) await removePasskey(await ownRegistry(), member.userId, String(form.get("id") ?? ""));
  redirect("/your-way-in");
}

async function sent(): Promise<Headers> {
  return new Headers(await headers());
}
