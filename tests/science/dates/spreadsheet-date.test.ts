import { describe, expect, it } from "vitest";
import { recogniseSpreadsheetDate } from "@/lib/science/dates/spreadsheet-date";

describe("a date that a spreadsheet has changed", () => {
  // Days of the 1900 date system: 1 = 1900-01-01 with a 29 February 1900 that never was, so 61 = 1900-03-01;
  // 25569 = 1970-01-01 and 36526 = 2000-01-01 are published fixed points of it.
  it.each([
    ["25569", ["1970-01-01"]],
    ["36526", ["2000-01-01"]],
    ["20/05/1987", ["1987-05-20"]],
    ["05/06/1987", ["1987-06-05", "1987-05-06"]],
    ["05/05/87", ["1987-05-05"]],
    ["5/20/29", ["2029-05-20"]],
    ["5/20/30", ["1930-05-20"]],
    ["May-20", []],
    ["########", []],
  ])("%s can have been %j", (text, probably) => {
    expect(recogniseSpreadsheetDate(text)).toEqual({ probably });
  });

  it.each(["1987", "about 1991", "19x7", "12", "123456", "jar-12", ""])("is not %j", (text) => {
    expect(recogniseSpreadsheetDate(text)).toBeNull();
  });
});
