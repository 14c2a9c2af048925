import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { uuidv7 } from "uuidv7";
import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { perform } from "@/lib/registry/change-set/perform";
import type { LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import { momentOf } from "@/lib/registry/lineage/lineage-lots";
import { readLineage } from "@/lib/registry/lineage/read-lineage";
import { sharedByLots } from "@/lib/registry/lineage/shared-by-lots";
import { accepted } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { emptyRegistry, granted } from "../../setup/registry";

const encoder = new TextEncoder();
const csv = (files: Readonly<Record<string, string>>) =>
  new Map(Object.entries(files).map(([name, text]) => [name, encoder.encode(text)]));

const folder = {
  "stewards.csv": "steward,place\nAda Brindle,Upper Row\nBo Cray,Lower Row\n",
  "varieties.csv": "variety,crop\nMere Flint,maize-field\nStray Dent,maize-field\nApart,maize-field\n",
  "lots.csv": [
    "lot,variety,holder,year,kind,from",
    "M 1,Mere Flint,Ada Brindle,1985/1991,founder,",
    "M 2,Mere Flint,Ada Brindle,1994-10-02,harvest,First",
    "M 3,Mere Flint,Bo Cray,1994-10-02,split,M 2",
    "M 4,Mere Flint,Bo Cray,1999,harvest,Second",
    "S 1,Stray Dent,Bo Cray,1990,founder,",
    "S 2,Stray Dent,Bo Cray,2001,harvest,Crossed",
    "A 1,Apart,Bo Cray,2001,founder,",
  ].join("\n"),
  "grow_outs.csv": [
    "grow_out,variety,steward,sown,parents,plants_standing,seed_parents,seed_shares,foreign_pollen,outcome",
    "First,Mere Flint,Ada Brindle,1994-05,M 1,80,40,equal,0.02,",
    "Lost,Mere Flint,Ada Brindle,1997-05-04,M 2,,,,,drowned",
    "Second,Mere Flint,Bo Cray,1999-05,M 3,20,10,equal,0,",
    "Crossed,Stray Dent,Bo Cray,2001-05,S 1:0.5;M 4:0.5,30,30,equal,,",
  ].join("\n"),
  "ledger.csv": [
    "lot,date,kind,grams,other",
    "M 2,1994-10-02,harvested,900,",
    "M 2,1996-11-09,given,900,Bo Cray",
    "M 3,1996-11-09,received,900,M 2",
    "M 4,1999-10-01,harvested,400,",
  ].join("\n"),
};

async function told(db: Database) {
  granted(await importFolder(db, ownerHere(), csv(folder)));
  const ids = new Map((await db.read.variety.findMany()).map(({ name, id }) => [name, id]));
  const read = async (name: string) => {
    const found = await readLineage(db, ids.get(name) ?? "");
    if (!found) throw new Error(`${name} is not there`);
    return found;
  };
  return { read, ids };
}

function named(lots: readonly LotOfLineage[], number: string): LotOfLineage {
  const lot = lots.find((each) => each.number === number);
  if (!lot) throw new Error(`${number} is not in the lineage`);
  return lot;
}

onEveryEngine("the lineage of a variety", (fresh) => {
  it("holds its lots, what was grown from them in other varieties, and what failed; nothing of a variety apart", async () => {
    const { read } = await told(await fresh());
    const { lots, stewards, variety } = await read("Mere Flint");
    expect(lots.map(({ number, kind }) => [number, kind])).toEqual([
      ["Lost", "failed"],
      ["M 1", "founder"],
      ["M 2", "harvest"],
      ["M 3", "split"],
      ["M 4", "harvest"],
      ["S 1", "founder"],
      ["S 2", "harvest"],
    ]);
    expect(variety).toMatchObject({ name: "Mere Flint", cropKey: "maize-field", clonal: false });
    expect(stewards.map(({ name, place }) => [name, place]).sort()).toEqual([
      ["Ada Brindle", "Upper Row"],
      ["Bo Cray", "Lower Row"],
    ]);
    const names = new Map(lots.map(({ id, number }) => [id, number]));
    const from = (number: string) => named(lots, number).parents.map(({ id, share }) => [names.get(id), share]);
    expect(from("M 4")).toEqual([["M 3", 1]]);
    expect(from("S 2")).toEqual([
      ["S 1", 0.5],
      ["M 4", 0.5],
    ]);
    expect(from("Lost")).toEqual([["M 2", 1]]);
  });

  it("holds what stands in the field, and the sides of a cross; nothing that is over without a word", async () => {
    const db = await fresh();
    const { read, ids } = await told(db);
    const before = await read("Mere Flint");
    const sown = named(before.lots, "M 4").id;
    const other = named(before.lots, "S 1").id;
    const row = {
      varietyId: ids.get("Mere Flint") ?? "",
      sown: "2026-05",
      sownFirst: "2026-05-01",
      sownLast: "2026-05-31",
    };
    const stands = uuidv7();
    granted(
      await perform(db, ownerHere(), { action: "record", title: "Sown" }, async (change) => {
        await change.create("GrowOut", { id: stands, name: "Stands", nameKey: "stands", ...row });
        await change.create("GrowOut", { id: uuidv7(), name: "Over", nameKey: "over", ...row, endedOn: "2026-09-01" });
        for (const [lotId, role] of [
          [sown, "seed parent"],
          [other, "pollen parent"],
        ] as const)
          await change.create("GrowOutParent", { id: uuidv7(), growOutId: stands, lotId, share: 0.5, role });
        change.touch(row.varietyId);
        return accepted(null);
      }),
    );
    const { lots } = await read("Mere Flint");
    expect(named(lots, "Stands")).toMatchObject({ kind: "growing", at: { first: 2026 + 4 / 12 } });
    expect(named(lots, "Stands").parents).toEqual([
      { id: sown, share: 0.5, role: "seed parent" },
      { id: other, share: 0.5, role: "pollen parent" },
    ]);
    expect(lots.some(({ number }) => number === "Over")).toBe(false);
  });

  it("places a split where it was parted, a harvest and a founder at the harvest, with its width", async () => {
    const { read } = await told(await fresh());
    const { lots } = await read("Mere Flint");
    // 9 November: ten months and 8 days of 372 to a year; the day is 1/372 long
    expect(named(lots, "M 3").at?.first).toBeCloseTo(1996 + 10 / 12 + 8 / 372, 9);
    expect(named(lots, "M 3")).toMatchObject({ on: "1996-11-09" });
    expect(named(lots, "M 1").at).toEqual(momentOf("1985-01-01", "1991-12-31"));
    expect(Math.floor(named(lots, "Lost").at?.first ?? 0)).toBe(1997);
  });

  it("has the size of a grow-out, what is kept, and foreign pollen with its rate", async () => {
    const { read } = await told(await fresh());
    const { lots } = await read("Mere Flint");
    // 10 seed parents among 20 plants: 4·10·20 / (20 + 3·10) = 16, by 1 + F of what was sown; F of M 2: a seed of its own plant's pollen by
    // chance, 1/80, less the foreign 2 %, and of such a seed half
    const size = 16 / (1 + (0.98 * 0.5) / 80);
    expect(named(lots, "M 4").effectiveSize?.low).toBeCloseTo(size, 9);
    expect(named(lots, "M 4").effectiveSize?.high).toBeCloseTo(size, 9);
    expect(named(lots, "M 3").effectiveSize).toBeNull();
    expect(named(lots, "M 2").foreignPollen).toEqual({ rate: 0.02, how: null });
    expect(named(lots, "M 4").foreignPollen).toBeNull();
    // half of the outcross pollen's share: 0.02 / 2
    expect(named(lots, "M 2").foreignAncestry).toBeCloseTo(0.01, 9);
    expect(named(lots, "M 1").kept).toEqual({ low: 1, high: 1 });
    expect(named(lots, "M 2").living).toBe(false);
    expect(named(lots, "M 4")).toMatchObject({ living: true, gramsOnHand: 400 });
    expect(named(lots, "M 1").living).toBeNull();
  });

  it("tells claims that stand, and not those that were put right", async () => {
    const db = await fresh();
    const { read } = await told(db);
    const lot = named((await read("Mere Flint")).lots, "M 1");
    const say = (words: string, replacesId: string | null = null) => {
      const id = uuidv7();
      const data = { id, lotId: lot.id, kind: "unknown before", words, standing: "open", replacesId };
      return db.write.lineageClaim.create({ data });
    };
    const first = await say("from the mill");
    await say("from the other mill", first.id);
    expect((await read("Mere Flint")).claims.map(({ words }) => words)).toEqual(["from the other mill"]);
    expect((await read("Apart")).claims).toEqual([]);
  });

  it("draws records that were merged as the one that leads", async () => {
    const db = await fresh();
    const { read } = await told(db);
    const before = (await read("Mere Flint")).lots;
    const [two, three] = [named(before, "M 2"), named(before, "M 3")];
    await db.write.lot.update({ where: { id: three.id }, data: { sameAsId: two.id } });
    await db.write.variety.updateMany({ data: { revision: { increment: 1 } } });
    const { lots } = await read("Mere Flint");
    expect(lots.some(({ id }) => id === three.id)).toBe(false);
    expect(named(lots, "M 4").parents.map(({ id }) => id)).toEqual([two.id]);
  });

  const blended = {
    "stewards.csv": folder["stewards.csv"],
    "varieties.csv": "variety,crop\nMere Flint,maize-field\n",
    "lots.csv": [
      "lot,variety,holder,year,kind,from",
      ...["P 1", "P 2", "P 3"].map((number) => `${number},Mere Flint,Ada Brindle,1990,founder,`),
      "B 1,Mere Flint,Ada Brindle,1995,blend,P 1:0.25;P 2:0.25;P 3:0.5",
      "B 2,Mere Flint,Ada Brindle,1996,blend,P 1:0.5;P 3:0.5",
    ].join("\n"),
  };

  it("gives the one parent that two records are the sum of their shares, and keeps what is told of either", async () => {
    const db = await fresh();
    granted(await importFolder(db, ownerHere(), csv(blended)));
    const { id: varietyId } = await db.read.variety.findFirstOrThrow();
    const read = async () => (await readLineage(db, varietyId)) ?? { lots: [], claims: [] };
    const before = (await read()).lots;
    const [one, two, three, made] = ["P 1", "P 2", "P 3", "B 1"].map((number) => named(before, number).id);
    const writer = await db.read.steward.findFirstOrThrow();
    const claim = { kind: "same as", words: "one bag", standing: "open", stewardId: writer.id };
    await db.write.lineageClaim.create({ data: { ...claim, id: uuidv7(), lotId: two ?? "", parentLotId: three } });
    await db.write.lot.update({ where: { id: two }, data: { sameAsId: one } });
    // what the other record says of its parents does not stand
    await db.write.lotParent.create({ data: { id: uuidv7(), lotId: two ?? "", parentLotId: three ?? "", share: 1 } });
    await db.write.variety.updateMany({ data: { revision: { increment: 1 } } });
    const { lots, claims } = await read();
    expect(lots.find(({ id }) => id === made)?.parents).toEqual([
      { id: one, share: 0.5 },
      { id: three, share: 0.5 },
    ]);
    expect(named(lots, "P 1").parents).toEqual([]);
    // who wrote it down is not who told it
    expect(claims).toMatchObject([{ lotId: one, parentLotId: three, teller: null }]);
  });

  it("keeps what its founders' kinship leaves, and no more", async () => {
    const db = await fresh();
    granted(await importFolder(db, ownerHere(), csv(blended)));
    const { id: varietyId, cropId } = await db.read.variety.findFirstOrThrow();
    const lots = async () => (await readLineage(db, varietyId))?.lots ?? [];
    const before = await lots();
    expect(named(before, "B 2").kept).toEqual({ low: 1, high: 1 });
    const [first, second, both] = ["P 1", "P 3", "B 2"].map((number) => named(before, number).id) as [
      string,
      string,
      string,
    ];
    const kin = { kind: "coancestry", coancestry: 0.125, how: "a marker test" };
    await db.write.founderKinship.create({ data: { ...kin, id: uuidv7(), firstId: first, secondId: second } });
    await db.write.variety.updateMany({ data: { revision: { increment: 1 } } });
    // two founders of θ = 1/8 within that share 1/8: of half and half 1/4·(1/8 + 2/8 + 1/8) = 1/8
    const { kept } = named(await lots(), "B 2");
    expect(kept?.low).toBeCloseTo(0.875, 12);
    const shared = await sharedByLots(db, cropId, first, second);
    expect(shared).toMatchObject({ atMost: true, coancestry: expect.closeTo(0.125, 12) });
    expect((await sharedByLots(db, cropId, first, both))?.own[0]).toBeCloseTo(0.125, 12);
  });

  it("has the thorn of a suspected cross until the warning is closed", async () => {
    const db = await fresh();
    const { read } = await told(db);
    const foreign = async () => named((await read("Mere Flint")).lots, "S 2").foreignPollen;
    const { id: lotId } = named((await read("Mere Flint")).lots, "S 2");
    expect(await foreign()).toBeNull();
    const warning = { id: uuidv7(), lotId, kind: "suspected cross", reason: "blue grains", on: "2002-05-01" };
    await db.write.warning.create({ data: warning });
    expect(await foreign()).toEqual({ rate: null, how: null });
    await db.write.warning.update({ where: { id: warning.id }, data: { closedOn: "2003-05-01" } });
    expect(await foreign()).toBeNull();
  });

  it("knows how near two lots are kin", async () => {
    const db = await fresh();
    const { read } = await told(db);
    const { lots, variety } = await read("Mere Flint");
    const [two, four] = [named(lots, "M 2"), named(lots, "M 4")];
    const shared = await sharedByLots(db, variety.cropId, two.id, four.id);
    // all of M 4 comes from M 2 (but what foreign pollen brought, which is none): Θ between them is θ of M 2 itself
    expect(shared?.coancestry).toBeCloseTo(shared?.own[0] ?? -1, 12);
    expect(shared?.founders).toEqual([{ number: "M 1", parts: [expect.closeTo(0.99, 9), expect.closeTo(0.99, 9)] }]);
    const apart = await sharedByLots(db, variety.cropId, two.id, named((await read("Apart")).lots, "A 1").id);
    expect(apart?.coancestry).toBe(0);
    expect(await sharedByLots(db, variety.cropId, two.id, uuidv7())).toBeNull();
  });

  it("is nothing where there is no such variety", async () => {
    expect(await readLineage(await fresh(), uuidv7())).toBeNull();
  });
});

const sample = "tests/reference/notebook";

it("gives the sample notebook's own figures", async () => {
  const db = await emptyRegistry();
  const files = readdirSync(sample).filter((name) => name.endsWith(".csv"));
  const bytes = files.map((name) => [name, new Uint8Array(readFileSync(path.join(sample, name)))] as const);
  granted(await importFolder(db, ownerHere(), new Map(bytes)));
  interface Expected {
    readonly lot: string;
    readonly effectiveSize: number | null;
    readonly nativeDiversityRetained: number | null;
    readonly generations: number | null;
    readonly foreignAncestry: number | null;
  }
  const expected = new Map(
    (JSON.parse(readFileSync(path.join(sample, "expected.json"), "utf8")) as Expected[]).map((each) => [
      each.lot,
      each,
    ]),
  );
  let seen = 0;
  for (const { id } of await db.read.variety.findMany()) {
    for (const lot of (await readLineage(db, id))?.lots ?? []) {
      const wanted = expected.get(lot.number);
      if (!wanted || lot.varietyId !== id) continue;
      seen += 1;
      expect(lot.generations).toEqual(wanted.generations === null ? null : expect.closeTo(wanted.generations, 9));
      expect(lot.foreignAncestry).toEqual(
        wanted.foreignAncestry === null ? null : expect.closeTo(wanted.foreignAncestry, 9),
      );
      if (wanted.effectiveSize !== null) expect(lot.effectiveSize?.low).toBeCloseTo(wanted.effectiveSize, 6);
      if (lot.standing === "counted") expect(lot.kept?.low).toBeCloseTo(wanted.nativeDiversityRetained ?? -1, 9);
    }
  }
  expect(seen).toBe(expected.size);
});
