import { expect, it } from "vitest";
import { runningTotals, SeededDraws } from "@/lib/science/gene-drop/seeded-draws";

// By a separate program of the same published steps (Python, whole numbers without bound).
it.each([
  [1, [393288148, 2174103013, 3814759091, 2092745082, 1865176206, 2179171167]],
  [-7, [38332731, 2143513836, 14003729]],
  [5, [890109699, 87178612]],
])("from %i come the same numbers on every machine", (seed, expected) => {
  const draws = new SeededDraws(seed);
  expect(expected.map(() => draws.bits())).toEqual(expected);
});

it("falls evenly: the mean of 100,000 draws is a half within five standard errors, and a part of the totals is met as often as it is large", () => {
  const draws = new SeededDraws(42);
  const many = 100_000;
  let sum = 0;
  const met = [0, 0, 0];
  const totals = runningTotals([1, 0, 3]);
  for (let round = 0; round < many; round++) {
    sum += draws.next();
    const place = draws.among(totals);
    met[place] = (met[place] ?? 0) + 1;
  }
  expect(Math.abs(sum / many - 0.5)).toBeLessThan(5 * Math.sqrt(1 / 12 / many));
  expect(met[1]).toBe(0);
  expect(Math.abs((met[0] ?? 0) / many - 0.25)).toBeLessThan(5 * Math.sqrt(0.1875 / many));
});
