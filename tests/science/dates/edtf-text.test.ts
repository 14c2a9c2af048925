import { describe, expect, it } from "vitest";
import { readEdtfPoint, readEdtfText } from "@/lib/science/dates/edtf-text";

const plain = { month: null, day: null, approximate: false, uncertain: false };

describe("the shape of an EDTF text", () => {
  it("is one date with its marks", () => {
    expect(readEdtfPoint("1987-05-20")).toEqual({ ...plain, year: "1987", month: "05", day: "20" });
    expect(readEdtfPoint("1987-05-XX~")).toEqual({ ...plain, year: "1987", month: "05", day: "XX", approximate: true });
    expect(readEdtfPoint("19XX%")).toEqual({ ...plain, year: "19XX", approximate: true, uncertain: true });
    // the shape alone: that no month is 45 is not looked at here
    expect(readEdtfPoint("1987-45")).toEqual({ ...plain, year: "1987", month: "45" });
  });

  it("is an interval with its ends, or one date within two", () => {
    const [from, to] = [
      { ...plain, year: "1987" },
      { ...plain, year: "1991" },
    ];
    expect(readEdtfText("1987/1991")).toEqual({ kind: "interval", from, to });
    expect(readEdtfText("1987/..")).toEqual({ kind: "interval", from, to: "open" });
    expect(readEdtfText("/1991")).toEqual({ kind: "interval", from: "unknown", to });
    expect(readEdtfText("[1987..1991]")).toEqual({ kind: "within", from, to });
    expect(readEdtfText("1987")).toEqual({ kind: "point", point: from });
  });

  it.each([
    "",
    "87",
    "198x",
    "X987",
    "198X-05",
    "1987-XX-20",
    "1987-5",
    "../..",
    "[1987..]",
    "1987//1991",
    "1987/1988/1989",
  ])("is not that of %j", (text) => {
    expect(readEdtfText(text)).toBeNull();
  });
});
