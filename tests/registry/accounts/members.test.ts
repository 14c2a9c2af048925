import { mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { changeMember } from "@/lib/registry/accounts/change-member";
import { endMember } from "@/lib/registry/accounts/end-member";
import { letInAgain } from "@/lib/registry/accounts/let-in-again";
import { listMembers } from "@/lib/registry/accounts/list-members";
import { secretOf } from "@/lib/registry/accounts/secret";
import { sessionMember } from "@/lib/registry/accounts/session-member";
import { signIn } from "@/lib/registry/accounts/sign-in";
import { onEveryEngine } from "@/tests/setup/engines";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, refusedAs, signedInAs, site, withMember, withOwner, words } from "./with-accounts";

onEveryEngine("a member", (fresh) => {
  it("is out at once when the way in is ended, and in again when it is opened", async () => {
    const db = await fresh();
    await withOwner(db);
    const { headers, member } = await withMember(db, "aldis");
    const id = member.actor.memberId ?? "";
    expect(refusedAs(await endMember(db, member.actor, id))).toBe("not-allowed");
    granted(await endMember(db, owner, id));
    expect(await sessionMember(db, site, headers)).toBeNull();
    expect(await db.read.session.count()).toBe(0);
    const knock = { signInName: "aldis", passphrase: words };
    expect(refusedAs(await signIn(db, site, new Headers(), knock))).toBe("member-ended");
    expect(await db.read.session.count()).toBe(0);
    const listed = granted(await listMembers(db, owner));
    expect(listed.members.map((each) => [each.signInName, each.endedAt === null])).toEqual([
      ["odalind", true],
      ["aldis", false],
    ]);
    granted(await letInAgain(db, owner, id));
    await signedInAs(db, "aldis");
    expect(refusedAs(await listMembers(db, member.actor))).toBe("not-allowed");
  });

  it("who is the last owner stays owner, until there is another", async () => {
    const db = await fresh();
    await withOwner(db);
    const [first] = granted(await listMembers(db, owner)).members;
    const { member } = await withMember(db, "aldis");
    const [last, second] = [first?.id ?? "", member.actor.memberId ?? ""];
    expect(refusedAs(await endMember(db, owner, last))).toBe("last-owner");
    expect(refusedAs(await changeMember(db, owner, last, { role: "reader", note: "" }))).toBe("last-owner");
    granted(await changeMember(db, owner, second, { role: "owner", note: "" }));
    granted(await changeMember(db, owner, last, { role: "reader", note: "looks on" }));
    expect(refusedAs(await endMember(db, owner, second))).toBe("last-owner");
    granted(await endMember(db, owner, last));
    const roles = granted(await listMembers(db, owner)).members.map((each) => [each.role, each.note]);
    expect(roles).toEqual([
      ["owner", null],
      ["reader", "looks on"],
    ]);
  });
});

describe("what is secret", () => {
  it("is in no file of a folder that is taken out", async () => {
    const db = await emptyRegistry();
    await withOwner(db);
    const { member } = await withMember(db, "aldis");
    const account = await db.read.account.findFirstOrThrow({ where: { userId: member.userId } });
    const session = await db.read.session.findFirstOrThrow({ where: { userId: member.userId } });
    const invitation = await db.read.invitation.findFirstOrThrow();
    const files = [...(await exportFolder(db)).values()].map((bytes) => Buffer.from(bytes).toString("utf8")).join("\n");
    expect(files.length).toBeGreaterThan(100);
    for (const secret of [account.password ?? "", session.token, invitation.codeHash, member.userId])
      expect(files).not.toContain(secret);
  });

  it("lies in the data folder with rights for its owner alone", () => {
    const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-secret-"));
    mkdirSync(path.join(folder, "sharing"), { mode: 0o755 });
    const secret = secretOf(folder);
    const place = path.join(folder, "sharing");
    expect(statSync(place).mode & 0o777).toBe(0o700);
    expect(readdirSync(place)).toEqual(["secret"]);
    expect(statSync(path.join(place, "secret")).mode & 0o777).toBe(0o600);
    expect(readFileSync(path.join(place, "secret"), "utf8")).toBe(secret);
    expect(secret).toMatch(/^[\w-]{64}$/);
  });
});
