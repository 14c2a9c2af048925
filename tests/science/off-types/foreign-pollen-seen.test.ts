import { describe, expect, it } from "vitest";
import { type ForeignPollenSeenInput, foreignPollenSeen } from "@/lib/science/off-types/foreign-pollen-seen";
import { answered, pathsOf } from "../agreement";

describe("the share of seeds with a foreign father", () => {
  it("6 of 400 from a uniform neighbour is 1.5 %, 0.55 % to 3.24 % (exact, worked out by an independent program)", () => {
    const seen = answered(foreignPollenSeen({ sampled: 400, found: 6 }));
    expect(seen.share).toBe(0.015);
    expect(seen.interval.low).toBeCloseTo(0.005524109504580662, 9);
    expect(seen.interval.high).toBeCloseTo(0.032361294480775016, 9);
    expect(seen.assumed.map(({ code }) => code)).toEqual(["uniform-neighbour", "confidence-95"]);
  });

  it("none of 300 is at most 1 − 0.05^(1/300), by hand 0.99 %", () => {
    const seen = answered(foreignPollenSeen({ sampled: 300, found: 0 }));
    expect(seen.share).toBe(0);
    expect(seen.upperBound).toBeCloseTo(0.0099363, 6);
  });

  it("a mark on half of the foreign pollen doubles share and bounds, up to 1", () => {
    const seen = answered(foreignPollenSeen({ sampled: 400, found: 6, carrying: 0.5 }));
    expect(seen.share).toBe(0.03);
    expect(seen.interval.low).toBeCloseTo(2 * 0.005524109504580662, 9);
    expect(seen.interval.high).toBeCloseTo(2 * 0.032361294480775016, 9);
    const most = answered(foreignPollenSeen({ sampled: 10, found: 9, carrying: 0.9 }));
    expect([most.share, most.interval.high, most.upperBound]).toEqual([1, 1, 1]);
  });

  it("more marked seeds than such pollen could give are no share", () => {
    expect(answered(foreignPollenSeen({ sampled: 10, found: 8, carrying: 0.5 })).share).toBeNull();
  });

  it.each<[string, ForeignPollenSeenInput, string[]]>([
    ["nothing looked at", { sampled: 0, found: 0 }, ["sampled"]],
    ["more found than looked at", { sampled: 10, found: 11 }, ["found"]],
    ["half a seed", { sampled: 10, found: 0.5 }, ["found"]],
    ["a mark that no foreign pollen carries", { sampled: 10, found: 1, carrying: 0 }, ["carrying"]],
    ["a mark on more than all of it", { sampled: 10, found: 1, carrying: 1.5 }, ["carrying"]],
    ["certainty", { sampled: 10, found: 1, confidence: 1 }, ["confidence"]],
  ])("%s is refused at its place", (_, input, path) => {
    expect(pathsOf(foreignPollenSeen(input))).toEqual([path]);
  });
});
