import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { readDrying } from "@/lib/registry/drying/read-drying";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { listLots } from "@/lib/registry/lots/list-lots";
import { mergeLots, takeMergeBack } from "@/lib/registry/lots/merge-lots";
import { readLot } from "@/lib/registry/lots/read-lot";
import { readMerge } from "@/lib/registry/lots/read-merge";
import { readMerged } from "@/lib/registry/lots/read-merged";
import { find } from "@/lib/registry/search/find";
import { ledgerEntrySchema } from "@/lib/schemas/ledger/ledger-entry";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { LotListQuerySchema } from "@/lib/schemas/lots/list-query";
import { MergeLotsSchema } from "@/lib/schemas/lots/merge-lots";
import { defaultSettings } from "@/lib/schemas/settings";
import type { Outcome } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aGrowOut } from "../grow-outs/a-grow-out";
import { aLot, anEntry, aTest, aVariety } from "./lots-in-tests";

const owner = ownerHere();
const today = "2026-11-27";
const faultsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} at ${each.path.join(".")}`);
const reading = { settings: defaultSettings, today };

onEveryEngine("two records of one lot", (fresh) => {
  let db: Database;
  let varietyId: string;
  let one: string;
  let other: string;
  const merge = (lotId: string, more: Record<string, string>) =>
    mergeLots(db, owner, lotId, granted(parseForm(MergeLotsSchema, { leads: "this", why: "one jar", ...more })));
  const numbers = async () => {
    const query = LotListQuerySchema.parse({});
    return (await listLots(db, query, defaultSettings)).rows.map((row) => row.number).sort();
  };

  beforeEach(async () => {
    db = await fresh();
    varietyId = await aVariety(db);
    one = await aLot(db, varietyId, { number: "Ham 1", year: "2019", thousandSeedGrams: 500 });
    other = await aLot(db, varietyId, { number: "Hill 7", year: "2019", code: "7KQ2M9XA4" });
    await anEntry(db, one, "received", 100, "2019-10-01");
    await anEntry(db, other, "received", 60, "2019-11-01");
    await aTest(db, one, "T1", "2020-02-01", 50, 40);
    await aTest(db, other, "T2", "2022-02-01", 20, 10);
  });

  test("are read as one: ledger, tests, offspring, list, search and address; nothing is rewritten", async () => {
    const growOutId = await aGrowOut(db, {
      varietyId,
      name: "Ham 2023",
      plantsStanding: 40,
      seedParents: 40,
      seedShares: "equal",
    });
    await db.write.growOutParent.create({ data: { id: uuidv7(), growOutId, lotId: other, share: 1 } });
    const child = await aLot(db, varietyId, { number: "Ham 2", kind: "harvest", growOutId });
    expect(await numbers()).toEqual(["Ham 1", "Ham 2", "Hill 7"]);
    const rows = await db.read.ledgerEntry.findMany({ orderBy: { id: "asc" } });
    const day = { on: "2020-01-05", onFirst: "2020-01-05", onLast: "2020-01-05" };
    await db.write.drying.create({ data: { id: uuidv7(), lotId: other, ...day } });
    granted(await merge(one, { other: "hill 7" }));

    expect((await readDrying(db, one)).dryings).toHaveLength(1);
    expect(await db.read.ledgerEntry.findMany({ orderBy: { id: "asc" } })).toEqual(rows);
    expect(await numbers()).toEqual(["Ham 1", "Ham 2"]);
    const figures = await figuresOfAll(db);
    expect(figures.get(one)).toMatchObject({ gramsOnHand: 160, lastTest: { test: "T2", sown: 20 } });
    expect(figures.has(other)).toBe(false);
    expect(figures.get(child)?.founders).toEqual(["Ham 1"]);

    // by either address the same lot
    const read = await readLot(db, other, reading);
    expect([read?.lot.id, read?.entries.length, read?.tests.length]).toEqual([one, 2, 2]);
    expect(read?.entries.map(({ writtenUnder }) => writtenUnder)).toEqual([null, "Hill 7"]);
    expect(read?.kin.map(({ kinship, number }) => [kinship, number])).toEqual([["grown from it", "Ham 2"]]);
    expect(read?.otherRecords.map(({ number }) => number)).toEqual(["Hill 7"]);
    for (const written of ["Hill 7", "7KQ2M9XA4"]) {
      const found = (await find(db, written)).found.filter(({ kind }) => kind === "lot");
      expect(found.map(({ title, page }) => [title, page.id])).toEqual([["Ham 1", one]]);
    }
  });

  test("seed of both jars may leave under the leading number", async () => {
    granted(await merge(one, { other: "Hill 7" }));
    const given = { kind: "given", on: "2024-01-05", amount: "150", unit: "g", other: "a neighbour" };
    const entry = granted(parseForm(ledgerEntrySchema("north"), given));
    granted(await recordLedgerEntry(db, owner, one, entry, today));
    expect((await figuresOfAll(db)).get(one)?.gramsOnHand).toBe(10);
    const more = await recordLedgerEntry(db, owner, one, { ...entry, amount: 20 }, today);
    expect(more.ok).toBe(false);

    const merged = await readMerged(db, other);
    expect(merged?.grams).toEqual({ record: 60, leading: -50 });
    expect(merged?.since.map(({ title }) => title)).toEqual(["Lot Ham 1: given 150 g, 2024-01-05"]);
    expect(merged?.said?.reason).toBe("one jar");
  });

  test("taken back, each stands as it was", async () => {
    const before = [...(await figuresOfAll(db))];
    granted(await merge(one, { other: "Hill 7" }));
    granted(await takeMergeBack(db, owner, other, "two jars after all"));
    expect([...(await figuresOfAll(db))]).toEqual(before);
    expect(await numbers()).toEqual(["Ham 1", "Hill 7"]);
    expect(faultsOf(await takeMergeBack(db, owner, other, "again"))).toEqual(["not-merged at lot"]);
  });

  test("go out in a folder and come back as one, as the same bytes", async () => {
    granted(await merge(one, { other: "Hill 7" }));
    const out = await exportFolder(db);
    const again = await fresh();
    granted(await importFolder(again, owner, out));
    const lots = await again.read.lot.findMany({ include: { sameAs: true } });
    expect(lots.map(({ number, sameAs }) => [number, sameAs?.number ?? null]).sort()).toEqual([
      ["Ham 1", null],
      ["Hill 7", "Ham 1"],
    ]);
    const texts = (files: ReadonlyMap<string, Uint8Array>) => [...files].map(([name, bytes]) => [name, String(bytes)]);
    expect(texts(await exportFolder(again))).toEqual(texts(out));
    expect(granted(await importFolder(again, owner, out)).value.nothingNew).toBe(true);
  });

  test("show beforehand what comes together and what contradicts", async () => {
    await anEntry(db, other, "received", 100, "2019-10");
    const read = await readMerge(db, one, "7KQ-2M9-XA4");
    expect(read).toMatchObject({ grams: 260, gramsIfOther: 260, parentageDiffers: false, faults: [] });
    expect([read?.one.entries, read?.other.entries, read?.other.tests]).toEqual([1, 2, 1]);
    expect(read?.perhapsTwice).toEqual([{ on: "2019-10-01", amount: 100, unit: "g" }]);
    expect(read?.differences).toEqual([{ what: "thousand-seed weight, g", one: "500", other: null }]);
    expect(await readMerge(db, one, "Ham 77")).toBeNull();
  });

  test("are refused where they cannot be one", async () => {
    const pea = await aVariety(db, "Mere Pea", "pea");
    const long = await aVariety(db, "Hamble Short");
    await aLot(db, pea, { number: "Pea 1" });
    await aLot(db, long, { number: "Short 1" });
    const part = await aLot(db, varietyId, { number: "Ham 1 b", kind: "split" });
    await db.write.lotParent.create({ data: { id: uuidv7(), lotId: part, parentLotId: one, share: 1 } });
    expect(faultsOf(await merge(one, { other: "Ham 77" }))).toEqual(["unknown-lot at other"]);
    expect(faultsOf(await merge(one, { other: "Ham 1" }))).toEqual(["of-itself at other"]);
    expect(faultsOf(await merge(one, { other: "Pea 1" }))).toEqual(["other-crop at other"]);
    expect(faultsOf(await merge(one, { other: "Short 1" }))).toEqual(["other-variety at other"]);
    expect(faultsOf(await merge(one, { other: "Ham 1 b" }))).toEqual(["ancestor at other"]);
    expect(faultsOf(parseForm(MergeLotsSchema, { other: "x" }))).toEqual(["missing at leads", "missing at why"]);

    // different parents: a person says which hold
    const growOutId = await aGrowOut(db, { varietyId, name: "Ham 2018" });
    await aLot(db, varietyId, { number: "Ham 5", kind: "harvest", growOutId });
    expect(faultsOf(await merge(one, { other: "Ham 5" }))).toEqual(["parentage-differs at parentage"]);
    granted(await merge(one, { other: "Ham 5", parentage: "yes", leads: "other" }));
    expect((await db.read.lot.findUniqueOrThrow({ where: { id: one } })).sameAsId).not.toBeNull();
    expect(faultsOf(await merge(other, { other: "Ham 1" }))).toEqual(["stands-for-another at other"]);
    const lead = await db.read.lot.findFirstOrThrow({ where: { number: "Ham 5" } });
    expect(faultsOf(await merge(other, { other: "Ham 5", parentage: "yes" }))).toEqual(["leads-already at other"]);
    expect(faultsOf(await merge(lead.id, { other: "Ham 1" }))).toEqual(["same-already at other"]);
  });
});
