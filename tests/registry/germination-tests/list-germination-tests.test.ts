import { describe, expect, it } from "vitest";
import { testsCsv } from "@/app/tests/csv/tests-csv";
import type { Database } from "@/lib/db";
import { allGerminationTests, listGerminationTests } from "@/lib/registry/germination-tests/list-germination-tests";
import { recordGerminationTest } from "@/lib/registry/germination-tests/record-germination-test";
import { readTestListQuery, testListAddress } from "@/lib/schemas/germination-test/list-query";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { entryFor, owner, withLot } from "./with-lot";

async function threeTests(db: Database) {
  const pea = await withLot(db, { number: "Quern 1" });
  const oat = await withLot(db, { number: "Mere 2", cropKey: "oat" });
  const record = async (lotId: string, on: string, replicates: unknown) =>
    granted(await recordGerminationTest(db, owner, entryFor(lotId, { on, replicates })));
  await record(pea.lotId, "1999-03-01", [{ name: "1", sown: 20, counts: [{ day: 10, normal: 18 }] }]);
  await record(oat.lotId, "2001", [{ name: "1", sown: 50, counts: [{ day: 10, normal: 25 }] }]);
  await record(pea.lotId, "2000-03", [{ name: "1", sown: 25 }]);
}

const today = "2010-01-01";

const names = async (db: Database, params: Record<string, string>) =>
  (await listGerminationTests(db, readTestListQuery(params), today)).tests.map((test) => test.name);

describe("the list of germination tests", () => {
  it("begins with the latest; ordered by germination, what was not counted stands last both ways", async () => {
    const db = await emptyRegistry();
    await threeTests(db);
    expect(await names(db, {})).toEqual(["Mere 2 test 1", "Quern 1 test 2", "Quern 1 test 1"]);
    expect(await names(db, { sort: "germination" })).toEqual(["Mere 2 test 1", "Quern 1 test 1", "Quern 1 test 2"]);
    const down = await names(db, { sort: "-germination" });
    expect(down).toEqual(["Quern 1 test 1", "Mere 2 test 1", "Quern 1 test 2"]);
    expect(await names(db, { sort: "lot" })).toEqual(["Mere 2 test 1", "Quern 1 test 1", "Quern 1 test 2"]);
    expect(await names(db, { sort: "-sown" })).toEqual(["Mere 2 test 1", "Quern 1 test 2", "Quern 1 test 1"]);
  });

  it("is searched by lot, variety, crop and name, every word of it, in any letter case", async () => {
    const db = await emptyRegistry();
    await threeTests(db);
    expect(await names(db, { filter: "OAT mere" })).toEqual(["Mere 2 test 1"]);
    expect(await names(db, { filter: "hollow" })).toHaveLength(3);
    const list = await listGerminationTests(db, readTestListQuery({ filter: "quern nowhere" }), today);
    expect([list.tests.length, list.found, list.all]).toEqual([0, 0, 3]);
  });

  it("takes a dozen statements at most, whatever its order", async () => {
    let statements = 0;
    const db = await emptyRegistry({ onStatement: () => (statements += 1) });
    await threeTests(db);
    for (const sort of ["set-up", "germination"]) {
      statements = 0;
      await listGerminationTests(db, readTestListQuery({ sort, filter: "pea" }), "2000-04-01");
      // With the settings that every page reads, a dozen.
      expect(statements).toBeLessThanOrEqual(11);
    }
  });
});

describe("the file of the list", () => {
  it("has all that the search leaves, in the list's order", async () => {
    const db = await emptyRegistry();
    await threeTests(db);
    const tests = await allGerminationTests(db, readTestListQuery({ filter: "quern", sort: "-germination" }));
    expect(tests.map((test) => test.name)).toEqual(["Quern 1 test 1", "Quern 1 test 2"]);
    const lines = testsCsv(tests).split("\r\n");
    expect(lines[0]?.split(",").slice(0, 7)).toEqual([
      "test",
      "lot",
      "variety",
      "crop",
      "set_up",
      "basis",
      "seeds_sown",
    ]);
    // 18 of 20, nothing told apart: empty is not known
    expect(lines[1]).toContain("Pea,1999-03-01,normal seedlings,20,18,,,,,0.9,");
    expect(lines[2]).toContain(",25,,,,,,,,,,set up,");
  });
});

describe("the address of the list", () => {
  it("holds all that was chosen, and what is usual is left out", () => {
    const query = readTestListQuery({ filter: " pea ", sort: "-germination", page: "2" });
    expect(testListAddress(query, ["test", "lot"])).toBe("/tests?filter=pea&sort=-germination&columns=test,lot&page=2");
    expect(testListAddress(readTestListQuery({}))).toBe("/tests");
    const odd = readTestListQuery({ sort: "colour", page: "-3", filter: ["pea", "oat"] });
    expect(odd).toEqual({ filter: "pea", sort: { key: "set-up", down: true }, page: 1 });
  });
});
