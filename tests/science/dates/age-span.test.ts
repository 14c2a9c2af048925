import { describe, expect, it } from "vitest";
import { ageSpan, yearsBetween, yearsFromDayToDay } from "@/lib/science/dates/age-span";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";

function read(text: string): FuzzyDate {
  const outcome = parseDate(text);
  if (!outcome.ok) throw new Error(outcome.refusals[0]?.sentence);
  return outcome.value;
}

// Worked by hand: whole years by anniversaries, then days over the days of that year (366 from 1987-03-01 to 1988-03-01).
describe("years between dates", () => {
  it("are whole at anniversaries", () => {
    expect(yearsFromDayToDay("1987-05-20", "1991-05-20")).toBe(4);
    expect(yearsFromDayToDay("1988-02-29", "1989-02-28")).toBe(1);
    expect(yearsFromDayToDay("1991-05-20", "1987-05-20")).toBe(-4);
  });

  it("take the year under way by its days", () => {
    expect(yearsFromDayToDay("1987-03-01", "1988-02-29")).toBeCloseTo(365 / 366, 12);
    expect(yearsFromDayToDay("1987-01-01", "1988-01-31")).toBeCloseTo(1 + 30 / 366, 12);
    expect(yearsFromDayToDay("9999-01-01", "9999-12-31")).toBeCloseTo(364 / 365, 12);
  });

  it("span from the closest to the farthest days", () => {
    const span = yearsBetween(read("198X"), read("1991"));
    expect(span.low).toBeCloseTo(1 + 1 / 365, 12);
    expect(span.low).toBeGreaterThan(1);
    expect(span.high).toBeCloseTo(11 + 364 / 365, 12);
  });
});

describe("age", () => {
  it("of a decade is a span of ten years", () => {
    const age = ageSpan(read("198X"), "2026-01-01");
    expect(age.high).toBe(46);
    expect(age.low).toBeCloseTo(36 + 1 / 365, 12);
  });

  it("of this year's lot begins at nothing", () => {
    const age = ageSpan(read("2023"), "2023-07-02");
    expect(age.low).toBe(0);
    expect(age.high).toBeCloseTo(182 / 365, 12);
  });

  it("of a date to come is nothing", () => {
    expect(ageSpan(read("2030"), "2023-07-02")).toEqual({ low: 0, high: 0 });
  });
});
