import { expect, it } from "vitest";
import { failedGrowOut } from "@/lib/registry/season/rules/failed-grow-out";
import { madeLot, madeRecords } from "../made-records";

const growOut = (id: string, year: string | null, outcome: string | null = null) => ({
  ...{ id, name: id, varietyId: "v1", stewardId: null, purpose: null, plantsStanding: null, seedParents: null },
  ...{ sown: year, sownFirst: year && `${year}-01-01`, sownLast: year && `${year}-12-31`, outcome },
});
const found = (growOuts: ReturnType<typeof growOut>[], gave: string[] = []) =>
  failedGrowOut(
    madeRecords({ growOuts, lots: gave.map((id) => madeLot({ id: `of ${id}`, growOutId: id, kind: "harvest" })) }),
  ).map(({ facts, urgency }) => [facts.growOut.id, urgency]);

it("waits before all else where the last grow-out failed", () => {
  expect(found([growOut("G1", "2020"), growOut("G2", "2024", "failed: hail")], ["G1"])).toEqual([["G2", 0]]);
});

it("does not where a later one gave seed or stands, or where the failed one gave a lot all the same", () => {
  const failed = growOut("G1", "2020", "failed: hail");
  expect(found([failed, growOut("G2", "2024")], ["G2"])).toEqual([]);
  expect(found([failed, growOut("G2", "2024")])).toEqual([]);
  expect(found([failed], ["G1"])).toEqual([]);
});

it("is answered by a plan; a plan that came to nothing answers nothing", () => {
  const failed = growOut("G1", "2020", "failed: hail");
  expect(found([failed, growOut("P", null)])).toEqual([]);
  expect(found([failed, growOut("P", null, "not sown: no room")])).toEqual([["G1", 0]]);
});
