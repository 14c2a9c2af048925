import { describe, expect, it } from "vitest";
import {
  readCount,
  readDecimalWithin,
  readName,
  readOneOf,
  readScore,
  readSeedShares,
} from "@/lib/schemas/notebook/cells";

describe("a name", () => {
  it("is trimmed, composed and has single blanks", () => {
    expect(readName("  E\u0301lan\u00a0 Crest\n", ".")).toEqual({ ok: true, value: "Élan Crest" });
  });
});

describe("a word among a few", () => {
  const read = readOneOf(["yes", "no"]);
  it("is read as it stands", () => {
    expect(read(" yes ", ".")).toEqual({ ok: true, value: "yes" });
  });
  it("is asked about in another letter case, and listed otherwise", () => {
    const [capital, other] = [read("Yes", "."), read("perhaps", ".")];
    expect(!capital.ok && capital.refusals[0]?.needed).toBe("did you mean yes?");
    expect(!other.ok && other.refusals[0]?.sentence).toBe('"perhaps" is not known here; write yes or no');
  });
});

describe("a number within limits", () => {
  it("says the limits where it is outside", () => {
    const read = readDecimalWithin({ atLeast: 0, atMost: 1 })("1.7", ".");
    expect(!read.ok && read.refusals[0]?.sentence).toBe("1.7 is too large; write a number from 0 to 1");
  });
  it("may be at a limit that is included, not at one that is not", () => {
    expect(readDecimalWithin({ atLeast: 0 })("0", ".").ok).toBe(true);
    expect(readDecimalWithin({ above: 0 })("0", ".").ok).toBe(false);
  });
});

describe("a count", () => {
  it("is whole, and no more than both databases store", () => {
    expect(readCount(0)("0", ".")).toEqual({ ok: true, value: 0 });
    expect(readCount(1)("25.0", ".")).toEqual({ ok: true, value: 25 });
    expect(readCount(1)("0", ".").ok).toBe(false);
    expect(readCount(0)("2.5", ".").ok).toBe(false);
    expect(readCount(0)("2147483647", ".").ok).toBe(true);
    expect(readCount(0)("2147483648", ".").ok).toBe(false);
  });
});

describe("seed shares", () => {
  it("are equal, by plants or a coefficient of variation", () => {
    expect(readSeedShares("equal", ".")).toEqual({ ok: true, value: "equal" });
    expect(readSeedShares("plants", ".")).toEqual({ ok: true, value: "plants" });
    expect(readSeedShares("cv 0.6", ".")).toEqual({ ok: true, value: { cv: 0.6 } });
    expect(readSeedShares("cv 0,6", ",")).toEqual({ ok: true, value: { cv: 0.6 } });
    for (const text of ["cv", "cv minus", "cv -1", "0.6", "Equal", "cv 1e3"])
      expect(readSeedShares(text, ".").ok).toBe(false);
  });
});

describe("a score", () => {
  it("is a number where it is one, else the words", () => {
    expect(readScore("7.0", ".")).toBe("7");
    expect(readScore("4,5", ",")).toBe("4.5");
    expect(readScore(" deep red ", ".")).toBe("deep red");
  });
});
