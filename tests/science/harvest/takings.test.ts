import { describe, expect, it } from "vitest";
import { cappedTaking } from "@/lib/science/harvest/capped-taking";
import { coefficientOfVariation } from "@/lib/science/harvest/coefficient-of-variation";
import { equalSeedParents } from "@/lib/science/harvest/equal-seed-parents";
import { equalTakings } from "@/lib/science/harvest/equal-takings";
import { heaviestShare } from "@/lib/science/harvest/heaviest-share";

const codes = (outcome: { ok: true } | { ok: false; refusals: readonly { code: string }[] }) =>
  outcome.ok ? [] : outcome.refusals.map(({ code }) => code);

// Every number was worked out by hand.
describe("equal takings", () => {
  it("are as large as the smallest bag that is not left out", () => {
    expect(equalTakings([6, 2, 10])).toEqual({
      ok: true,
      value: [
        { leftOut: 0, bags: 3, each: 2, total: 6 },
        { leftOut: 1, bags: 2, each: 6, total: 12 },
      ],
    });
  });

  it("leave nothing out where all bags are alike", () => {
    const alike = equalTakings([4, 4, 4]);
    expect(alike.ok && alike.value).toEqual([{ leftOut: 0, bags: 3, each: 4, total: 12 }]);
  });

  it("are refused of no bag, and of an empty one", () => {
    expect(codes(equalTakings([]))).toEqual(["no-bags"]);
    expect(codes(equalTakings([3, 0]))).toEqual(["out-of-range"]);
  });
});

describe("a capped taking", () => {
  it("takes small bags whole and the same of all others", () => {
    const taking = cappedTaking([2, 6, 10], 12);
    expect(taking.ok && taking.value).toEqual({ cap: 5, takings: [2, 5, 5], whole: 1 });
    const evenly = cappedTaking([2, 6, 10], 3);
    expect(evenly.ok && evenly.value).toEqual({ cap: 1, takings: [1, 1, 1], whole: 0 });
    const all = cappedTaking([2, 6, 10], 18);
    expect(all.ok && all.value.takings).toEqual([2, 6, 10]);
  });

  it("is refused where more is wanted than lies there, or nothing", () => {
    expect(codes(cappedTaking([2, 6], 9))).toEqual(["more-than-held"]);
    expect(codes(cappedTaking([2, 6], 0))).toEqual(["out-of-range"]);
  });
});

describe("how unlike seed parents gave", () => {
  it("is the share of the heaviest, and the equal ones that they count as", () => {
    expect(heaviestShare([5, 90, 5], 1)).toBeCloseTo(0.9, 12);
    expect(heaviestShare([0, 0], 1)).toBeNull();
    // 100² / (90² + 5² + 5²) = 10000/8150
    expect(equalSeedParents([5, 90, 5])).toBeCloseTo(10000 / 8150, 12);
    expect(equalSeedParents([4, 4, 4, 4])).toBe(4);
    expect(equalSeedParents([])).toBeNull();
    expect(equalSeedParents([1e200, 1e200])).toBe(2);
  });

  it("is a spread over their mean, of all of them", () => {
    expect(coefficientOfVariation([1, 3])).toBeCloseTo(0.5, 12);
    expect(coefficientOfVariation([7, 7])).toBe(0);
    expect(coefficientOfVariation([])).toBe(0);
  });
});
