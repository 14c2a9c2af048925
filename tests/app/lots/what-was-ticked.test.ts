import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { tickedOf } from "@/app/lots/_form/form-answer";
import { giveFromLot } from "@/app/lots/[id]/give/action";
import type { Database } from "@/lib/db";
import { ownRegistry } from "@/lib/registry/open-registry";
import { aLot, anEntry, aTest, aVariety } from "@/tests/registry/lots/lots-in-tests";

vi.mock("server-only", () => ({}));
vi.mock("next/headers", () => ({
  cookies: async () => ({ get: () => undefined, set: () => {}, delete: () => {} }),
  headers: async () => new Headers(),
}));
vi.mock("next/navigation", () => ({}));
vi.mock("@/app/_session/signed-in", () => ({ signedIn: async () => null, signedInOrAsked: async () => null }));

let folder = "";
let db: Database;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-ticked-"));
  vi.stubEnv("KINROW_DATA", folder);
  db = await ownRegistry();
});

afterAll(async () => {
  await db.close();
  rmSync(folder, { recursive: true, force: true });
});

test("only a box that says yes was ticked: a form sends those left open as well", () => {
  expect(tickedOf({ "told.a": "yes", "told.b": "", "told.c": "no", told: "yes", "in.a": "yes" }, "told.")).toEqual([
    "a",
  ]);
});

test("a caution that was left open was not told, and no seed leaves the jar", async () => {
  const lotId = await aLot(db, await aVariety(db), { number: "Ham 3", year: "2024", thousandSeedGrams: 500 });
  await anEntry(db, lotId, "received", 500, "2024-11-01");
  await aTest(db, lotId, "T1", "2025-11-01", 100, 95);
  const form = new FormData();
  const typed = { kind: "gift", newSteward: "", toWords: "a neighbour", amount: "5", unit: "g", on: "2025-12-01" };
  for (const [name, value] of Object.entries({ ...typed, "told.caution-crop": "", "told.local-rule": "yes" }))
    form.set(name, value);
  const start = { typed: {}, refusals: [], done: null };
  const asked = await giveFromLot(lotId, start, form);
  expect(asked.refusals.map(({ code }) => code)).toContain("not-told");
  expect(await db.read.transfer.count()).toBe(0);
  form.set("told.caution-crop", "yes");
  const done = await giveFromLot(lotId, start, form);
  expect(done.refusals.map(({ code }) => code)).not.toContain("not-told");
});
