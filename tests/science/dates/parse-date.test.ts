import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareByFirst } from "@/lib/science/dates/fuzzy-date";
import { type ParseDateOptions, parseDate } from "@/lib/science/dates/parse-date";

function read(text: string, options?: ParseDateOptions) {
  const outcome = parseDate(text, options);
  if (!outcome.ok) throw new Error(outcome.refusals[0]?.sentence);
  return outcome.value;
}

function sentence(text: string): string {
  const outcome = parseDate(text, { path: ["year"] });
  if (outcome.ok) throw new Error(`${text} was read as ${outcome.value.first} to ${outcome.value.last}`);
  expect(outcome.refusals[0]?.path).toEqual(["year"]);
  return outcome.refusals[0]?.sentence ?? "";
}

// First and last days written out by hand from a calendar and the definitions of ISO 8601-2:2019, level 0 and 1.
const READ: [text: string, first: string, last: string, precision: string][] = [
  ["1987", "1987-01-01", "1987-12-31", "year"],
  ["1987-05", "1987-05-01", "1987-05-31", "month"],
  ["1987-05-20", "1987-05-20", "1987-05-20", "day"],
  ["1988-02", "1988-02-01", "1988-02-29", "month"],
  ["1900-02", "1900-02-01", "1900-02-28", "month"],
  ["2000-02-29", "2000-02-29", "2000-02-29", "day"],
  ["198X", "1980-01-01", "1989-12-31", "decade"],
  ["19XX", "1900-01-01", "1999-12-31", "century"],
  ["1987-XX", "1987-01-01", "1987-12-31", "year"],
  ["1987-XX-XX", "1987-01-01", "1987-12-31", "year"],
  ["1987-05-XX", "1987-05-01", "1987-05-31", "month"],
  ["1987-21", "1987-03-01", "1987-05-31", "season"],
  ["1987-22", "1987-06-01", "1987-08-31", "season"],
  ["1987-23", "1987-09-01", "1987-11-30", "season"],
  ["1987-24", "1987-12-01", "1988-02-29", "season"],
  ["1987/1991", "1987-01-01", "1991-12-31", "interval"],
  ["1987-05/1987-08-03", "1987-05-01", "1987-08-03", "interval"],
  ["1987/1987-05", "1987-01-01", "1987-05-31", "interval"],
  ["1987/..", "1987-01-01", "1987-12-31", "interval"],
  ["../1991", "1991-01-01", "1991-12-31", "interval"],
  ["1987/", "1987-01-01", "1987-12-31", "interval"],
  ["/1991-05", "1991-05-01", "1991-05-31", "interval"],
  ["[1987..1991]", "1987-01-01", "1991-12-31", "within"],
  ["[1987-10..1988-03]", "1987-10-01", "1988-03-31", "within"],
  [" 1987 ", "1987-01-01", "1987-12-31", "year"],
];

describe("parseDate reads", () => {
  it.each(READ)("%s as %s to %s (%s)", (text, first, last, precision) => {
    expect(read(text)).toEqual({ text: text.trim(), first, last, precision, approximate: false, uncertain: false });
  });

  it.each([
    ["1991~", true, false],
    ["1991?", false, true],
    ["1991%", true, true],
    ["1991", false, false],
  ])("the mark of %s without widening the year", (text, approximate, uncertain) => {
    expect(read(text)).toMatchObject({ first: "1991-01-01", last: "1991-12-31", approximate, uncertain });
  });

  it("a mark at either end of an interval", () => {
    expect(read("1987~/1991")).toMatchObject({ approximate: true, uncertain: false, last: "1991-12-31" });
    expect(read("1987/1991?")).toMatchObject({ approximate: false, uncertain: true });
    expect(read("[1987~..1991]").approximate).toBe(true);
    expect(read("198X~")).toMatchObject({ approximate: true, precision: "decade" });
    expect(read("1987-21?")).toMatchObject({ uncertain: true, first: "1987-03-01" });
  });

  it("a southern season in the months of the south", () => {
    const months = ["21", "22", "23", "24"].map((code) => read(`1987-${code}`, { hemisphere: "south" }));
    expect(months.map((date) => [date.first, date.last])).toEqual([
      ["1987-09-01", "1987-11-30"],
      ["1987-12-01", "1988-02-29"],
      ["1987-03-01", "1987-05-31"],
      ["1987-06-01", "1987-08-31"],
    ]);
  });
});

describe("parseDate refuses", () => {
  it("other text with what would be right", () => {
    expect(sentence("19x7")).toBe('"19x7" is not a date; write it as 1987, 1987-05, 1991~ or 198X');
    expect(sentence("")).toBe("nothing is not a date; write it as 1987, 1987-05, 1991~ or 198X");
  });

  it.each([
    "about 1991",
    "198x",
    "1X87",
    "1987-0X",
    "198X-05",
    "1987-XX-20",
    "87",
    "1987~~",
    "1987/1988/1989",
    "../..",
    "/",
    "[1987..]",
    "[..1987]",
    "[1987,1988]",
    "{1987..1991}",
    "XXXX",
    "19 87",
    "?1987",
  ])("%s", (text) => {
    expect(sentence(text)).toContain("is not a date");
  });

  it("a day that no calendar has", () => {
    expect(sentence("1987-02-30")).toBe('"1987-02-30" is not a date; February 1987 has the days 01 to 28');
    expect(sentence("1987-02-29")).toContain("01 to 28");
    expect(sentence("1988-02-30")).toContain("01 to 29");
    expect(sentence("1987-04-31")).toContain("01 to 30");
    expect(sentence("1987-05-00")).toContain("01 to 31");
    expect(sentence("1987-13")).toContain("a month is 01 to 12, a season 21 (spring) to 24 (winter)");
    expect(sentence("1987-00")).toContain("a month is 01 to 12");
    expect(sentence("1987-21-03")).toContain("a month is 01 to 12");
    expect(sentence("1987/1987-02-30")).toContain("February 1987");
  });

  it("a span of years in notebook shorthand, and says how to write it", () => {
    expect(sentence("1987-91")).toBe('"1987-91" is not a date; for a span of years write 1987/1991');
  });

  it("an end before its beginning", () => {
    expect(sentence("1991/1987")).toContain("ends before it begins");
    expect(sentence("[1991..1987]")).toContain("ends before it begins");
  });

  it("years below 0000 and beyond 9999, and times of day", () => {
    expect(sentence("-0044")).toContain("outside 0000 to 9999");
    expect(sentence("Y17000")).toContain("outside 0000 to 9999");
    expect(sentence("1987-05-20T10:00:00Z")).toContain("1987-05-20");
  });

  // What a spreadsheet shows for these cells was worked out by hand; 32874 = 1990-01-01 in the 1900 date system.
  it.each([
    ["May-96", "1996-05"],
    ["96-May", "1996-05"],
    ["20/05/1987", "1987-05-20"],
    ["05/20/1987", "1987-05-20"],
    ["5/20/87", "1987-05-20"],
    ["20.05.1987", "1987-05-20"],
    ["20-May-87", "1987-05-20"],
    ["32874", "1990-01-01"],
    ["1987-5-2", "1987-05-02"],
    ["1987-5", "1987-05"],
    ["1987/05/20", "1987-05-20"],
    ["05/1987", "1987-05"],
    ["1987-05-20 00:00:00", "1987-05-20"],
    ["1987.0", "1987"],
    ["1,987", "1987"],
  ])("%s as changed by a spreadsheet, probably %s", (text, probably) => {
    expect(sentence(text)).toBe(
      `"${text}" looks changed by a spreadsheet; it was probably ${probably}: look, and write it so`,
    );
  });

  it("a changed date that can be two days, with both", () => {
    expect(sentence("05/06/1987")).toContain("it was 1987-06-05 or 1987-05-06");
  });

  it.each(["May-20", "20-May", "#####", "45/45/1987"])("%s as changed, with no guess", (text) => {
    expect(sentence(text)).toBe(`"${text}" looks changed by a spreadsheet; write it as 1987, 1987-05, 1991~ or 198X`);
  });

  it("a date in words, and says how to write it", () => {
    expect(sentence("20 May 1987")).toBe(
      '"20 May 1987" is a date in words; it was probably 1987-05-20: look, and write it so',
    );
    expect(sentence("May 1987")).toContain("1987-05");
    expect(sentence("Jar 1987")).toContain("is not a date");
  });
});

describe("for any date", () => {
  const years = fc.integer({ min: 0, max: 9998 }).map((year) => String(year).padStart(4, "0"));

  it("first is not after last, and the written day lies between", () => {
    fc.assert(
      fc.property(years, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }), (year, month, day) => {
        const two = (number: number) => String(number).padStart(2, "0");
        const exact = `${year}-${two(month)}-${two(day)}`;
        for (const text of [year, `${year.slice(0, 3)}X`, `${year.slice(0, 2)}XX`, `${year}-${two(month)}`, exact]) {
          const date = read(text);
          expect(date.first <= exact && exact <= date.last).toBe(true);
        }
      }),
    );
  });

  it("any text is answered, never thrown at", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[\dX~?%./[\]-]{0,14}$/)), (text) => {
        const outcome = parseDate(text);
        if (outcome.ok) expect(outcome.value.first <= outcome.value.last).toBe(true);
        else expect(outcome.refusals).toHaveLength(1);
      }),
      { numRuns: 2000 },
    );
  });

  it("order by first possible day puts the wider date later", () => {
    const sorted = ["1988", "198X", "1987-05", "1987", "1980"].map((text) => read(text)).sort(compareByFirst);
    expect(sorted.map((date) => date.text)).toEqual(["1980", "198X", "1987", "1987-05", "1988"]);
  });
});
