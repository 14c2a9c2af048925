import { expect, it } from "vitest";
import { comeIn } from "@/lib/registry/accounts/come-in";
import { giveNewWayIn } from "@/lib/registry/accounts/give-new-way-in";
import { invite } from "@/lib/registry/accounts/invite";
import { showInvitation } from "@/lib/registry/accounts/open-invitation";
import { sessionMember } from "@/lib/registry/accounts/session-member";
import { setPassphrase } from "@/lib/registry/accounts/set-passphrase";
import { signIn } from "@/lib/registry/accounts/sign-in";
import { withdrawInvitation } from "@/lib/registry/accounts/withdraw-invitation";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { withSteward } from "../varieties/with-variety";
import { browser, mustBeIn, otherWords, owner, refusedAs, site, withMember, words } from "./with-accounts";

const day = 86_400_000;
const form = { name: "Perrin Vale", signInName: "perrin", passphrase: words, again: words };

onEveryEngine("an invitation", (fresh) => {
  it("makes one account, once, with its role and steward, and no secret in the history", async () => {
    const db = await fresh();
    const stewardId = await withSteward(db);
    const made = granted(await invite(db, owner, { role: "steward", stewardId, words: "Perrin" }));
    const { code } = made.value;
    const hyphens = (code.match(/.{5}/g) ?? []).join("-").toLowerCase();
    const shown = granted(await showInvitation(db, site, hyphens));
    expect(shown).toMatchObject({ role: "steward", steward: "Aldis Thornwick", signInName: null });
    const again = await comeIn(db, site, new Headers(), code, { ...form, again: otherWords });
    expect(refusedAs(again)).toBe("passphrase-differs");
    const { actor } = await mustBeIn(db, browser(granted(await comeIn(db, site, new Headers(), code, form))));
    expect(actor).toMatchObject({ name: "Perrin Vale", role: "steward", stewardId });
    expect(refusedAs(await comeIn(db, site, new Headers(), code, { ...form, signInName: "second" }))).toBe("used");
    expect(await db.read.user.count()).toBe(1);
    const invitation = await db.read.invitation.findFirstOrThrow();
    const account = await db.read.account.findFirstOrThrow();
    const told = JSON.stringify([await db.read.change.findMany(), await db.read.changeSet.findMany()]);
    for (const secret of [code, invitation.codeHash, account.password ?? "", words]) expect(told).not.toContain(secret);
    expect(told).toContain("Perrin Vale came in as steward");
    expect(refusedAs(await undoChangeSet(db, owner, made.changeSetId ?? ""))).toBe("not-undone-here");
  });

  it("opens nothing once it has run out or was withdrawn, or under another code", async () => {
    const db = await fresh();
    const now = new Date("2026-03-01T12:00:00Z");
    const first = granted(await invite(db, owner, { role: "reader" }, now)).value;
    const later = new Date(now.getTime() + 7 * day);
    expect(refusedAs(await comeIn(db, site, new Headers(), first.code, form, later))).toBe("run-out");
    granted(await withdrawInvitation(db, owner, first.invitationId, now));
    expect(refusedAs(await comeIn(db, site, new Headers(), first.code, form, now))).toBe("withdrawn");
    expect(refusedAs(await showInvitation(db, site, "2".repeat(20), now))).toBe("unknown");
    expect(await db.read.user.count()).toBe(0);
    expect(refusedAs(await withdrawInvitation(db, owner, "none"))).toBe("unknown");
  });

  it("asks for what its role needs, and comes from the owner alone", async () => {
    const db = await fresh();
    expect(refusedAs(await invite(db, owner, { role: "steward" }))).toBe("steward-missing");
    expect(refusedAs(await invite(db, owner, { role: "helper" }))).toBe("grow-outs-missing");
    const nowhere = "01890000-0000-7000-8000-000000000000";
    expect(refusedAs(await invite(db, owner, { role: "helper", growOuts: nowhere }))).toBe("unknown-grow-out");
    expect(refusedAs(await invite(db, owner, { role: "reader", stewardId: nowhere }))).toBe("unknown-steward");
    expect(refusedAs(await invite(db, owner, { role: "public" }))).toBe("not-one-of");
    expect(refusedAs(await invite(db, { ...owner, role: "librarian" }, { role: "reader" }))).toBe("not-allowed");
    expect(await db.read.invitation.count()).toBe(0);
  });

  it("is refused under a name for signing in that somebody has, and stays open", async () => {
    const db = await fresh();
    await withMember(db, "perrin");
    const { code } = granted(await invite(db, owner, { role: "reader" })).value;
    expect(refusedAs(await comeIn(db, site, new Headers(), code, { ...form, signInName: "PERRIN" }))).toBe(
      "name-taken",
    );
    granted(await showInvitation(db, site, code));
  });

  it("gives a new passphrase without mail: the old one and every session end, an earlier way in too", async () => {
    const db = await fresh();
    const { headers, member } = await withMember(db, "perrin");
    const memberId = member.actor.memberId ?? "";
    const first = granted(await giveNewWayIn(db, owner, memberId)).value;
    const second = granted(await giveNewWayIn(db, owner, memberId)).value;
    const chosen = { passphrase: otherWords, again: otherWords };
    expect(refusedAs(await setPassphrase(db, site, new Headers(), first.code, chosen))).toBe("withdrawn");
    expect(refusedAs(await comeIn(db, site, new Headers(), second.code, { ...form, signInName: "new" }))).toBe(
      "not-for-new",
    );
    expect((await showInvitation(db, site, second.code)).ok).toBe(true);
    const kept = granted(await setPassphrase(db, site, new Headers(), second.code, chosen));
    expect((await mustBeIn(db, browser(kept))).signInName).toBe("perrin");
    expect(await sessionMember(db, site, headers)).toBeNull();
    const old = { signInName: "perrin", passphrase: words };
    expect(refusedAs(await signIn(db, site, new Headers(), old))).toBe("not-signed-in");
    expect(refusedAs(await setPassphrase(db, site, new Headers(), second.code, chosen))).toBe("used");
    expect(refusedAs(await giveNewWayIn(db, { ...owner, role: "steward" }, memberId))).toBe("not-allowed");
  });
});
