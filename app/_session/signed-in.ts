import "server-only";
import { cookies, headers } from "next/headers";
import { redirect } from "next/navigation";
import { cache } from "react";
import type { SessionMember } from "@/lib/registry/accounts/session-member";
import { ownRegistry } from "@/lib/registry/open-registry";
import { offsetMinutesIn } from "./civil-day-in";
import { isShared } from "./shared";
import { siteNow } from "./site";
import { pathHeader, signInAddress } from "./way-back";
import { zoneCookie } from "./zone-cookie";

/** Who is signed in; null for nobody, and always where there is nothing to sign into. */
export const signedIn = cache(async (): Promise<SessionMember | null> => {
  if (!isShared()) return null;
  const offset = offsetMinutesIn((await cookies()).get(zoneCookie)?.value);
  // Alone on one machine the sign-in library is never loaded.
  const { sessionMember } = await import("@/lib/registry/accounts/session-member");
  return sessionMember(await ownRegistry(), await siteNow(), new Headers(await headers()), offset);
});

/** Who is signed in, or null where there is nothing to sign into; nobody signed in is led to the sign-in page and back from there. */
export async function signedInOrAsked(): Promise<SessionMember | null> {
  const member = await signedIn();
  if (!member && isShared()) redirect(signInAddress((await headers()).get(pathHeader)));
  return member;
}
