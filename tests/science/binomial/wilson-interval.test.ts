import { expect, it } from "vitest";
import { wilsonInterval } from "@/lib/science/binomial/wilson-interval";

// Newcombe 1998, Stat. Med. 17:857-872
it.each([
  [81, 263, "0.2553", "0.3662"],
  [15, 148, "0.0624", "0.1605"],
  [0, 20, "0.0000", "0.1611"],
  [1, 29, "0.0061", "0.1718"],
])("%d of %d lies within %s to %s", (x, n, low, high) => {
  const interval = wilsonInterval(x, n, 0.95);
  expect([interval.low.toFixed(4), interval.high.toFixed(4)]).toEqual([low, high]);
});

it("none and all end exactly at 0 and 1", () => {
  expect(wilsonInterval(0, 7, 0.9).low).toBe(0);
  expect(wilsonInterval(7, 7, 0.9).high).toBe(1);
});
