import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { readDrying } from "@/lib/registry/drying/read-drying";
import { endDrying, recordDrying } from "@/lib/registry/drying/record-drying";
import { recordMoisture } from "@/lib/registry/drying/record-moisture";
import { balanceOf } from "@/lib/registry/ledger/balance";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { aLot, anEntry, aVariety } from "../lots/lots-in-tests";

const owner = ownerHere();
const day = (text: string) => granted(parseDate(text));
const codes = (
  outcome: { ok: true } | { ok: false; refusals: readonly { code: string; path: readonly unknown[] }[] },
) => (outcome.ok ? [] : outcome.refusals.map(({ code, path }) => `${code} ${path.join(".")}`));

const lay = (db: Database, lotId: string, startGrams: number, startPercent: number, targetPercent: number) =>
  recordDrying(db, owner, lotId, { on: day("2026-10-01"), startGrams, startPercent, targetPercent, note: null });

const end = (db: Database, dryingId: string, endGrams: number, on = "2026-10-12", wholeLot = false) =>
  endDrying(db, owner, dryingId, { on: day(on), endGrams, wholeLot, note: null });

onEveryEngine("drying", (fresh) => {
  it("says what the seed will weigh, takes its weight, and the ledger follows where it is the whole lot", async () => {
    const db = await fresh();
    const lotId = await aLot(db, await aVariety(db), { number: "Ham 1" });
    await anEntry(db, lotId, "harvested", 200, "2026-09-20");
    const begun = granted(await lay(db, lotId, 200, 12, 6)).value;
    // 200 · 88 / 94
    expect(begun.targetGrams).toBeCloseTo(187.234, 3);
    const done = granted(await end(db, begun.dryingId, 187, "2026-10-12", true));
    expect(done.value).toEqual({ lotId, warnings: [] });
    const { dryings } = await readDrying(db, lotId);
    expect(dryings).toMatchObject([{ startGrams: 200, endGrams: 187, days: 11 }]);
    const ledger = await db.read.ledgerEntry.findMany({ where: { lotId } });
    expect(balanceOf(ledger, null).grams).toBe(187);
    granted(await undoChangeSet(db, owner, done.changeSetId as string));
    expect((await readDrying(db, lotId)).dryings).toMatchObject([{ endGrams: null, days: null }]);
  });

  it("warns where it is not dry yet, or far lighter than it can be", async () => {
    const db = await fresh();
    const lotId = await aLot(db, await aVariety(db), { number: "Ham 1" });
    const wet = granted(await lay(db, lotId, 200, 12, 6)).value;
    expect(granted(await end(db, wet.dryingId, 195)).value.warnings.map(({ code }) => code)).toEqual(["not-dry-yet"]);
    const spilt = granted(await lay(db, lotId, 200, 12, 6)).value;
    const warnings = granted(await end(db, spilt.dryingId, 150, "2026-10")).value.warnings;
    expect(warnings.map(({ code }) => code)).toEqual(["much-drier"]);
    expect((await readDrying(db, lotId)).dryings.map(({ days }) => days)).toEqual([11, null]);
  });

  it("is refused where it cannot be", async () => {
    const db = await fresh();
    const lotId = await aLot(db, await aVariety(db), { number: "Ham 1" });
    expect(codes(await lay(db, lotId, 200, 12, 14))).toEqual(["not-drier targetPercent"]);
    expect(codes(await lay(db, lotId, 200, 100, 8))).toEqual(["out-of-range startPercent"]);
    expect(codes(await lay(db, "none", 200, 12, 8))).toEqual(["unknown lot"]);
    const { dryingId } = granted(await lay(db, lotId, 200, 12, 8)).value;
    expect(codes(await end(db, dryingId, 210))).toEqual(["heavier endGrams"]);
    expect(codes(await end(db, dryingId, 190, "2026-09-01"))).toEqual(["before-it-began on"]);
    granted(await end(db, dryingId, 191));
    expect(codes(await end(db, dryingId, 190))).toEqual(["over-already endGrams"]);
    expect(codes(await end(db, "none", 190))).toEqual(["unknown drying"]);
    await db.write.crop.update({ where: { key: "bean-broad" }, data: { dryStorage: false } });
    expect(codes(await lay(db, lotId, 200, 12, 8))).toEqual(["not-to-be-dried lot"]);
  });

  it("is read with a meter or a card in the jar, and a reading says something", async () => {
    const db = await fresh();
    const lotId = await aLot(db, await aVariety(db), { number: "Ham 1" });
    const nothing = { percent: null, relativeHumidityPercent: null, temperatureC: null, method: null, note: null };
    const read = (more: object) => recordMoisture(db, owner, lotId, { on: day("2026-10-03"), ...nothing, ...more });
    expect(codes(await read({ method: "by hand" }))).toEqual(["missing percent"]);
    granted(await read({ percent: 11.5, method: "meter" }));
    granted(await read({ relativeHumidityPercent: 45, temperatureC: 18 }));
    expect((await readDrying(db, lotId)).readings).toMatchObject([
      { percent: 11.5, method: "meter" },
      { percent: null, relativeHumidityPercent: 45, temperatureC: 18 },
    ]);
    const other = await recordMoisture(db, owner, "none", { on: day("2026"), ...nothing, percent: 9 });
    expect(codes(other)).toEqual(["unknown lot"]);
  });
});
