"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { atHome } from "@/app/_session/at-home";
import { scanPathOf } from "@/app/_session/scan-code";
import { addressToTell } from "@/app/_session/shared";
import { refusedForm } from "@/app/varieties/_forms/answer";
import { refusalSentence } from "@/lib/display/refusals";
import { changeMember } from "@/lib/registry/accounts/change-member";
import { endMember } from "@/lib/registry/accounts/end-member";
import { endSession } from "@/lib/registry/accounts/end-session";
import { giveNewWayIn } from "@/lib/registry/accounts/give-new-way-in";
import { spacedCode } from "@/lib/registry/accounts/invitation-code";
import { invite, type WayIn } from "@/lib/registry/accounts/invite";
import { letInAgain } from "@/lib/registry/accounts/let-in-again";
import { withdrawInvitation } from "@/lib/registry/accounts/withdraw-invitation";
import type { Outcome } from "@/lib/science/outcome";
import type { WayInAnswer } from "../_parts/way-in-shown";

/** Invites somebody; answers the link and its code to scan, which are shown this once. */
export async function inviteSomebody(_before: WayInAnswer, form: FormData): Promise<WayInAnswer> {
  const typed = membershipOf(form);
  const { db, actor } = await atHome();
  const done = await invite(db, actor, typed);
  if (!done.ok) return { ...refusedForm(done.refusals, typed), shown: null };
  revalidatePath("/members");
  return shown(done.value.value);
}

/** Gives a member who has forgotten the passphrase a link that sets a new one. */
export async function giveWayIn(memberId: string, _before: WayInAnswer): Promise<WayInAnswer> {
  const { db, actor } = await atHome();
  const done = await giveNewWayIn(db, actor, memberId);
  if (!done.ok) return { ...refusedForm(done.refusals, {}), shown: null };
  revalidatePath("/members");
  return shown(done.value.value);
}

function shown({ code, expiresAt }: WayIn): WayInAnswer {
  const link = `https://${addressToTell() ?? "localhost"}/come-in/${code}`;
  return { refusals: [], typed: {}, shown: { link, code: spacedCode(code), expiresAt, scan: scanPathOf(link) } };
}

/** Changes what a member may do. */
export async function storeMember(memberId: string, _before: WayInAnswer, form: FormData): Promise<WayInAnswer> {
  const typed = membershipOf(form);
  const { db, actor } = await atHome();
  const done = await changeMember(db, actor, memberId, typed);
  if (!done.ok) return { ...refusedForm(done.refusals, typed), shown: null };
  revalidatePath("/members", "layout");
  redirect("/members");
}

/** Takes an invitation back. */
export async function takeInvitationBack(form: FormData): Promise<void> {
  const { db, actor } = await atHome();
  await gone(await withdrawInvitation(db, actor, idIn(form)), "/members");
}

/** Ends a member's way in. */
export async function endWayIn(form: FormData): Promise<void> {
  const { db, actor } = await atHome();
  await gone(await endMember(db, actor, idIn(form)), `/members/${idIn(form)}`);
}

/** Lets a member in again. */
export async function openWayIn(form: FormData): Promise<void> {
  const { db, actor } = await atHome();
  await gone(await letInAgain(db, actor, idIn(form)), `/members/${idIn(form)}`);
}

/** Signs a member's device out. */
export async function endDevice(memberId: string, form: FormData): Promise<void> {
  const { db, actor } = await atHome();
  await gone(await endSession(db, actor, idIn(form)), `/members/${memberId}`);
}

/** Leads back to the page, with why not where it was refused. */
async function gone(done: Outcome<unknown>, page: string): Promise<never> {
  revalidatePath("/members", "layout");
  redirect(done.ok ? page : `${page}?refused=${encodeURIComponent(done.refusals.map(refusalSentence).join(" "))}`);
}

function idIn(form: FormData): string {
  return String(form.get("id") ?? "");
}

/** The fields of a membership; of the boxes for grow-outs those that are ticked. */
function membershipOf(form: FormData): Record<string, string> {
  const text = (name: string) => String(form.get(name) ?? "");
  const growOuts = form.getAll("growOuts").map(String).join(" ");
  const free = form.has("note") ? "note" : "words";
  return { role: text("role"), stewardId: text("stewardId"), growOuts, [free]: text(free) };
}
