import { stringify } from "csv-stringify/sync";
import type { ListedTest } from "@/lib/registry/germination-tests/listed-tests";

const head = [
  "test",
  "lot",
  "variety",
  "crop",
  "set_up",
  "basis",
  "seeds_sown",
  "normal_seeds",
  "abnormal_seeds",
  "hard_seeds",
  "fresh_seeds",
  "dead_seeds",
  "germination_share",
  "exact_low_share",
  "exact_high_share",
  "last_count_day",
  "stands",
  "note",
];

/** The list of tests as a table: what was counted in seeds, shares 0 to 1 with their exact 95 % interval; empty is not known. */
export function testsCsv(tests: readonly ListedTest[]): string {
  const rows = tests.map(({ name, lot, variety, crop, on, basis, totals, germination, note }) => [
    name,
    lot.number,
    variety.name,
    crop.name,
    on,
    basis ?? "",
    totals.sown,
    totals.counted ? (totals.sums.normal ?? "") : "",
    totals.sums.abnormal ?? "",
    totals.sums.hard ?? "",
    totals.sums.fresh ?? "",
    totals.sums.dead ?? "",
    germination?.share ?? "",
    germination?.low ?? "",
    germination?.high ?? "",
    totals.lastDay ?? "",
    totals.stage,
    note ?? "",
  ]);
  // Text that a spreadsheet would run as a formula is marked with an apostrophe.
  return stringify([head, ...rows], { record_delimiter: "\r\n", escape_formulas: true });
}
