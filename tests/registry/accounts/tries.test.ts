import { describe, expect, it } from "vitest";
import { signIn } from "@/lib/registry/accounts/sign-in";
import { forgetTries, tryOnce } from "@/lib/registry/accounts/tries";
import { onEveryEngine } from "@/tests/setup/engines";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { refusedAs, site, withOwner, words } from "./with-accounts";

const start = new Date("2026-03-01T12:00:00Z");
const after = (minutes: number) => new Date(start.getTime() + minutes * 60_000);
const elsewhere = { ...site, from: "192.0.2.99" };

onEveryEngine("tries to sign in", (fresh) => {
  it("are five free from a device for a name, then wait a minute, then twice as long each time", async () => {
    const db = await fresh();
    for (let n = 0; n < 5; n += 1) granted(await tryOnce(db, site, "aldis", start));
    const sixth = await tryOnce(db, site, "aldis", start);
    expect(sixth.ok ? "" : sixth.refusals[0]?.sentence).toBe("There were too many wrong tries; try again in 1 minute");
    granted(await tryOnce(db, elsewhere, "aldis", start));
    granted(await tryOnce(db, site, "perrin", start));
    granted(await tryOnce(db, site, "aldis", after(1)));
    expect(refusedAs(await tryOnce(db, site, "aldis", after(2)))).toBe("too-many-tries");
    granted(await tryOnce(db, site, "aldis", after(3)));
    await forgetTries(db, site, "aldis");
    for (let n = 0; n < 5; n += 1) granted(await tryOnce(db, site, "aldis", after(3)));
  });

  it("many at once count as many", async () => {
    const db = await fresh();
    const tries = await Promise.all(Array.from({ length: 12 }, () => tryOnce(db, site, "aldis", start)));
    expect(tries.filter((each) => each.ok)).toHaveLength(5);
  });

  it("count for a name from all devices, for a device over all names, and are forgotten after an hour", async () => {
    const db = await fresh();
    for (let n = 0; n < 30; n += 1) granted(await tryOnce(db, { ...site, from: `192.0.2.${n}` }, "aldis", start));
    expect(refusedAs(await tryOnce(db, elsewhere, "aldis", start))).toBe("too-many-tries");
    for (let n = 0; n < 30; n += 1) granted(await tryOnce(db, elsewhere, `name ${n}`, start));
    expect(refusedAs(await tryOnce(db, elsewhere, null, start))).toBe("too-many-tries");
    granted(await tryOnce(db, elsewhere, "aldis", after(61)));
    const stored = await db.read.rateLimit.findMany();
    expect(stored.length).toBe(3);
    expect(JSON.stringify(stored, (_key, value) => String(value))).not.toMatch(/aldis|192\.0/);
  });
});

describe("a right passphrase", () => {
  it("waits too where there were too many wrong ones, known name or not", async () => {
    const db = await emptyRegistry();
    await withOwner(db);
    for (const name of ["odalind", "nobody"]) {
      for (let n = 0; n < 5; n += 1) granted(await tryOnce(db, site, name, start));
      const knock = { signInName: name, passphrase: words };
      expect(refusedAs(await signIn(db, site, new Headers(), knock, start))).toBe("too-many-tries");
    }
    granted(await signIn(db, site, new Headers(), { signInName: "odalind", passphrase: words }, after(2)));
  });
});
