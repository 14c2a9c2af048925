import type { ScryptOptions } from "node:crypto";
import { expect, it, vi } from "vitest";
import { endMember } from "@/lib/registry/accounts/end-member";
import { signIn } from "@/lib/registry/accounts/sign-in";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { otherWords, owner, refusedAs, site, withMember, withOwner, words } from "./with-accounts";

/*
 * What takes time in a sign-in is the hash, by far (64 MiB and a good part of a second); where each refusal costs the same hash, none is told
 * from another by a clock. So the hashes are counted, and no clock is asked.
 */
const worked: string[] = [];

vi.mock("node:crypto", async (original) => {
  const whole = await original<typeof import("node:crypto")>();
  const scrypt = (
    ...given: [string, Uint8Array, number, ScryptOptions, (error: Error | null, key: Buffer) => void]
  ) => {
    const [, , bytes, { N, r, p }] = given;
    worked.push(`${N} ${r} ${p} ${bytes}`);
    return whole.scrypt(...given);
  };
  return { ...whole, scrypt };
});

onEveryEngine("a refused sign-in", (fresh) => {
  it("costs one hash of the same settings, whether the name, the passphrase or the person is not right", async () => {
    const db = await fresh();
    await withOwner(db);
    const { member } = await withMember(db, "perrin");
    granted(await endMember(db, owner, member.actor.memberId ?? ""));
    const costs: Record<string, readonly string[]> = {};
    const said: Record<string, string> = {};
    for (const [name, passphrase] of [
      ["nobody", otherWords],
      ["odalind", otherWords],
      ["perrin", otherWords],
      ["perrin", words],
    ] as const) {
      worked.length = 0;
      const answer = await signIn(db, site, new Headers(), { signInName: name, passphrase });
      const key = `${name}, ${passphrase === words ? "right" : "wrong"}`;
      costs[key] = [...worked];
      said[key] = refusedAs(answer);
    }
    // RFC 7914 with N = 2^16, r = 8, p = 2 and a key of 32 bytes (see D-027)
    expect(new Set(Object.values(costs).map((cost) => cost.join("; ")))).toEqual(new Set(["65536 8 2 32"]));
    // Only who knows the passphrase is told that the way in was ended.
    expect(said).toEqual({
      "nobody, wrong": "not-signed-in",
      "odalind, wrong": "not-signed-in",
      "perrin, wrong": "not-signed-in",
      "perrin, right": "member-ended",
    });
  });
});
