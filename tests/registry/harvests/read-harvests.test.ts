import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { readHarvests } from "@/lib/registry/harvests/read-harvests";
import { recordHarvest } from "@/lib/registry/harvests/record-harvest";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { aGrowOut, harvest, weighed } from "./a-grow-out";
import expected from "./expected-sizes.json";

const owner = ownerHere();
const today = "2026-11-24";
const heavy = [92, 61, 40, 12, 9, 8, 7, 6, 6, 5, 4, 3, 2, 2];

onEveryEngine("the harvests of a grow-out", (fresh) => {
  it("are read each with its own effective size, and agree with the figures of the lot", async () => {
    const db = await fresh();
    const { id, plants } = await aGrowOut(db, { plants: 16, plantsStanding: 60 });
    const input = harvest({ parents: weighed(plants.slice(0, 14), heavy), number: "Ford 1" });
    const { value } = granted(await recordHarvest(db, owner, id, input, today));
    const read = await readHarvests(db, id, today);
    const [only] = read?.harvests ?? [];
    expect(only).toMatchObject({ lotNumber: "Ford 1", seedParents: 14, grams: 257, warnings: [] });
    expect(only?.parents[0]).toMatchObject({ plant: "1", grams: 92, lost: null });
    expect(only?.size?.effectiveSize).toBeCloseTo(expected.greedy, 9);
    expect(only?.evenness?.ifEqual?.effectiveSize).toBeCloseTo(expected["greedy, equal shares"], 9);
    expect((await figuresOfAll(db)).get(value.lotId)?.effectiveSize).toBeCloseTo(expected.greedy, 9);
    expect(read?.pool).toMatchObject({ seedParents: 14, seedParentsAtMost: 14 });
    expect(read?.plants).toHaveLength(16);
  });

  it("show what looks odd for as long as it does, and nothing where none is", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    expect(await readHarvests(db, id, today)).toMatchObject({ harvests: [], pool: null });
    granted(await recordHarvest(db, owner, id, harvest({ seedParents: 9, mouldyShare: 0.2 }), today));
    const read = await readHarvests(db, id, today);
    expect(read?.harvests[0]?.warnings.map(({ code }) => code)).toEqual(["mouldy", "shares-not-known", "not-weighed"]);
    expect(read?.harvests[0]).toMatchObject({ given: null, evenness: null, size: null });
    expect(await readHarvests(db, "none", today)).toBeNull();
  });
});
