import { describe, expect, it } from "vitest";
import {
  comparedInWords,
  inAHundred,
  spreadInWords,
  standardInWords,
  testInWords,
} from "@/app/tests/_words/reading-in-words";

describe("a germination test in words", () => {
  it("says the counts first, then what they mean for the jar", () => {
    // Clopper-Pearson 95 % of 18/20: 68.3 to 98.8
    const interval = { low: 0.683, high: 0.9877 };
    expect(testInWords({ sown: 20, normal: 18, basis: null, interval })).toBe(
      "18 of 20 came up: between 68 and 99 in a hundred",
    );
    expect(testInWords({ sown: 20, normal: 18, basis: "sprouted", interval })).toContain("18 of 20 sprouted");
  });

  it("never says 100 or 0 in a hundred where it is not quite that", () => {
    expect([inAHundred(1), inAHundred(0.9985), inAHundred(0.99996), inAHundred(0.0004), inAHundred(0)]).toEqual([
      "100",
      "99.9",
      "99.9",
      "0.1",
      "0",
    ]);
  });

  it("says that a difference cannot be told, or by how much it fell", () => {
    const earlier = { on: "1999-03", sown: 50, normal: 47 };
    const same = comparedInWords({ changed: false, difference: -0.14, interval: { low: -0.28, high: 0 }, earlier });
    expect(same).toBe("It cannot be told from the test before it (47 of 50, March 1999).");
    const fallen = comparedInWords({ changed: true, difference: -0.3, interval: { low: -0.45, high: -0.12 }, earlier });
    expect(fallen).toContain("by 30 in a hundred, somewhere between 12 and 45");
  });

  it("holds it against the line for renewing, and says where it cannot tell", () => {
    const at = (verdict: "above" | "below" | "cannot tell") =>
      standardInWords({ value: 0.7, probabilityAbove: 0.5, verdict });
    expect(at("below")).toContain("below the line for renewing, 70 in a hundred");
    expect(at("cannot tell")).toContain("this test cannot tell");
  });

  it("says of replicates whether chance explains their differences", () => {
    expect(spreadInWords({ consistent: false }, 4)).toContain("four replicates differ by more than chance explains");
  });
});
