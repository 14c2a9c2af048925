import { expect, it } from "vitest";
import { changeTitle } from "@/lib/display/change-title";

it.each([
  ["Lot M 3: given 2500 g, 2026-11-20", "Lot M 3: given 2,500 g, 20 November 2026"],
  ["Taken back: Lot M 3: given 12 g, 1991-05~", "Taken back: Lot M 3: given 12 g, about May 1991"],
  [
    "Grow-out Oak: looked for neighbours on 2026-06-01, 2 found",
    "Grow-out Oak: looked for neighbours on 1 June 2026, 2 found",
  ],
  ["Brought in: 1200 lots, 100000 entries", "Brought in: 1,200 lots, 100,000 entries"],
  ["Harvest of Rye 1994: lot 2024-05", "Harvest of Rye 1994: lot 2024-05"],
  ["Lot 2024-05-01: ledger entry corrected", "Lot 2024-05-01: ledger entry corrected"],
  ["Notebook of Ash 1200", "Notebook of Ash 1200"],
])("%s", (stored, read) => {
  expect(changeTitle(stored)).toBe(read);
});
