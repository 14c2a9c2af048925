import { expect, it } from "vitest";
import { keepersThroughYears } from "@/lib/registry/varieties/keepers-through-years";
import { mayLeaveCircle } from "@/lib/registry/varieties/read-biography";

const lot = (
  holderId: string | null,
  yearFirst: string | null,
  yearLast = yearFirst,
  gramsOnHand: number | null = null,
) => ({
  ...{ holderId, yearFirst, yearLast, gramsOnHand },
});
const grown = (stewardId: string | null, day: string | null) => ({ stewardId, sownFirst: day, sownLast: day });

// Read off by hand: each keeper's years are the first and the last of all days that anything of theirs tells of.
it("tells who kept a variety from when to when, the earliest first, the undated last", () => {
  const lots = [
    lot("osk", "2001-01-01", "2001-12-31", 12),
    lot("halda", "1980-01-01", "1989-12-31"),
    lot("nobody dated", null),
    lot(null, "1950-01-01"),
  ];
  const growOuts = [
    grown("halda", "1994-05-02"),
    grown("osk", "1999-04-20"),
    grown("osk", "2003-05-01"),
    grown(null, null),
  ];
  expect(keepersThroughYears(lots, growOuts)).toEqual([
    { stewardId: "halda", from: 1980, to: 1994, lots: 1, growOuts: 1, hasSeed: false },
    { stewardId: "osk", from: 1999, to: 2003, lots: 1, growOuts: 2, hasSeed: true },
    { stewardId: "nobody dated", from: null, to: null, lots: 1, growOuts: 0, hasSeed: false },
  ]);
});

it("tells nothing of a variety that nobody is on record for", () => {
  expect(keepersThroughYears([lot(null, "1950-01-01")], [])).toEqual([]);
});

it("lets a story leave the circle only where its teller agreed to more than the circle", () => {
  const may = [null, "may be shared in the circle", "Circle only", "anybody may read it"].map((consent) =>
    mayLeaveCircle({ consent }),
  );
  expect(may).toEqual([false, false, false, true]);
});
