import { uuidv7 } from "uuidv7";
import { describe, expect, it } from "vitest";
import { perform } from "@/lib/registry/change-set/perform";
import { listGrowOuts } from "@/lib/registry/grow-outs/list-grow-outs";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { accepted } from "@/lib/science/outcome";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withLot, withSteward, withVariety } from "../varieties/with-variety";

const day = (on: string) => ({ on, onFirst: on, onLast: on });

async function grown() {
  const db = await emptyRegistry();
  const varietyId = await withVariety(db, "Mere Flint", "maize-field");
  const stewardId = await withSteward(db);
  const sown = await withLot(db, varietyId, "Quern 1");
  const id = uuidv7();
  const [plantA, plantB, trait, first, second] = [uuidv7(), uuidv7(), uuidv7(), uuidv7(), uuidv7()];
  granted(
    await perform(db, owner, { action: "record", title: "Grow-out" }, async (change) => {
      const growOut = { id, name: "G1", nameKey: "g1", varietyId, stewardId, sown: "2020-05", sownFirst: "2020-05-01" };
      const counts = { plantsStanding: 50, seedParents: 40, seedShares: "equal" };
      await change.create("GrowOut", { ...growOut, sownLast: "2020-05-31", ...counts });
      await change.create("GrowOutParent", { id: uuidv7(), growOutId: id, lotId: sown, share: 1 });
      await change.create(
        "StageCount",
        { id: first, growOutId: id, stage: "up", plants: 70, ...day("2020-06-01") },
        { id: second, growOutId: id, stage: "up", plants: 60, replacesId: first, ...day("2020-06-01") },
      );
      await change.create("RoguePass", {
        id: uuidv7(),
        growOutId: id,
        looked: 60,
        pulled: 0,
        timing: "before",
        ...day("2020-07-01"),
      });
      await change.create(
        "Plant",
        { id: plantA, growOutId: id, name: "1", nameKey: "1", cell: "A1", kept: true, seedGrams: 12.5 },
        { id: plantB, growOutId: id, name: "2", nameKey: "2" },
      );
      await change.create("Trait", { id: trait, name: "vigour", nameKey: "vigour", kind: "scale" });
      const score = { plantId: plantA, traitId: trait };
      const wrong = uuidv7();
      await change.create(
        "Score",
        { id: wrong, ...score, value: 9 },
        { id: uuidv7(), ...score, value: 6, replacesId: wrong },
      );
      await change.create("Mark", { id: uuidv7(), plantId: plantA, tag: "7", intent: "keep", ...day("2020-08-01") });
      change.touch(varietyId);
      return accepted(null);
    }),
  );
  const lotId = await withLot(db, varietyId, "Quern 2", { kind: "harvest", growOutId: id, year: "2020" });
  return { db, id, sown, lotId, varietyId };
}

describe("a grow-out", () => {
  it("is read with what was sown, what was harvested and its effective size", async () => {
    const { db, id, sown, lotId } = await grown();
    const read = await readGrowOut(db, id);
    expect(read?.parents).toMatchObject([{ id: sown, number: "Quern 1", share: 1, inbreeding: 0 }]);
    expect(read?.harvested).toMatchObject([{ id: lotId, number: "Quern 2" }]);
    // Seed from 40 of 50, equal shares: 4·40·50/(50 + 3·40) = 800/17, the landmark of plants that are all pollen parents.
    expect(read?.harvested[0]?.figures?.effectiveSize).toBeCloseTo(8000 / 170, 9);
    expect(read?.steward).toBe("Aldis Thornwick");
  });

  it("shows events that stand in the order of days, and a pass that found none", async () => {
    const { db, id } = await grown();
    expect((await readGrowOut(db, id))?.events).toMatchObject([
      { kind: "count", what: "up", plants: 60 },
      { kind: "rogues", how: "before", plants: 60, amount: 0 },
    ]);
  });

  it("shows the scores that stand; what was not scored is not there", async () => {
    const { db, id } = await grown();
    const read = await readGrowOut(db, id);
    expect(read?.traits.map((trait) => trait.newest.name)).toEqual(["vigour"]);
    expect(read?.plants[0]?.scores.get(read.traits[0]?.id ?? "")).toMatchObject([{ value: 6 }]);
    expect(read?.plants[0]?.marks).toMatchObject([{ tag: "7", intent: "keep" }]);
    expect(read?.plants[1]).toMatchObject({ kept: null, seedGrams: null });
    expect(read?.plants[1]?.scores.size).toBe(0);
  });

  it("is null where there is none", async () => {
    expect(await readGrowOut(await emptyRegistry(), "none")).toBeNull();
  });
});

describe("the list of grow-outs", () => {
  it("gives the newest first with the lots that came of each", async () => {
    const { db, id, varietyId } = await grown();
    expect(await listGrowOuts(db)).toMatchObject([
      { id, variety: "Mere Flint", lots: [{ number: "Quern 2" }], clonal: false },
    ]);
    expect(await listGrowOuts(db, "another")).toEqual([]);
    expect(await listGrowOuts(db, varietyId)).toHaveLength(1);
  });
});
