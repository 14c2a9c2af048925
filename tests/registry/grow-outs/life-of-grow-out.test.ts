import { uuidv7 } from "uuidv7";
import { beforeEach, describe, expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { lifeOfGrowOut } from "@/lib/registry/grow-outs/life-of-grow-out";
import { nextOfGrowOut } from "@/lib/registry/grow-outs/next-of-grow-out";
import { type GrowOutRead, readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { emptyRegistry } from "@/tests/setup/registry";
import { aLot } from "../lots/lots-in-tests";
import { aGrowOut, dated } from "./a-grow-out";

let db: Database;
beforeEach(async () => {
  db = await emptyRegistry();
});

async function read(id: string): Promise<GrowOutRead> {
  const found = await readGrowOut(db, id);
  if (!found) throw new Error("it was stored just now");
  return found;
}

const counted = (growOutId: string, stage: string, on: string, plants: number) =>
  db.write.stageCount.create({ data: { id: uuidv7(), growOutId, stage, plants, ...dated(on) } });
/** What was sown, and a lot harvested of it in a year. */
async function harvested(growOutId: string, year: string): Promise<void> {
  const { varietyId } = await db.read.growOut.findUniqueOrThrow({ where: { id: growOutId } });
  const lotId = await aLot(db, varietyId, { number: `From ${year}` });
  await db.write.growOutParent.create({ data: { id: uuidv7(), growOutId, lotId, share: 1 } });
  await aLot(db, varietyId, { number: `Of ${year}`, kind: "harvest", growOutId, year });
}

const flowered = (growOutId: string, moment: string, on: string) =>
  db.write.floweringNote.create({ data: { id: uuidv7(), growOutId, moment, ...dated(on) } });

async function lifeAt(id: string, today: string) {
  const growOut = await read(id);
  const life = lifeOfGrowOut(growOut, today, "north");
  return {
    stages: life.stages.map(
      ({ stage, grade, days }) => `${stage} ${grade}${days ? ` ${days.first}/${days.last}` : ""}`,
    ),
    next: nextOfGrowOut(growOut, life, today),
    stands: life.stands.stage,
  };
}

// The crop list: maize flowers 55 to 85 days after sowing, seed is ripe after 110 to 160. By hand on a calendar from 1 May 2026:
// 25 June, 25 July; 19 August, 8 October.
const maizeFlower = "flowering assumed 2026-06-25/2026-07-25";
const maizeHarvest = "harvest assumed 2026-08-19/2026-10-08";

describe("an annual", () => {
  it("is planned: nothing has a day, and it is to be sown", async () => {
    const id = await aGrowOut(db, { sown: null, plantsPlanned: 200 });
    const { stages, next } = await lifeAt(id, "2026-03-01");
    expect(stages).toEqual(["planned counted", "sown unknown", "flowering unknown", "harvest unknown"]);
    expect(next).toEqual(["sow", "choose-plot"]);
    const { stages: full } = lifeOfGrowOut(await read(id), "2026-03-01", "north");
    expect(full.map(({ afterSowing }) => afterSowing)).toEqual([
      null,
      null,
      { min: 55, max: 85 },
      { min: 110, max: 160 },
    ]);
  });

  it("is sown: what came up is to be counted, flower and seed are expected by the crop's days", async () => {
    const id = await aGrowOut(db);
    const { stages, next } = await lifeAt(id, "2026-05-20");
    expect(stages).toEqual([
      "sown counted 2026-05-01/2026-05-01",
      "up unknown",
      "thinned unknown",
      maizeFlower,
      maizeHarvest,
    ]);
    // 45 days before 25 June is 11 May: neighbours and roguing are near.
    expect(next[0]).toBe("count-up");
    expect(next).toContain("look-for-neighbours");
    expect((await lifeAt(id, "2026-05-10")).next).toEqual(["count-up"]);
  });

  it("flowers as it was noted; seed is taken when it is ripe, and then it is over", async () => {
    const id = await aGrowOut(db, { plantsStanding: 180 });
    await counted(id, "up", "2026-05-14", 220);
    await flowered(id, "first", "2026-07-02");
    expect((await lifeAt(id, "2026-07-10")).stages).toContain("flowering counted 2026-07-02/2026-07-02");
    await flowered(id, "last", "2026-07-20");
    const ripe = await lifeAt(id, "2026-09-01");
    expect(ripe.stages).toContain("flowering counted 2026-07-02/2026-07-20");
    expect(ripe.next[0]).toBe("harvest");
    await harvested(id, "2026");
    const gave = await lifeAt(id, "2026-10-01");
    expect(gave.stages).toContain("harvest counted 2026-01-01/2026-12-31");
    expect(gave.next).toEqual(["end", "harvest-again"]);
    expect(await lifeAt(id, "2027-06-01")).toMatchObject({ stands: "over", next: [] });
  });

  it("of which nobody wrote what came of it asks how it ended", async () => {
    const id = await aGrowOut(db, { sown: "2020-05" });
    expect(await lifeAt(id, "2026-03-01")).toMatchObject({ stands: "over", next: ["say-how-it-ended"] });
    const failed = await aGrowOut(db, { name: "Sallow 2021", sown: "2021-05", outcome: "failed: hail" });
    const life = await lifeAt(failed, "2026-03-01");
    expect(life).toMatchObject({ stands: "over", next: [] });
    // It gave no seed, and nobody saw it flower: no flower is expected of it any more.
    expect(life.stages).toEqual(["sown counted 2021-05-01/2021-05-31", "ended unknown"]);
    await db.write.growOut.update({ where: { id }, data: { endedOn: "2020-07-01" } });
    // Sown in May 2020, it may have flowered from 25 June on, before it was taken out.
    expect((await lifeAt(id, "2026-03-01")).stages[1]).toBe("flowering assumed 2020-06-25/2020-08-24");
    await db.write.growOut.update({ where: { id }, data: { endedOn: "2020-06-20" } });
    expect((await lifeAt(id, "2026-03-01")).stages).toHaveLength(2);
  });
});

describe("a biennial", () => {
  // Carrot: flower after 340 to 400 days, seed after 420 to 470. From 1 June 2026: 7 May 2027, 6 July 2027; 26 July 2027, 14 September 2027.
  it("lives through a winter, is lifted and replanted, and flowers in its second year", async () => {
    const id = await aGrowOut(db, { cropKey: "carrot", sown: "2026-06-01" });
    await counted(id, "up", "2026-06-20", 300);
    expect((await lifeAt(id, "2026-07-01")).next).toEqual(["count-thinned", "count-standing"]);
    // Roots have grown 80 days on 20 August.
    const autumn = await lifeAt(id, "2026-10-01");
    expect(autumn.next).toContain("count-lifted");
    expect(autumn.stages).toEqual([
      "sown counted 2026-06-01/2026-06-01",
      "up counted 2026-06-20/2026-06-20",
      "thinned unknown",
      "lifted unknown",
      "winter assumed 2026-12-01/2027-02-28",
      "replanted unknown",
      "flowering assumed 2027-05-07/2027-07-06",
      "harvest assumed 2027-07-26/2027-09-14",
    ]);
    await counted(id, "lifted", "2026-10-20", 90);
    expect((await lifeAt(id, "2026-11-01")).next[0]).toBe("replant");
    await counted(id, "replanted", "2027-03-20", 80);
    const spring = await lifeAt(id, "2027-04-15");
    expect(spring.next).not.toContain("replant");
    expect(spring.next).toContain("look-for-neighbours");
    expect((await lifeAt(id, "2027-08-01")).next[0]).toBe("harvest");
  });

  it("has its winter in June to August in the south", async () => {
    const id = await aGrowOut(db, { cropKey: "carrot", sown: "2026-01-10" });
    const { stages } = lifeOfGrowOut(await read(id), "2026-03-01", "south");
    expect(stages.find(({ stage }) => stage === "winter")?.days).toEqual({ first: "2026-06-01", last: "2026-08-31" });
  });
});

describe("a perennial", () => {
  // Asparagus: seed after 800 to 1,200 days. From 1 April 2022: 9 June 2024 to 14 July 2025; a year later 9 June 2025 to 14 July 2026.
  it("is harvested year after year until it is ended", async () => {
    const id = await aGrowOut(db, { cropKey: "asparagus", sown: "2022-04-01", plantsStanding: 40 });
    await harvested(id, "2024-10-01");
    const life = await lifeAt(id, "2025-08-01");
    expect(life.stands).toBe("standing");
    expect(life.stages.filter((stage) => stage.startsWith("harvest"))).toEqual([
      "harvest counted 2024-10-01/2024-10-01",
      "harvest assumed 2025-06-09/2026-07-14",
    ]);
    expect(life.next[0]).toBe("harvest-again");
    expect(life.next).toContain("end");
    await db.write.growOut.update({ where: { id }, data: { endedOn: "2026-11" } });
    const over = await lifeAt(id, "2026-12-01");
    expect(over.stands).toBe("over");
    expect(over.stages.at(-1)).toBe("ended counted 2026-11-01/2026-11-30");
  });
});
