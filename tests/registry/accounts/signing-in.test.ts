import { expect, it } from "vitest";
import { changePassphrase } from "@/lib/registry/accounts/change-passphrase";
import { endSession } from "@/lib/registry/accounts/end-session";
import { listSessions } from "@/lib/registry/accounts/list-sessions";
import { sessionMember } from "@/lib/registry/accounts/session-member";
import { hasOwner, setOwner } from "@/lib/registry/accounts/set-owner";
import { signIn } from "@/lib/registry/accounts/sign-in";
import { signOut } from "@/lib/registry/accounts/sign-out";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import {
  browser,
  mustBeIn,
  otherWords,
  refusedAs,
  signedInAs,
  site,
  withMember,
  withOwner,
  words,
} from "./with-accounts";

onEveryEngine("signing in", (fresh) => {
  it("knows the owner by name in any letter case, and nobody before there is one", async () => {
    const db = await fresh();
    expect(await hasOwner(db)).toBe(false);
    expect(refusedAs(await setOwner(db, { signInName: "odalind", passphrase: "too short" }))).toBe("passphrase-short");
    expect(refusedAs(await setOwner(db, { signInName: "odalind", passphrase: "odalind odalind" }))).toBe(
      "passphrase-name",
    );
    await withOwner(db);
    expect(await hasOwner(db)).toBe(true);
    const { actor } = await mustBeIn(db, await signedInAs(db, " Odalind"));
    expect(actor).toMatchObject({ name: "odalind", role: "owner" });
    expect(actor.memberId).not.toBeNull();
  });

  it("tells one sentence for an unknown name and a wrong passphrase, and repeats neither", async () => {
    const db = await fresh();
    await withOwner(db);
    const [unknown, wrong] = [
      await signIn(db, site, new Headers(), { signInName: "nobody", passphrase: otherWords }),
      await signIn(db, site, new Headers(), { signInName: "odalind", passphrase: otherWords }),
    ];
    expect(unknown).toEqual(wrong);
    expect(refusedAs(unknown)).toBe("not-signed-in");
    expect(JSON.stringify(unknown)).not.toContain(otherWords);
  });

  it("lets no made-up, altered or signed-out cookie in", async () => {
    const db = await fresh();
    await withOwner(db);
    const headers = await signedInAs(db, "odalind");
    const cookie = headers.get("cookie") ?? "";
    const altered = cookie.replace(
      /(session_token=.{4})(.)/,
      (_all, head, letter) => head + (letter === "x" ? "y" : "x"),
    );
    expect(altered).not.toBe(cookie);
    expect(await sessionMember(db, site, new Headers({ cookie: altered }))).toBeNull();
    expect(await sessionMember(db, site, new Headers({ cookie: "__Host-kinrow.session_token=x.y" }))).toBeNull();
    const left = await signOut(db, site, headers);
    expect(left.cookies.find((each) => each.name.endsWith("session_token"))?.options.maxAge).toBe(0);
    expect(await sessionMember(db, site, headers)).toBeNull();
  });

  it("ends a session that was ended elsewhere at its next request; another's only by the owner", async () => {
    const db = await fresh();
    await withOwner(db);
    const { headers, member } = await withMember(db, "aldis");
    const second = await signedInAs(db, "aldis");
    const other = await withMember(db, "perrin");
    const devices = await listSessions(db, member.userId);
    expect(devices).toHaveLength(2);
    expect(refusedAs(await endSession(db, other.member.actor, member.sessionId))).toBe("not-allowed");
    granted(await endSession(db, member.actor, (await mustBeIn(db, second)).sessionId));
    expect(await sessionMember(db, site, second)).toBeNull();
    const owner = await mustBeIn(db, await signedInAs(db, "odalind"));
    granted(await endSession(db, owner.actor, member.sessionId));
    expect(await sessionMember(db, site, headers)).toBeNull();
    expect(refusedAs(await endSession(db, owner.actor, member.sessionId))).toBe("unknown");
  });

  it("changes the own passphrase by the old one, and signs every other device out", async () => {
    const db = await fresh();
    await withOwner(db);
    const { headers, member } = await withMember(db, "aldis");
    const elsewhere = await signedInAs(db, "aldis");
    const wrong = { now: otherWords, passphrase: otherWords, again: otherWords };
    expect(refusedAs(await changePassphrase(db, site, headers, member, wrong))).toBe("passphrase-wrong");
    const differs = { now: words, passphrase: otherWords, again: words };
    expect(refusedAs(await changePassphrase(db, site, headers, member, differs))).toBe("passphrase-differs");
    const right = { now: words, passphrase: otherWords, again: otherWords };
    const kept = granted(await changePassphrase(db, site, headers, member, right));
    expect(await sessionMember(db, site, elsewhere)).toBeNull();
    expect((await sessionMember(db, site, browser(kept)))?.signInName).toBe("aldis");
    expect(refusedAs(await signIn(db, site, new Headers(), { signInName: "aldis", passphrase: words }))).toBe(
      "not-signed-in",
    );
    await signedInAs(db, "aldis", otherWords);
  });

  it("keeps a passphrase as a salted scrypt hash with its settings", async () => {
    const db = await fresh();
    await withOwner(db);
    await withMember(db, "aldis");
    const hashes = (await db.read.account.findMany()).map((each) => each.password ?? "");
    expect(new Set(hashes).size).toBe(2);
    // N = 2^16, r = 8, p = 2: OWASP's Password Storage Cheat Sheet
    for (const hash of hashes) expect(hash).toMatch(/^scrypt:65536:8:2:[\w-]{22}:[\w-]{43}$/);
  });
});
