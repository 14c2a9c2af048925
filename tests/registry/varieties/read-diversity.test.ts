import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import type { Database } from "@/lib/db";
import { plannedSize } from "@/lib/registry/varieties/planned-size";
import { readDiversity } from "@/lib/registry/varieties/read-diversity";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { stretchesOf } from "@/lib/registry/varieties/stretches";
import { defaultSettings } from "@/lib/schemas/settings";
import { onEveryEngine } from "../../setup/engines";
import { aLot, anEntry, aVariety } from "../lots/lots-in-tests";

const today = "2026-11-27";

async function grown(db: Database, varietyId: string, name: string, from: string, more: object): Promise<string> {
  const growOutId = uuidv7();
  await db.write.growOut.create({ data: { id: growOutId, name, nameKey: name.toLowerCase(), varietyId, ...more } });
  await db.write.growOutParent.create({ data: { id: uuidv7(), growOutId, lotId: from, share: 1 } });
  return aLot(db, varietyId, { number: `${name} lot`, kind: "harvest", growOutId, year: name.slice(-4) });
}

const alike = (plants: number) => ({
  plantsStanding: plants,
  roguedBeforePollen: 0,
  seedParents: plants,
  seedShares: "equal",
});

onEveryEngine("what a variety keeps", (fresh) => {
  const line = async () => {
    const db = await fresh();
    const varietyId = await aVariety(db, "Rain Flint", "maize-field");
    const founder = await aLot(db, varietyId, { number: "Rai 1", year: "1994", inbreeding: 0, founderLines: "many" });
    const first = await grown(db, varietyId, "R 2001", founder, { ...alike(10), sown: "2001", plantsPlanned: 40 });
    const second = await grown(db, varietyId, "R 2008", first, { ...alike(20), sown: "2008" });
    await anEntry(db, second, "harvested", 500, "2008-10-01");
    const read = async () => {
      const variety = await readVariety(db, varietyId, defaultSettings, today);
      if (!variety) throw new Error("no variety");
      return variety;
    };
    return { db, varietyId, founder, first, second, read };
  };

  test("each grow-out behind the newest lot with seed has its size, its plan and its cost (by hand)", async () => {
    const { db, second, read } = await line();
    const variety = await read();
    const { lot, growOuts, stretches, lines } = await readDiversity(db, variety, null);
    expect(lot?.id).toBe(second);
    const [one, two] = growOuts;
    expect(one).toMatchObject({ name: "R 2001", pollenParents: 10, seedParents: 10, size: { low: 10, high: 10 } });
    expect(one?.planned).toEqual({ plants: 40, pollenParents: 40, seedParents: 40, from: "plan" });
    // as it was θ = 0.05 + 0.05·(0.525 − 0.05) = 0.07375; with 40 first: 0.0125 + 0.05·(0.50625 − 0.0125) = 0.0371875
    expect(one?.cost?.cost).toBeCloseTo(0.07375 - 0.0371875, 12);
    expect(one?.cost?.nativeCost).toBeCloseTo(0.0365625, 12);
    expect(two?.planned).toMatchObject({ from: "crop", plants: variety.crop.plantsMin });
    expect(two?.cost?.cost).toBeGreaterThan(0);
    // 2/(1/10 + 1.05/20): the second grow-out's parents had F = 0.05, so its size is 20/1.05
    expect(stretches).toHaveLength(1);
    expect(stretches[0]?.together?.low).toBeCloseTo(2 / (1 / 10 + 1.05 / 20), 9);
    expect(lines).toHaveLength(2);
  });

  test("a lot that is asked for is spoken of; one of another variety is not", async () => {
    const { db, first, read } = await line();
    const other = await aLot(db, await aVariety(db, "Well Garden"), { number: "Wel 1" });
    const variety = await read();
    expect((await readDiversity(db, variety, first)).growOuts.map(({ name }) => name)).toEqual(["R 2001"]);
    expect((await readDiversity(db, variety, other)).lot?.number).toBe("R 2008 lot");
  });

  test("where the plants of one grow-out are not known no cost is told, and its stretch has no one size", async () => {
    const { db, varietyId, second, read } = await line();
    const third = await grown(db, varietyId, "R 2015", second, { sown: "2015", plantsPlanned: 60 });
    const { growOuts, stretches } = await readDiversity(db, await read(), third);
    expect(growOuts.map(({ cost }) => cost)).toEqual([null, null, null]);
    expect(growOuts[2]).toMatchObject({ pollenParents: null, seedParents: null });
    expect(stretches).toHaveLength(1);
  });

  test("a variety without lots has nothing to tell", async () => {
    const db = await fresh();
    const id = await aVariety(db, "Empty Row");
    const read = await readVariety(db, id, defaultSettings, today);
    if (!read) throw new Error("no variety");
    expect(await readDiversity(db, read, null)).toEqual({ lot: null, growOuts: [], stretches: [], lines: [] });
  });
});

test("the planned size is the grow-out's own, else the variety's, else the crop's; nobody's is none", () => {
  const nothing = {
    plantsPlanned: null,
    seedParentsPlanned: null,
    plantsWanted: null,
    seedParentsWanted: null,
    cropFewest: null,
  };
  expect(plannedSize({ ...nothing, plantsPlanned: 80, seedParentsPlanned: 200, plantsWanted: 30 }, false)).toEqual({
    ...{ plants: 80, pollenParents: 80, seedParents: 80, from: "plan" },
  });
  expect(plannedSize({ ...nothing, plantsWanted: 30, seedParentsWanted: 12, cropFewest: 9 }, false)).toMatchObject({
    ...{ plants: 30, seedParents: 12, from: "variety" },
  });
  expect(plannedSize({ ...nothing, cropFewest: 9 }, true)).toEqual({
    ...{ plants: 9, pollenParents: 4, seedParents: 5, from: "crop" },
  });
  expect(plannedSize(nothing, false)).toBeNull();
  expect(plannedSize({ ...nothing, plantsPlanned: 1 }, false)).toBeNull();
});

test("a stretch ends where a line parts and where lines join", () => {
  const one = { low: 10, high: 10 };
  const growOuts = [
    { id: "a", before: null, size: one },
    { id: "b", before: "a", size: { low: 30, high: 30 } },
    { id: "c", before: "b", size: one },
    { id: "d", before: "b", size: null },
    { id: "e", before: null, size: one },
    { id: "f", before: "not of this lot", size: one },
  ];
  const stretches = stretchesOf(growOuts);
  expect(stretches.map((each) => each.growOuts.map(({ id }) => id))).toEqual([["a", "b"], ["c"], ["d"], ["e"], ["f"]]);
  // 2/(1/10 + 1/30)
  expect(stretches[0]?.together?.low).toBeCloseTo(15, 12);
  expect(stretches[2]?.together).toBeNull();
});
