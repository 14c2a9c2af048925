import { describe, expect, it } from "vitest";
import { testOverdue, yearsBetweenTests } from "@/lib/registry/season/rules/test-overdue";
import { crop, madeLot, madeRecords, madeTest, madeVariety } from "../made-records";

const tested = (date: string, patch = {}) =>
  madeLot({ lastTest: madeTest(90, 100, date), lastTestFirst: date, lastTestLast: date, ...patch });

describe("a test that is overdue", () => {
  it("is one older than half the lower end of the usual life: 1.5 years for 3", () => {
    const at = (today: string) => testOverdue(madeRecords({ today, lots: [tested("2024-07-01")] }));
    expect(at("2025-12-30")).toEqual([]);
    expect(at("2026-01-02")[0]?.facts).toMatchObject({ everyYears: 1.5, pastLife: false });
  });

  it("comes each year once the usual life is past", () => {
    const lot = tested("2025-03-10", { yearFirst: "2020-01-01", yearLast: "2020-12-31" });
    expect(testOverdue(madeRecords({ today: "2026-03-10", lots: [lot] }))).toEqual([]);
    expect(testOverdue(madeRecords({ today: "2026-03-11", lots: [lot] }))[0]?.facts.pastLife).toBe(true);
  });

  it("is a first test more than a year after the harvest, not before", () => {
    const lot = madeLot({ yearFirst: "2025-01-01", yearLast: "2025-12-31" });
    expect(testOverdue(madeRecords({ today: "2026-12-31", lots: [lot] }))).toEqual([]);
    expect(testOverdue(madeRecords({ today: "2027-01-01", lots: [lot] }))[0]?.facts.yearsSince).toBeNull();
  });

  it("is a first test of a lot of unknown age", () => {
    expect(testOverdue(madeRecords({ lots: [madeLot({ yearFirst: null, yearLast: null })] }))).toHaveLength(1);
  });

  it("is not asked of a clonal crop, nor of a lot that is gone", () => {
    const clonal = new Map([["v1", madeVariety({ crop: { ...crop, clonal: true } })]]);
    const lot = madeLot({ yearFirst: null, yearLast: null });
    expect(testOverdue(madeRecords({ varieties: clonal, lots: [lot] }))).toEqual([]);
    expect(testOverdue(madeRecords({ lots: [{ ...lot, status: "dead" }] }))).toEqual([]);
  });

  it("is listed with the newest harvest first, those of unknown year last", () => {
    const of = (id: string, year: number | null) =>
      madeLot({ id, yearFirst: year && `${year}-01-01`, yearLast: year && `${year}-12-31` } as object);
    const lots = [of("old", 2001), of("undated", null), of("new", 2015)];
    expect(testOverdue(madeRecords({ lots })).map((item) => item.lotId)).toEqual(["new", "old", "undated"]);
  });

  it("has a space of 1 to 5 years, and 3 where the usual life is unknown", () => {
    expect(yearsBetweenTests({ ...crop, seedLifeYearsMin: 1 }, false)).toBe(1);
    expect(yearsBetweenTests({ ...crop, seedLifeYearsMin: 20 }, false)).toBe(5);
    expect(yearsBetweenTests({ ...crop, seedLifeYearsMin: null }, false)).toBe(3);
  });
});
