import { expect, it } from "vitest";
import { whatNarrows } from "@/lib/science/effective-size/what-narrows";

const known = (count: number) => ({ low: count, high: count });

// Expected spans are worked by hand from 4·Nf·Nm/(Nm + 3·Nf) and, for one plant's seed, 4·Nm/(Nm + 3).

it("one missing count leaves one figure at each end", () => {
  const [only, ...others] = whatNarrows({
    pollenParents: { low: 10, high: 60 },
    seedParents: known(10),
    seedShares: "equal",
  });
  expect(others).toEqual([]);
  expect(only?.missing).toBe("pollenParents");
  expect(only?.atLeast.count).toBe(10);
  expect(only?.atLeast.span.low).toBeCloseTo(10, 9);
  expect(only?.atLeast.span.high).toBeCloseTo(10, 9);
  expect(only?.atMost.count).toBe(60);
  expect(only?.atMost.span.low).toBeCloseTo(80 / 3, 9);
});

it("says first what narrows most: the shares, where 10 seed parents stood among 30 to 60", () => {
  // pollen counted: at 60 from 240/63 to 240/9, seven-fold; shares alike: from 1200/60 to 240/9, 1.33-fold
  const found = whatNarrows({ pollenParents: { low: 30, high: 60 }, seedParents: known(10) });
  expect(found.map(({ missing }) => missing)).toEqual(["seedShares", "pollenParents"]);
  expect(found[0]?.atMost.span.low).toBeCloseTo(20, 9);
  expect(found[0]?.atMost.span.high).toBeCloseTo(80 / 3, 9);
});

it("a count without bound is tried at its least and as many as you like", () => {
  const [only] = whatNarrows({ pollenParents: { low: 1, high: null }, seedParents: known(10), seedShares: "equal" });
  expect(only).toMatchObject({ missing: "pollenParents", atLeast: { count: 10 }, atMost: { count: null } });
  expect(only?.atMost.span.low).toBeCloseTo(40, 5);
});

it("is empty where nothing is missing, and where there is no figure", () => {
  expect(whatNarrows({ pollenParents: known(40), seedParents: known(10), seedShares: "equal" })).toEqual([]);
  expect(whatNarrows({ pollenParents: known(4), seedParents: known(10), seedShares: "equal" })).toEqual([]);
});
