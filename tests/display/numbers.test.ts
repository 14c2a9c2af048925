import { describe, expect, it } from "vitest";
import {
  bytesInWords,
  effectiveSize,
  effectiveSizeSpan,
  grams,
  kOfN,
  percent,
  percentSpan,
  plainNumber,
  probability,
  rounded,
  seedsAbout,
  seedsCounted,
  significant,
  span,
  wholeNumber,
} from "@/lib/display/numbers";

/** Figures stand by their unit with a blank at which no line breaks; here an underscore shows it. */
const shown = (text: string) => text.replaceAll("\u00a0", "_");

describe("rounding", () => {
  it("is half away from zero and free of binary dust", () => {
    expect(rounded(1.005, 2)).toBe(1.01);
    expect(rounded(2.5, 0)).toBe(3);
    expect(rounded(-2.5, 0)).toBe(-3);
    expect(rounded(1e-9, 2)).toBe(0);
  });

  it("parts thousands by commas and uses a true minus", () => {
    expect(wholeNumber(1240)).toBe("1,240");
    expect(wholeNumber(999)).toBe("999");
    expect(plainNumber(-1240.55, 1)).toBe("−1,240.6");
    expect(plainNumber(-0.2, 0)).toBe("0");
  });

  it("keeps two significant figures, and the zero that is one of them", () => {
    expect(significant(23.364)).toBe("23");
    expect(significant(5.015)).toBe("5.0");
    expect(significant(1238)).toBe("1,200");
    expect(significant(0.9417)).toBe("0.94");
    expect(significant(9.96)).toBe("10");
    expect(significant(99.6)).toBe("100");
    expect(significant(0)).toBe("0");
  });
});

describe("a percentage", () => {
  it("has at most one decimal", () => {
    expect(shown(percent(0.64))).toBe("64_%");
    expect(shown(percent(0.8753))).toBe("87.5_%");
    expect(shown(percent(0.8753, 0))).toBe("88_%");
  });

  it("is 0 or 100 only where it is exactly that", () => {
    expect(shown(percent(0))).toBe("0_%");
    expect(shown(percent(1))).toBe("100_%");
    expect(shown(percent(0.0004))).toBe("below_0.1_%");
    expect(shown(percent(0.9996))).toBe("above_99.9_%");
    expect(shown(percent(0.996, 0))).toBe("99.6_%");
    expect(shown(percent(0.004, 0))).toBe("0.4_%");
  });

  it("is unknown where nothing is known", () => {
    expect(percent(null)).toBe("unknown");
    expect(percentSpan(null, null)).toBe("unknown");
  });

  it("of a span gives both ends in whole figures", () => {
    expect(shown(percentSpan(0.6432, 0.8791))).toBe("64–88_%");
    // Clopper-Pearson of 32 of 50
    expect(shown(percentSpan(0.4919313523, 0.7708429332))).toBe("49–77_%");
    expect(shown(percentSpan(0.642, 0.644))).toBe("64.2–64.4_%");
    expect(shown(percentSpan(0.64, 0.64))).toBe("64_%");
    expect(shown(percentSpan(0, 1))).toBe("0–100_%");
    expect(shown(percentSpan(0.0012, 0.9985))).toBe("0.1–99.9_%");
    expect(shown(percentSpan(null, 0.5))).toBe("at most 50_%");
    expect(shown(percentSpan(0.5, null))).toBe("at least 50_%");
  });

  it("comes after the counts that made it", () => {
    expect(shown(kOfN(32, 50))).toBe("32 of 50 (64_%)");
    expect(kOfN(0, 0)).toBe("0 of 0");
  });
});

describe("an effective size", () => {
  it("has two significant figures, or is unknown", () => {
    expect(effectiveSize(23.364)).toBe("23");
    expect(effectiveSize(null)).toBe("unknown");
    expect(effectiveSizeSpan(12.4, 23.364)).toBe("12–23");
    expect(effectiveSizeSpan(12.4, 12.4)).toBe("12");
    expect(effectiveSizeSpan(12.4, null)).toBe("at least 12");
    expect(effectiveSizeSpan(null, null)).toBe("unknown");
  });
});

describe("weights and seeds", () => {
  it("show as much of a gram as its size deserves", () => {
    expect(shown(grams(0.84))).toBe("0.84_g");
    expect(shown(grams(6.8))).toBe("6.8_g");
    expect(shown(grams(168.84))).toBe("168.8_g");
    expect(shown(grams(2400.4))).toBe("2,400_g");
    expect(shown(grams(0))).toBe("0_g");
    expect(shown(grams(0.0421))).toBe("0.042_g");
    expect(shown(grams(0.0001))).toBe("0.0001_g");
    expect(shown(grams(0.00004))).toBe("below_0.0001_g");
    expect(grams(null)).toBe("unknown");
  });

  it("tell seeds that were counted from seeds that were worked out", () => {
    expect(shown(seedsCounted(1236))).toBe("1,236_seeds");
    expect(shown(seedsCounted(1))).toBe("1_seed");
    expect(shown(seedsAbout(1236.4))).toBe("about 1,240_seeds");
    expect(shown(seedsAbout(42.3))).toBe("about 42_seeds");
    expect(shown(seedsAbout(0))).toBe("0_seeds");
    expect(shown(seedsAbout(0.4))).toBe("less than 1_seed");
    expect(seedsAbout(null)).toBe("unknown");
  });

  it("join the ends of a span by a dash, of a span below zero by a word", () => {
    expect(shown(span(1104, 1396, "seeds"))).toBe("1,100–1,400_seeds");
    expect(shown(span(4, 4, "plants"))).toBe("4_plants");
    expect(shown(span(-2, 3, "g"))).toBe("−2 to 3_g");
    expect(shown(span(null, 12, "plants"))).toBe("at most 12_plants");
    expect(shown(span(12, null, "plants"))).toBe("at least 12_plants");
  });
});

describe("other figures", () => {
  it("never show a probability as 0 or 1 that is not", () => {
    expect(probability(0.0312)).toBe("0.03");
    expect(probability(0.0042)).toBe("0.004");
    expect([0.0494, 0.0519, 0.056].map(probability)).toEqual(["0.049", "0.052", "0.06"]);
    expect(probability(0.00001)).toBe("below 0.001");
    expect(probability(0.99999)).toBe("above 0.999");
    expect(probability(null)).toBe("unknown");
  });

  it("word the size of a file", () => {
    expect(shown(bytesInWords(840))).toBe("840_bytes");
    expect(shown(bytesInWords(12_400))).toBe("12_kB");
    expect(shown(bytesInWords(3_440_000))).toBe("3.4_MB");
    expect(shown(bytesInWords(64_000_000))).toBe("64_MB");
    expect(shown(bytesInWords(2_300_000_000))).toBe("2.3_GB");
    expect(shown(bytesInWords(79_000_000_000))).toBe("79_GB");
  });
});
