import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { recordSeedWeighing } from "@/lib/registry/ledger/record-seed-weighing";
import { seedWeighingSchema } from "@/lib/schemas/ledger/seed-weighing";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { emptyRegistry, granted } from "../../setup/registry";
import { aLot, aVariety } from "../lots/lots-in-tests";

let db: Database;
let lotId: string;

beforeEach(async () => {
  db = await emptyRegistry();
  lotId = await aLot(db, await aVariety(db), { number: "Ham 3" });
});

const weigh = (...counts: { seeds?: string; grams?: string }[]) =>
  recordSeedWeighing(
    db,
    ownerHere(),
    lotId,
    granted(parseForm(seedWeighingSchema("north"), { on: "2026-11-24", counts })),
  );

const refusalsOf = (outcome: Awaited<ReturnType<typeof weigh>>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => each.path.join("."));

test("portions counted and weighed give the lot its thousand-seed weight", async () => {
  // by hand: 200 seeds weigh 64.4 g, so a thousand weigh 322 g; 32 and 32.4 g a hundred: mean 0.322, s 0.0028284, CV 0.878 %
  const { value } = granted(await weigh({ seeds: "100", grams: "32" }, { seeds: "100", grams: "32,4" }, {}, {}));
  expect(value.thousandSeedGrams).toBeCloseTo(322, 9);
  expect(value.cvPercent).toBeCloseTo(0.8784, 3);
  const lot = await db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { weighings: true } });
  expect(lot.thousandSeedGrams).toBeCloseTo(322, 9);
  expect(lot.weighings.map(({ seeds, grams, on }) => [seeds, grams, on])).toEqual([
    [100, 32, "2026-11-24"],
    [100, 32.4, "2026-11-24"],
  ]);
});

test("half a portion is refused at the field that is empty", async () => {
  expect(refusalsOf(await weigh({ seeds: "100" }, { grams: "12" }))).toEqual(["counts.0.grams", "counts.1.seeds"]);
  expect(await db.read.seedWeighing.count()).toBe(0);
});

test("no portion at all is refused", async () => {
  expect(refusalsOf(await weigh({}, {}))).toEqual(["counts.0.seeds"]);
});
