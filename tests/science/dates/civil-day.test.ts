import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addDays,
  addYears,
  compareDays,
  dayFromNumber,
  dayNumber,
  daysBetween,
  isCivilDay,
  splitCivilDay,
} from "@/lib/science/dates/civil-day";

const anyDay = fc.integer({ min: -719_528, max: 2_932_896 }).map(dayFromNumber);

describe("civil days", () => {
  it("are only those of the calendar", () => {
    expect(["1987-05-20", "2000-02-29", "0000-02-29", "9999-12-31"].every(isCivilDay)).toBe(true);
    expect(["1987-02-29", "1900-02-29", "1987-5-20", "1987-00-10", "1987-04-31", "1987", ""].some(isCivilDay)).toBe(
      false,
    );
    expect(splitCivilDay("1987-05-20")).toEqual({ year: 1987, month: 5, day: 20 });
  });

  // Known day numbers: 1970-01-01 = 0 (Unix epoch), 2000-03-01 = 11017, 0000-01-01 = -719528, 9999-12-31 = 2932896.
  it.each([
    ["1970-01-01", 0],
    ["2000-03-01", 11_017],
    ["0000-01-01", -719_528],
    ["9999-12-31", 2_932_896],
  ])("%s has the number %i", (day, number) => {
    expect(dayNumber(day)).toBe(number);
    expect(dayFromNumber(number)).toBe(day);
  });

  it("are counted across months, years and leap days", () => {
    expect(daysBetween("1987-12-31", "1988-01-01")).toBe(1);
    expect(daysBetween("1988-02-28", "1988-03-01")).toBe(2);
    expect(daysBetween("1900-02-28", "1900-03-01")).toBe(1);
    expect(daysBetween("1988-01-01", "1987-01-01")).toBe(-365);
    expect(addDays("2024-02-28", 1)).toBe("2024-02-29");
    expect(addDays("2024-03-01", -1)).toBe("2024-02-29");
    expect(addYears("2024-02-29", 1)).toBe("2025-02-28");
    expect(addYears("1987-05-20", 4)).toBe("1991-05-20");
  });

  it("agree with UTC arithmetic of the platform on every day tried", () => {
    fc.assert(
      fc.property(fc.integer({ min: -719_162, max: 2_932_896 }), (number) => {
        expect(dayFromNumber(number)).toBe(new Date(number * 86_400_000).toISOString().slice(0, 10));
      }),
    );
  });

  it("come back after going there, and keep their order as text", () => {
    fc.assert(
      fc.property(anyDay, anyDay, (left, right) => {
        expect(addDays(left, daysBetween(left, right))).toBe(right);
        expect(Math.sign(compareDays(left, right))).toBe(Math.sign(dayNumber(left) - dayNumber(right)));
      }),
    );
  });

  it("throw at a text that is no day, a fault of the calling code", () => {
    expect(() => addDays("1987-02-30", 1)).toThrow(RangeError);
    expect(() => addDays("9999-12-31", 1)).toThrow(RangeError);
  });
});
