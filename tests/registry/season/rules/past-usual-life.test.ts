import { describe, expect, it } from "vitest";
import { pastUsualLife } from "@/lib/registry/season/rules/past-usual-life";
import { crop, madeLot, madeRecords, madeVariety } from "../made-records";

const old = { yearFirst: "2020-01-01", yearLast: "2020-12-31" };

describe("a lot past its usual life", () => {
  it("waits from the day after the upper end of the usual life, not before", () => {
    const at = (day: string) => pastUsualLife(madeRecords({ today: day, lots: [madeLot(old)] }));
    expect(at("2025-12-31")).toEqual([]);
    expect(at("2026-01-01")[0]?.facts.usual).toEqual({ low: 3, high: 5 });
  });

  it("does not wait where a younger lot of the variety holds seed", () => {
    const lots = [madeLot(old), madeLot({ id: "l2", number: "Quern 2" })];
    expect(pastUsualLife(madeRecords({ lots }))).toEqual([]);
  });

  it("still waits where the younger lot is used up", () => {
    const lots = [madeLot(old), madeLot({ id: "l2", number: "Quern 2", gramsOnHand: 0 })];
    expect(pastUsualLife(madeRecords({ lots })).map((item) => item.lotId)).toEqual(["l1"]);
  });

  it("waits once a variety, by its newest lot, and says how many older ones there are", () => {
    const older = madeLot({ id: "l2", number: "Quern 0", yearFirst: "2010-01-01", yearLast: "2010-12-31" });
    const items = pastUsualLife(madeRecords({ lots: [older, madeLot(old)] }));
    expect(items).toMatchObject([{ lotId: "l1", facts: { older: 1 } }]);
  });

  it("is not claimed where the year or the usual life is unknown", () => {
    expect(pastUsualLife(madeRecords({ lots: [madeLot({ year: null, yearFirst: null, yearLast: null })] }))).toEqual(
      [],
    );
    const unknown = madeVariety({ crop: { ...crop, seedLifeYearsMin: null, seedLifeYearsMax: null } });
    expect(pastUsualLife(madeRecords({ varieties: new Map([["v1", unknown]]), lots: [madeLot(old)] }))).toEqual([]);
  });
});
