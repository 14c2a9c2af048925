import { describe, expect, it } from "vitest";
import { dateInWords, dayInWords, monthName } from "@/lib/display/dates";
import { parseDate } from "@/lib/science/dates/parse-date";

describe("a date in words", () => {
  it.each([
    ["1987", "1987"],
    ["1987-05", "May 1987"],
    ["1987-05-20", "20 May 1987"],
    ["1987-05-02", "2 May 1987"],
    ["1991~", "about 1991"],
    ["1991?", "1991, not sure"],
    ["1991%", "about 1991, not sure"],
    ["1987-05~", "about May 1987"],
    ["198X", "in the 1980s"],
    ["198X~", "about the 1980s"],
    ["198X?", "the 1980s, not sure"],
    ["19XX", "in the years 1900 to 1999"],
    ["190X~", "about the years 1900 to 1909"],
    ["1987-XX", "1987"],
    ["1987-05-XX", "May 1987"],
    ["1987-21", "spring 1987"],
    ["1987-24", "winter 1987"],
    ["1987/1991", "1987 to 1991"],
    ["1987~/1991", "about 1987 to 1991"],
    ["[1987..1991]", "between 1987 and 1991"],
    ["1987/..", "since 1987"],
    ["../1991", "until 1991"],
    ["1987/", "from 1987, end not known"],
    ["/1991", "until 1991, beginning not known"],
  ])("of %s is %s", (text, words) => {
    expect(parseDate(text).ok).toBe(true);
    expect(dateInWords(text)).toBe(words);
  });

  it("is made from a parsed date as from its text", () => {
    const date = parseDate("1991~");
    expect(date.ok && dateInWords(date.value)).toBe("about 1991");
    expect(dayInWords("2024-02-29")).toBe("29 February 2024");
  });

  it("of a text that is no date is that text", () => {
    expect(dateInWords("the year of the flood")).toBe("the year of the flood");
    expect(dateInWords("1987-45")).toBe("1987-45");
  });

  it("names twelve months", () => {
    expect([1, 5, 12, 13].map(monthName)).toEqual(["January", "May", "December", ""]);
  });
});
