import { expect, it } from "vitest";
import { daysApart } from "@/lib/science/dates/days-apart";

const day = (first: string, last = first) => ({ first, last });

// Counted on a calendar.
it("counts the days between two days, backwards below nought", () => {
  expect(daysApart(day("2026-07-18"), day("2026-07-21"))).toEqual({ low: 3, high: 3 });
  expect(daysApart(day("2026-08-01"), day("2026-07-30"))).toEqual({ low: -2, high: -2 });
});

it("gives the fewest and the most where a date is not known to the day", () => {
  expect(daysApart(day("2026-07-18"), day("2026-08-01", "2026-08-31"))).toEqual({ low: 14, high: 44 });
});
