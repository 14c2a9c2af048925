import { expect, it } from "vitest";
import { expectedDays } from "@/lib/science/crops/expected-days";

// By hand on a calendar: 10 May + 22 days are 1 June (May has 31 days); 31 May + 30 days are 30 June.
it("reaches from the first day of sowing and the fewest days to the last day and the most", () => {
  const sown = { first: "2026-05-10", last: "2026-05-31" };
  expect(expectedDays(sown, { min: 22, max: 30 })).toEqual({ first: "2026-06-01", last: "2026-06-30" });
});

it("passes the leap day and the turn of the year", () => {
  // 2028 is a leap year: 20 February + 10 days are 1 March. 2 December + 30 days are 1 January.
  expect(expectedDays({ first: "2028-02-20", last: "2028-12-02" }, { min: 10, max: 30 })).toEqual({
    first: "2028-03-01",
    last: "2029-01-01",
  });
});

it("is not known where the sowing or the days are not, and does not leave the calendar", () => {
  const sown = { first: "2026-05-10", last: "2026-05-10" };
  expect(expectedDays(null, { min: 1, max: 2 })).toBeNull();
  expect(expectedDays(sown, { min: null, max: 2 })).toBeNull();
  expect(expectedDays(sown, { min: 1, max: null })).toBeNull();
  expect(expectedDays({ first: "9999-12-01", last: "9999-12-31" }, { min: 1, max: 40 })).toBeNull();
});
