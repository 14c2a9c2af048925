import { describe, expect, it } from "vitest";
import { type FloweringWindow, windowDays, windowOverlap } from "@/lib/science/isolation/flowering-window";

const end = (first: string | null, last = first) => (first === null || last === null ? null : { first, last });
const days = (from: string | null, to: string | null): FloweringWindow => ({ from: end(from), to: end(to) });

describe("the days that two windows have in common", () => {
  it("are counted with both ends: 10 to 20 July and 16 to 25 July share five days", () => {
    expect(windowOverlap(days("2026-07-10", "2026-07-20"), days("2026-07-16", "2026-07-25"))).toEqual({
      least: 5,
      most: 5,
    });
    expect(windowOverlap(days("2026-07-10", "2026-07-20"), days("2026-07-20", "2026-07-25"))).toEqual({
      least: 1,
      most: 1,
    });
  });

  it("are none, for sure, where one is over before the other begins, over the turn of a year too", () => {
    const none = { least: 0, most: 0 };
    expect(windowOverlap(days("2026-07-10", "2026-07-20"), days("2026-07-21", "2026-07-25"))).toEqual(none);
    expect(windowOverlap(days("2026-12-20", "2027-01-04"), days("2027-01-05", null))).toEqual(none);
    expect(windowOverlap(days(null, "2026-07-20"), days("2026-07-21", null))).toEqual(none);
  });

  it("have no bound where an unknown end is the only one", () => {
    expect(windowOverlap(days("2026-07-10", null), days("2026-07-12", null))).toEqual({ least: 0, most: null });
    expect(windowOverlap(days(null, null), days("2026-07-12", "2026-07-14"))).toEqual({ least: 0, most: 3 });
    expect(windowOverlap(days(null, null), days(null, null))).toEqual({ least: 0, most: null });
  });

  it("are bounded by the end that is known: began on the 12th, ours ended on the 14th", () => {
    expect(windowOverlap(days("2026-07-10", "2026-07-14"), days("2026-07-12", null))).toEqual({ least: 1, most: 3 });
  });

  it("are a span where an end is known by the month alone", () => {
    const july: FloweringWindow = { from: end("2026-07-01", "2026-07-31"), to: end("2026-08-05") };
    expect(windowOverlap(july, days("2026-07-20", "2026-08-02"))).toEqual({ least: 3, most: 14 });
    expect(windowDays(july)).toEqual({ least: 6, most: 36 });
  });
});
