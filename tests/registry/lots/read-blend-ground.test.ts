import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { figuresOfVariety } from "@/lib/registry/figures/read-figures";
import { blendLots } from "@/lib/registry/lots/blend-lots";
import { readBlendGround } from "@/lib/registry/lots/read-blend-ground";
import { readBlendSubject } from "@/lib/registry/lots/read-blend-subject";
import { mixFigures } from "@/lib/science/blend/mix-figures";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aSteward, aTest, aVariety } from "./lots-in-tests";

const owner = ownerHere();

onEveryEngine("what a blend is weighed up with", (fresh) => {
  const circle = async () => {
    const db = await fresh();
    const holderId = await aSteward(db, "Oda Fenlight");
    const varietyId = await aVariety(db, "Rain Flint", "maize-field");
    const { cropId } = await db.read.variety.findUniqueOrThrow({ where: { id: varietyId } });
    const founder = await aLot(db, varietyId, { number: "Rai 1", year: "1994", inbreeding: 0, founderLines: "many" });
    const grown = async (name: string, plants: number, more: object = {}) => {
      const growOutId = uuidv7();
      const own = { id: growOutId, name, nameKey: name.toLowerCase(), varietyId };
      const counts = { plantsStanding: plants, roguedBeforePollen: 0, seedParents: plants, seedShares: "equal" };
      await db.write.growOut.create({ data: { ...own, ...counts, ...more } });
      await db.write.growOutParent.create({ data: { id: uuidv7(), growOutId, lotId: founder, share: 1 } });
      const id = await aLot(db, varietyId, {
        ...{ number: `${name} lot`, year: "2020", kind: "harvest", growOutId, holderId, thousandSeedGrams: 300 },
      });
      await anEntry(db, id, "harvested", 500, "2020-10-01");
      await aTest(db, id, `T ${name}`, "2024-02-01", 50, 40);
      return id;
    };
    const [ten, twenty] = [await grown("Ten", 10), await grown("Twenty", 20)];
    const crossed = await grown("Crossed", 20, { foreignPollen: 0.1 });
    return { db, varietyId, cropId, founder, ten, twenty, crossed };
  };

  test("the jars that may hold seed, those asked for first, with the kinship of every two", async () => {
    const { db, varietyId, cropId, founder, ten, twenty, crossed } = await circle();
    await anEntry(db, founder, "weighed", 0, "2001-01-01");
    await db.write.warning.create({ data: { id: uuidv7(), lotId: crossed, reason: "a suspected cross", on: "2021" } });
    const { lots, ground, leftOut } = await readBlendGround(db, { varietyId, cropId, asked: [ten] });
    // the founder's jar is empty
    expect(lots.map((lot) => lot.id)).toEqual([ten, crossed, twenty]);
    expect(leftOut).toBe(0);
    expect(lots[0]).toMatchObject({ number: "Ten lot", grams: 500, holder: "Oda Fenlight", lineageKnown: true });
    expect(lots[0]?.test).toMatchObject({ sown: 50, normal: 40 });
    expect(lots[1]?.objections).toEqual([
      {
        code: "warned",
        number: "Crossed lot",
        words: "has a warning that is open: a suspected cross",
        overridable: true,
      },
    ]);
    // one founder, no inbreeding, ten plants equally: θ 1/20; twenty: 1/40; nothing in common but the founder, θ 0
    expect(ground?.coancestry[0]?.[0]).toBeCloseTo(1 / 20, 12);
    expect(ground?.coancestry[2]?.[2]).toBeCloseTo(1 / 40, 12);
    expect(ground?.coancestry[0]?.[2]).toBe(0);
    expect(ground?.lots[0]?.founders).toEqual({ "Rai 1": 1 });
    expect(ground?.lots[1]?.founders["Rai 1"]).toBeCloseTo(0.95, 12);
    expect(ground?.lots[1]).toMatchObject({ shortestLine: 1, longestLine: 1 });
  });

  test("what the page foresees is what the registry works out of the blend that is made", async () => {
    const { db, varietyId, cropId, founder, ten, crossed } = await circle();
    await anEntry(db, founder, "weighed", 0, "2001-01-01");
    const { lots, ground } = await readBlendGround(db, { varietyId, cropId, asked: [] });
    const parts = [ten, crossed].map((lot, i) => ({
      lot,
      amount: i === 0 ? 30 : 90,
      unit: "g" as const,
      living: null,
    }));
    const { value } = granted(
      await blendLots(db, owner, {
        ...{ parts, number: "Rai 30", holder: null, newHolder: null, reason: "breadth", override: null, notes: null },
        on: granted(parseDate("2026-03-01")),
      }),
    );
    // the same seed weight and germination: a quarter and three quarters of the living seeds
    const foreseen =
      ground &&
      mixFigures(
        ground,
        lots.map((lot) => (lot.id === ten ? 1 : lot.id === crossed ? 3 : 0)),
      );
    const made = (await figuresOfVariety(db, varietyId)).get(value.lotId);
    for (const key of ["coancestry", "inbreeding", "nativeDiversityRetained", "foreignAncestry"] as const)
      expect(foreseen?.[key], key).toBeCloseTo(made?.[key] ?? Number.NaN, 12);
    expect(made?.coancestry).toBeGreaterThan(0);
  });

  test("a blend is found by lots, by their numbers or by the variety; lots of another variety are named", async () => {
    const { db, varietyId, ten, twenty } = await circle();
    const other = await aLot(db, await aVariety(db, "Well Garden"), { number: "Wel 1" });
    const found = await readBlendSubject(db, { lots: [ten, "Twenty lot", other, "nothing"], varietyId: null });
    expect(found).toMatchObject({
      asked: [ten, twenty],
      others: ["Wel 1"],
      head: { varietyId, variety: "Rain Flint" },
    });
    expect(await readBlendSubject(db, { lots: [], varietyId })).toMatchObject({ asked: [], head: { varietyId } });
    expect(await readBlendSubject(db, { lots: ["nothing"], varietyId: null })).toBeNull();
  });
});
