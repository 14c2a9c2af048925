import { describe, expect, it } from "vitest";
import { splitRecords } from "@/lib/exchange/notebook-folder/split-records";

const split = (text: string) => {
  const { records, broken } = splitRecords(text, ",");
  return { records: records.map(({ line, cells }) => [line, ...cells]), broken };
};

describe("CSV text", () => {
  it("is split by RFC 4180: quoted cells may hold commas, quote marks and line breaks", () => {
    expect(split('a,"b,c"\r\n"x ""y""","1\r\n2"\r\nlast,')).toEqual({
      records: [
        [1, "a", "b,c"],
        [2, 'x "y"', "1\r\n2"],
        [3, "last", ""],
      ],
      broken: [],
    });
  });

  it("counts records with nothing in them and leaves them out", () => {
    expect(split("a,b\n\n,\n  , \nc,d\n\n").records).toEqual([
      [1, "a", "b"],
      [5, "c", "d"],
    ]);
  });

  it("names the line whose quote never closes", () => {
    expect(split('a,b\nc,d\ne,"f\ng,h').broken).toEqual([3]);
  });

  it("names the line whose quote closes in the middle of another cell, and counts what it swallowed", () => {
    expect(split('a,b\nc,"d\ne,"f"\ng,h')).toEqual({
      records: [
        [1, "a", "b"],
        [4, "g", "h"],
      ],
      broken: [2],
    });
  });

  it("of a long quoted cell is no trouble", () => {
    const long = 'x""'.repeat(300_000);
    expect(split(`a,"${long}"`).records[0]?.[2]).toHaveLength(600_000);
  });
});
