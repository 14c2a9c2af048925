import { expect, it } from "vitest";
import { cvOf, isCv, listed } from "@/lib/science/effective-size/plot-parents";
import { plotParentsAssumed } from "@/lib/science/effective-size/plot-parents-assumed";

it("shares are equal, a spread, or one by one", () => {
  expect([isCv("equal"), isCv({ cv: 0.5 }), isCv([1, 2]), isCv(undefined)]).toEqual([false, true, false, false]);
  expect([listed("equal"), listed({ cv: 0.5 }), listed([1, 2])]).toEqual([undefined, undefined, [1, 2]]);
  expect([cvOf("equal"), cvOf({ cv: 0.5 }), cvOf([1, 2]), cvOf(undefined)]).toEqual([0, 0.5, 0, 0]);
});

it("what cannot move the figure is not assumed", () => {
  const codes = (plot: Parameters<typeof plotParentsAssumed>[0]) => plotParentsAssumed(plot).map(({ code }) => code);
  expect(codes({ pollenParents: 5, seedParents: 1 })).not.toContain("seed-shares-equal");
  expect(codes({ pollenParents: 1, seedParents: 3, sexes: "separate" })).toEqual(["seed-shares-equal"]);
  expect(codes({ pollenParents: 5, seedParents: 5, selfingRate: 1 })).toEqual(["seed-shares-equal"]);
});
