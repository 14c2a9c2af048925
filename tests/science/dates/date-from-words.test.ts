import { describe, expect, it } from "vitest";
import { dateFromWords } from "@/lib/science/dates/date-from-words";
import { parseDate } from "@/lib/science/dates/parse-date";

describe("a date in a person's words", () => {
  // what each means by the standard, ISO 8601-2:2019 level 1: months, seasons 21 to 24, ~ about, ? doubtful, X any digit
  it.each([
    ["June 1994", "1994-06"],
    ["Sept. 1994", "1994-09"],
    ["about 1960", "1960~"],
    ["c. 1975", "1975~"],
    ["ca 1975", "1975~"],
    ["1960ish", "1960~"],
    ["1960 or so", "1960~"],
    ["about June 1994", "1994-06~"],
    ["maybe 1994", "1994?"],
    ["1994, I think", "1994?"],
    ["1983(?)", "1983?"],
    ["perhaps about 1994", "1994%"],
    ["20 May 1987", "1987-05-20"],
    ["1st of May 1987", "1987-05-01"],
    ["May 20th, 1987", "1987-05-20"],
    ["20/5/1987", "1987-05-20"],
    ["5/20/1987", "1987-05-20"],
    ["20.5.1987", "1987-05-20"],
    ["5/1987", "1987-05"],
    ["Spring of 1988", "1988-21"],
    ["fall 1988", "1988-23"],
    ["the eighties", "198X"],
    ["1980s", "198X"],
    ["early eighties", "[1980..1983]"],
    ["mid-1980s", "[1984..1986]"],
    ["late 1980s", "[1987..1989]"],
    ["between 1987 and 1991", "[1987..1991]"],
    ["1987 or 1988", "[1987..1988]"],
    ["1987 to 1991", "1987/1991"],
    ["since 1987", "1987/.."],
  ])("%s", (text, edtf) => {
    expect(dateFromWords(text)).toBe(edtf);
    expect(parseDate(edtf).ok).toBe(true);
  });

  it.each([
    "5/6/1987",
    "'87",
    "87",
    "the twenties",
    "May 87",
    "last year",
    "about",
    "maybe",
    "1987-91",
    "34500",
    "Mayhem 1994",
    "",
    "about the eighties or so then",
  ])("%s means no one date", (text) => expect(dateFromWords(text)).toBeNull());
});
