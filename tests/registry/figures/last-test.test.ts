import { describe, expect, it } from "vitest";
import { figuresOfRecords, lastTestOf } from "@/lib/registry/figures/figures-of-records";
import type { LotRecord, TestRecord } from "@/lib/registry/figures/records";
import { granted } from "../../setup/registry";

const test = (name: string, first: string, counts = { sown: 10, normal: 8 }): TestRecord => ({
  id: name,
  name,
  date: first,
  first,
  ...counts,
});

describe("the last test of a lot", () => {
  it("is the latest by first possible day, of equals the one entered later", () => {
    expect(lastTestOf([test("T1", "2003-01-01"), test("T2", "2001-05-05")])?.name).toBe("T1");
    expect(lastTestOf([test("T1", "2003-01-01"), test("T2", "2003-01-01")])?.name).toBe("T2");
  });

  it("is given with the exact interval", () => {
    const lot: LotRecord = {
      ...{ id: "A", number: "A", varietyId: "v", holder: null, kind: "founder", growOutId: null, parents: [] },
      ...{ inbreeding: 0, thousandSeedGrams: null },
    };
    const profile = { matingSystem: null, selfIncompatible: null, outcrossingPctMin: null, outcrossingPctMax: null };
    const [figure] = granted(
      figuresOfRecords({
        varieties: [{ id: "v", name: "V", profile, clonal: false }],
        lots: [lot],
        growOuts: [],
        ledger: new Map(),
        tests: new Map([["A", [test("T1", "2003-01-01", { sown: 20, normal: 18 })]]]),
      }),
    );
    // 18 of 20: Clopper & Pearson 1934, Biometrika 26:404-413; limits 0.683 to 0.988 as in their charts.
    expect(figure?.lastTest?.germination).toBe(0.9);
    expect(figure?.lastTest?.low).toBeCloseTo(0.683, 3);
    expect(figure?.lastTest?.high).toBeCloseTo(0.988, 3);
  });

  it("is none where nothing was tested", () => {
    expect(lastTestOf([])).toBeNull();
    expect(lastTestOf([test("T1", "2003-01-01", { sown: 0, normal: 0 })])).toBeNull();
  });
});
