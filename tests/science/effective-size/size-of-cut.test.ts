import { expect, it } from "vitest";
import { sizeOfCut } from "@/lib/science/effective-size/size-of-cut";
import { answered } from "../agreement";

const plot = { pollenParents: { low: 200, high: 200 }, inbreeding: 0, selfingRate: 0 };

// Σc² = 1/(4n) + 3/(4N) by hand: each of n seed parents gives (1/n + 1/N)/2, the others 1/(2N). N = 200.
it.each([
  [10, 34.8],
  [20, 61.5],
  [50, 114.3],
  [100, 160],
])("seed alike from %i of 200 that all shed pollen counts as %f", (kept, size) => {
  const { low, high } = answered(sizeOfCut(plot, { kept, pollen: "all", shares: "equal" }));
  expect(low).toBeCloseTo(1 / (1 / (4 * kept) + 3 / 800), 9);
  expect(Math.round(low * 10) / 10).toBe(size);
  expect(high).toBe(low);
});

it("where the others were pulled before they shed, it counts as the plants kept", () => {
  expect(answered(sizeOfCut(plot, { kept: 20, pollen: "kept", shares: "equal" })).low).toBeCloseTo(20, 9);
});

it("males that were not chosen stay the pollen parents: 4·100·20/120", () => {
  const separate = { ...plot, sexes: "separate" as const, pollenParents: { low: 100, high: 100 } };
  expect(answered(sizeOfCut(separate, { kept: 20, pollen: "kept", shares: "equal" })).low).toBeCloseTo(200 / 3, 9);
});

it("bags that are tipped together leave a span down to nearly all from one plant: (1/4)(1 + 3/200) at the worst", () => {
  const { low, high } = answered(sizeOfCut(plot, { kept: 20, pollen: "all", shares: "unknown" }));
  expect(low).toBeCloseTo(1 / ((1 + 3 / 200) / 4), 9);
  expect(high).toBeCloseTo(1 / (1 / 80 + 3 / 800), 9);
});

it("refuses more seed parents than plants that stand", () => {
  expect(sizeOfCut(plot, { kept: 201, pollen: "all", shares: "equal" }).ok).toBe(false);
});
