import { expect, it } from "vitest";
import { exactInterval, exactUpperBound } from "@/lib/science/binomial/exact-interval";

it("20 of 20 is at least 0.025^(1/20), 0 of 20 at most 1 − 0.025^(1/20) (closed form)", () => {
  const bound = 0.025 ** (1 / 20);
  expect(exactInterval(20, 20, 0.95)).toEqual({ low: expect.closeTo(bound, 12), high: 1 });
  expect(exactInterval(0, 20, 0.95)).toEqual({ low: 0, high: expect.closeTo(1 - bound, 12) });
});

it("6 of 400 lies within 0.0055241 to 0.0323613 (an independent program)", () => {
  const { low, high } = exactInterval(6, 400, 0.95);
  expect(low).toBeCloseTo(0.005524109504580662, 12);
  expect(high).toBeCloseTo(0.032361294480775016, 12);
});

it("all germinated of 11, 19 and 29 is the fewest that stands above 75, 85 and 90 %, one-sided at 95 % (ln .05/ln p)", () => {
  const lower = (n: number) => 1 - exactUpperBound(0, n, 0.95);
  expect([lower(10) > 0.75, lower(11) > 0.75, lower(18) > 0.85, lower(19) > 0.85]).toEqual([false, true, false, true]);
  expect([lower(28) > 0.9, lower(29) > 0.9]).toEqual([false, true]);
});
