import { describe, expect, it } from "vitest";
import { intensityInfinite, intensityOf } from "@/lib/science/selection/selection-intensity";
import { type SelectionPlan, selectionResponse } from "@/lib/science/selection/selection-response";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

describe("the intensity of choosing", () => {
  it("the best of two stands 1/√π above the mean, the best of five 1.162964 (Harter 1961)", () => {
    expect(intensityOf(2, 1)).toBeCloseTo(1 / Math.sqrt(Math.PI), 9);
    expect(intensityOf(5, 1)).toBeCloseTo(1.162964, 6);
  });

  it.each([
    [10, 2, 1.270055],
    [20, 2, 1.63754],
    [20, 5, 1.214478],
    [100, 10, 1.729791],
    [200, 20, 1.742275],
    [500, 50, 1.749873],
  ])("the best of %i, %i kept (by two integrals of another program)", (n, k, expected) => {
    expect(intensityOf(n, k)).toBeCloseTo(expected, 5);
  });

  it("the best of three stand 3/(2√π) above the mean (exact)", () => {
    expect(intensityOf(3, 1)).toBeCloseTo(3 / (2 * Math.sqrt(Math.PI)), 9);
  });

  it.each([
    [0.01, 2.665214],
    [0.05, 2.062713],
    [0.1, 1.754983],
    [0.5, 0.797885],
  ])("of an endless field, %f kept (standard tables print the first three decimals)", (p, expected) => {
    expect(intensityInfinite(p)).toBeCloseTo(expected, 5);
  });

  it("is 0 where all are kept, and comes to the endless field's as the field grows", () => {
    expect(intensityOf(30, 30)).toBe(0);
    expect(intensityInfinite(1)).toBe(0);
    expect(intensityOf(1_000_000, 100_000)).toBeCloseTo(intensityInfinite(0.1), 4);
    expect(intensityInfinite(1e-12)).toBeGreaterThan(7);
  });
});

describe("the response", () => {
  it("halves where only seed parents were chosen, and comes back as they self", () => {
    const plan: SelectionPlan = {
      candidates: 200,
      kept: 20,
      heritability: 0.4,
      phenotypicSd: 10,
      control: "both-parents",
    };
    const both = answered(selectionResponse(plan)).response;
    expect(both).toBeCloseTo(1.742275 * 4, 4);
    expect(answered(selectionResponse({ ...plan, control: "seed-parents" })).response).toBeCloseTo(both / 2, 9);
    expect(answered(selectionResponse({ ...plan, control: "seed-parents", selfingRate: 0.9 })).response).toBeCloseTo(
      0.95 * both,
      9,
    );
    expect(answered(selectionResponse({ ...plan, control: "seed-parents" })).assumed).toHaveLength(1);
    expect(answered(selectionResponse(plan)).assumed).toEqual([]);
  });

  it("agrees with 300 plans worked out by quadrature of order statistics, to 1e-6", () => {
    for (const { input, expected } of referenceCases<SelectionPlan>("selection-response")) {
      expectAgreement(answered(selectionResponse(input)), expected, { relative: 1e-6, absolute: 1e-9 });
    }
  });

  it("more kept than there are, and shares that are none, are refused at their place", () => {
    const plan: SelectionPlan = {
      candidates: 10,
      kept: 2,
      heritability: 0.4,
      phenotypicSd: 10,
      control: "seed-parents",
    };
    const paths = (change: Partial<SelectionPlan>) => pathsOf(selectionResponse({ ...plan, ...change }));
    expect(paths({ kept: 11 })).toEqual([["kept"]]);
    expect(paths({ kept: 0 })).toEqual([["kept"]]);
    expect(paths({ heritability: 1.1 })).toEqual([["heritability"]]);
    expect(paths({ phenotypicSd: -1 })).toEqual([["phenotypicSd"]]);
    expect(paths({ selfingRate: 2 })).toEqual([["selfingRate"]]);
  });
});
