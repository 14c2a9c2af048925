import { describe, expect, it } from "vitest";
import { lotsToTest } from "@/lib/registry/germination-tests/lots-to-test";
import { recordGerminationTest } from "@/lib/registry/germination-tests/record-germination-test";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { anEntry } from "../lots/lots-in-tests";
import { entryFor, owner, withLot } from "./with-lot";

describe("lots that can be tested", () => {
  it("begin with those never tested, then those tested longest ago; what is dead or gone is left out", async () => {
    const db = await emptyRegistry();
    const lots = [];
    for (const number of ["Quern 1", "Quern 2", "Quern 3", "Quern 4"]) lots.push(await withLot(db, { number }));
    const [first, second, , fourth] = lots;
    granted(await recordGerminationTest(db, owner, entryFor(first?.lotId ?? "", { on: "2003-03" })));
    granted(await recordGerminationTest(db, owner, entryFor(second?.lotId ?? "", { on: "2001-03" })));
    await db.write.lot.update({ where: { id: fourth?.lotId }, data: { status: "discarded" } });
    const { lots: listed, found } = await lotsToTest(db, "");
    expect(listed.map((lot) => [lot.number, lot.lastTest])).toEqual([
      ["Quern 3", null],
      ["Quern 2", "2001-03-01"],
      ["Quern 1", "2003-03-01"],
    ]);
    expect(found).toBe(3);
  });

  it("stand last where the ledger says that nothing is left, and say so; what is not known is not nothing", async () => {
    const db = await emptyRegistry();
    const empty = await withLot(db, { number: "Quern 1", grams: 30 });
    await withLot(db, { number: "Quern 2", grams: null });
    await anEntry(db, empty.lotId, "given", 30, "2002-05-01");
    const { lots } = await lotsToTest(db, "");
    expect(lots.map((lot) => [lot.number, lot.nothingLeft])).toEqual([
      ["Quern 2", false],
      ["Quern 1", true],
    ]);
  });

  it("are found by number, variety or crop, every word of it", async () => {
    const db = await emptyRegistry();
    await withLot(db, { number: "Quern 1" });
    await withLot(db, { number: "Mere 2", cropKey: "oat" });
    expect((await lotsToTest(db, "oat mere")).lots.map((lot) => lot.number)).toEqual(["Mere 2"]);
    expect((await lotsToTest(db, "quern oat")).found).toBe(0);
  });
});
