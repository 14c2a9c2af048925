import { describe, expect, it } from "vitest";
import { keptWords, whyNotKept } from "@/app/varieties/_words/kept-words";
import { diversityByYear, floorOf, germinationByYear, middleYear, withoutYear } from "@/app/varieties/_words/years";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import type { TestOfVariety } from "@/lib/registry/varieties/tests-of-variety";
import { madeLot } from "@/tests/registry/season/made-records";

const lot = (patch: Partial<LotOfVariety>, kept: number | null = 0.9, assumed: string[] = []): LotOfVariety =>
  ({
    ...madeLot({ year: "2004", yearFirst: "2004-01-01", yearLast: "2004-12-31" }),
    standing: "counted",
    figures: { diversityRetained: kept, assumed },
    ...patch,
  }) as LotOfVariety;

describe("the middle of a fuzzy date", () => {
  it("lies half way between its first and last day", () => {
    expect(middleYear("2004-01-01", "2004-12-31")).toBeCloseTo(2004.5, 2);
    expect(middleYear("1980-01-01", "1989-12-31")).toBeCloseTo(1985, 2);
    expect(middleYear(null, null)).toBeNull();
  });
});

describe("diversity by year", () => {
  it("is solid where all was counted, hatched where something was assumed, open where it is unknown", () => {
    const lots = [lot({}), lot({}, 0.8, ["a default"]), lot({ standing: "plants not known" }, null)];
    expect(diversityByYear(lots).map((each) => each.points[0]?.grade)).toEqual(["counted", "assumed", "unknown"]);
    expect(diversityByYear(lots)[2]?.points[0]?.value).toBeNull();
  });

  it("shows no percentage of unknown lines, and leaves uniform and clonal lots out", () => {
    const unknown = diversityByYear([lot({ standing: "lines not known" })]);
    expect(unknown[0]?.points[0]).toMatchObject({ value: null, grade: "unknown" });
    expect(diversityByYear([lot({ standing: "uniform" }), lot({ standing: "clonal" })])).toEqual([]);
  });

  it("leaves out lots of unknown year, and says how many they are", () => {
    const undated = lot({ year: null, yearFirst: null, yearLast: null });
    expect(diversityByYear([undated])).toEqual([]);
    expect(withoutYear([undated, lot({})])).toBe(1);
  });

  it("is drawn from 50 % up where nothing lies below 75 %", () => {
    expect(floorOf(diversityByYear([lot({}, 0.9)]))).toBe(0.5);
    expect(floorOf(diversityByYear([lot({}, 0.7)]))).toBe(0);
  });
});

describe("germination by year", () => {
  it("is one series a lot, each test with its span", () => {
    const test = (name: string, of: string, onFirst: string): TestOfVariety => ({
      id: name,
      name,
      lotId: of,
      lot: of,
      on: onFirst,
      onFirst,
      onLast: onFirst,
      sown: 50,
      normal: 32,
      germination: 0.64,
      low: 0.49,
      high: 0.77,
    });
    const series = germinationByYear([
      test("T1", "A", "2000-02-14"),
      test("T2", "A", "2003-02-14"),
      test("T3", "B", "2001-02-14"),
    ]);
    expect(series.map((each) => [each.name, each.points.length])).toEqual([
      ["A", 2],
      ["B", 1],
    ]);
    expect(series[0]?.points[0]?.words).toContain("32 of 50");
  });
});

describe("diversity kept in words", () => {
  it("is a percentage only where it says something", () => {
    expect(keptWords("counted", 0.961)).toBe("96\u00a0%");
    expect(keptWords("uniform", 1)).toBe("uniform");
    expect(keptWords("clonal", null)).toBe("kept by division");
    expect(keptWords("lines not known", 0.9)).toBe("unknown");
  });

  it("comes with what would make it known", () => {
    expect(whyNotKept("counted")).toBeNull();
    expect(whyNotKept("lines not known")).toContain("one line or many");
    expect(whyNotKept("plants not known")).toContain("seed parents");
    expect(whyNotKept("clonal")).toContain("no lineage");
  });
});
