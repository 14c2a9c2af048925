import { expect, it } from "vitest";
import { intervalOfCounts } from "@/lib/registry/germination-tests/interval-of-counts";

// By hand from the definition: 18 or more of 20 come up with chance 0.025 at 0.6830, 18 or fewer at 0.9877; 0 of 20 at 1 − 0.025^(1/20) = 0.1684.
it("is the exact interval, the first time and when it is known", () => {
  for (const _time of [1, 2]) {
    const { low, high } = intervalOfCounts(18, 20);
    expect([low, high].map((end) => Number(end.toFixed(4)))).toEqual([0.683, 0.9877]);
    expect(Number(intervalOfCounts(0, 20).high.toFixed(4))).toBe(0.1684);
  }
});

it("does not take one count for another whose digits run together alike", () => {
  expect(intervalOfCounts(1, 20).low).not.toBe(intervalOfCounts(12, 20).low);
  expect(intervalOfCounts(1, 12).high).not.toBe(intervalOfCounts(11, 12).high);
});
