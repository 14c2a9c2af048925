import { uuidv7 } from "uuidv7";
import { expect, it } from "vitest";
import { insertRows } from "@/lib/db";
import { growOutForHarvest } from "@/lib/registry/harvests/grow-out-for-harvest";
import { emptyRegistry, granted } from "../../setup/registry";

it("a grow-out of three thousand plants is read with the marks of each, more than a statement takes arguments", async () => {
  const db = await emptyRegistry();
  const crop = await db.read.crop.findFirstOrThrow();
  const [varietyId, growOutId] = [uuidv7(), uuidv7()];
  const plants = Array.from({ length: 3000 }, (_, place) => ({
    ...{ id: uuidv7(), growOutId, name: `${place + 1}`, nameKey: `${place + 1}` },
  }));
  const on = { on: "2026-07-01", onFirst: "2026-07-01", onLast: "2026-07-01" };
  await insertRows(db.write, db.engine, "Variety", [
    { id: varietyId, name: "Tallow", nameKey: "tallow", cropId: crop.id },
  ]);
  await insertRows(db.write, db.engine, "GrowOut", [
    { id: growOutId, name: "Long field", nameKey: "long field", varietyId },
  ]);
  await insertRows(db.write, db.engine, "Plant", plants);
  await insertRows(
    db.write,
    db.engine,
    "Mark",
    plants.map(({ id, name }) => ({
      id: uuidv7(),
      plantId: id,
      tag: name,
      intent: name === "7" ? "pull" : "keep",
      ...on,
    })),
  );
  const read = granted(await db.write.$transaction((tx) => growOutForHarvest(tx, growOutId)));
  expect(read.plants).toHaveLength(3000);
  expect(read.plants.every(({ marks }) => marks.length === 1)).toBe(true);
  expect([...read.toPull.values()]).toEqual(["7"]);
});
