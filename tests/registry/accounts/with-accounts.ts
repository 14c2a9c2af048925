import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { comeIn } from "@/lib/registry/accounts/come-in";
import type { CookiesToSet } from "@/lib/registry/accounts/cookies-to-set";
import { invite } from "@/lib/registry/accounts/invite";
import { type SessionMember, sessionMember } from "@/lib/registry/accounts/session-member";
import { setOwner } from "@/lib/registry/accounts/set-owner";
import { signIn } from "@/lib/registry/accounts/sign-in";
import type { Site } from "@/lib/registry/accounts/site";
import { granted } from "@/tests/setup/registry";

export const owner = ownerHere();
export const site: Site = { origin: "https://patch.example:4707", from: "192.0.2.7" };
export const words = "blue kettle under nine stones";
export const otherWords = "a cart of wet slates";

/** The headers of a browser that keeps what it was given. */
export function browser(...given: readonly CookiesToSet[]): Headers {
  const kept = new Map(given.flatMap((each) => each.cookies.map(({ name, value }) => [name, value] as const)));
  const cookie = [...kept].map(([name, value]) => `${name}=${encodeURIComponent(value)}`).join("; ");
  return new Headers({ cookie, "user-agent": "a browser of the tests" });
}

export async function withOwner(db: Database, signInName = "odalind"): Promise<void> {
  granted(await setOwner(db, { signInName, passphrase: words }));
}

/** Somebody comes in by an invitation; answers the browser's headers and who they are. */
export async function withMember(
  db: Database,
  signInName: string,
  membership: Record<string, string> = { role: "reader" },
): Promise<{ headers: Headers; member: SessionMember }> {
  const { code } = granted(await invite(db, owner, membership)).value;
  const form = { name: `Person ${signInName}`, signInName, passphrase: words, again: words };
  const headers = browser(granted(await comeIn(db, site, new Headers(), code, form)));
  return { headers, member: await mustBeIn(db, headers) };
}

export async function mustBeIn(db: Database, headers: Headers): Promise<SessionMember> {
  const member = await sessionMember(db, site, headers);
  if (!member) throw new Error("nobody is signed in");
  return member;
}

export async function signedInAs(db: Database, signInName: string, passphrase = words): Promise<Headers> {
  return browser(granted(await signIn(db, site, new Headers(), { signInName, passphrase })));
}

/** The code of the first refusal; "" where it was accepted. */
export function refusedAs(outcome: { ok: true } | { ok: false; refusals: readonly { code: string }[] }): string {
  return outcome.ok ? "" : (outcome.refusals[0]?.code ?? "no code");
}
