import { describe, expect, it } from "vitest";
import type { OpenTest } from "@/lib/registry/season/records";
import { countDayCome } from "@/lib/registry/season/rules/count-day-come";
import { madeLot, madeRecords } from "../made-records";

const made: OpenTest = {
  id: "t1",
  name: "T1",
  lotId: "l1",
  on: "2026-03-01",
  onFirst: "2026-03-01",
  onLast: "2026-03-01",
  finalCountDay: 14,
  counts: 0,
  lastCountDay: null,
};
const on = (today: string, patch: Partial<OpenTest> = {}) =>
  countDayCome(madeRecords({ today, lots: [madeLot()], tests: [{ ...made, ...patch }] }));

describe("a running test whose count day has come", () => {
  it("is looked at a week after it was set up, not a day earlier", () => {
    expect(on("2026-03-07")).toEqual([]);
    expect(on("2026-03-08")[0]?.facts).toMatchObject({ due: "2026-03-08", last: false, daysLate: 0 });
  });

  it("is counted for the last time on its last day", () => {
    const counted = { counts: 2, lastCountDay: 7 };
    expect(on("2026-03-14", counted)).toEqual([]);
    expect(on("2026-03-17", counted)[0]?.facts).toMatchObject({ due: "2026-03-15", last: true, daysLate: 2 });
  });

  it("does not wait once the last count stands, or where counts name no day", () => {
    expect(on("2026-04-01", { counts: 4, lastCountDay: 14 })).toEqual([]);
    expect(on("2026-04-01", { counts: 1, lastCountDay: null })).toEqual([]);
    expect(on("2026-04-01", { counts: 1, lastCountDay: 7, finalCountDay: null })).toEqual([]);
  });

  it("goes straight to the last count where that comes within the week", () => {
    expect(on("2026-03-06", { finalCountDay: 5 })[0]?.facts).toMatchObject({ due: "2026-03-06", last: true });
  });

  it("does not wait for ever: after 120 days it has been left", () => {
    expect(on("2026-07-06")).toHaveLength(1);
    expect(on("2026-07-07")).toEqual([]);
  });

  it("names the variety of its lot", () => {
    expect(on("2026-03-08")[0]?.varietyId).toBe("v1");
  });
});
