import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type GerminationCompareInput, germinationCompare } from "@/lib/science/germination/germination-compare";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const compare = (xa: number, na: number, xb: number, nb: number) =>
  answered(germinationCompare({ a: { normal: xa, sown: na }, b: { normal: xb, sown: nb } }));

describe("published comparisons", () => {
  it("48 of 80 and 56 of 70 differ by 0.0524 to 0.3339 (Newcombe 1998, method 10)", () => {
    const { difference, interval } = compare(48, 80, 56, 70);
    expect(difference).toBeCloseTo(0.2, 12);
    expect([interval.low.toFixed(4), interval.high.toFixed(4)]).toEqual(["0.0524", "0.3339"]);
  });

  it("0 of 10 and 10 of 10 differ by 0.6075 to 1 (Newcombe 1998, method 10)", () => {
    const { interval } = compare(0, 10, 10, 10);
    expect([interval.low.toFixed(4), interval.high.toFixed(4)]).toEqual(["0.6075", "1.0000"]);
  });

  it("47 of 50, then 40 of 50, is no proven change: p 0.0713 (an independent program)", () => {
    const { fisherP, changed } = compare(47, 50, 40, 50);
    expect(fisherP).toBeCloseTo(0.07130815, 8);
    expect(changed).toBe(false);
  });

  it("3 of 4 against 1 of 4 has the chance 34/70 (Fisher's tea)", () => {
    expect(compare(3, 4, 1, 4).fisherP).toBeCloseTo(34 / 70, 12);
  });
});

it("agrees with 300 pairs of tests worked out in whole numbers and 30 digits", () => {
  for (const { input, expected } of referenceCases<GerminationCompareInput>("germination-compare")) {
    expectAgreement(answered(germinationCompare(input)), expected);
  }
});

describe("whatever the counts", () => {
  const test = fc.integer({ min: 1, max: 200 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

  it("turning the two tests round turns the difference and its interval", () => {
    fc.assert(
      fc.property(test, test, ([xa, na], [xb, nb]) => {
        const forth = compare(xa, na, xb, nb);
        const back = compare(xb, nb, xa, na);
        expect(back.difference).toBeCloseTo(-forth.difference, 12);
        expect(back.interval.low).toBeCloseTo(-forth.interval.high, 12);
        expect(back.fisherP).toBeCloseTo(forth.fisherP, 10);
      }),
    );
  });

  it("equal results never count as a change", () => {
    fc.assert(
      fc.property(test, ([x, n]) => {
        expect(compare(x, n, x, n)).toMatchObject({ fisherP: 1, changed: false });
      }),
    );
  });
});

it("refuses more germinated than sown in either test, at its place", () => {
  const good = { sown: 10, normal: 9 };
  expect(pathsOf(germinationCompare({ a: { sown: 10, normal: 11 }, b: good }))).toEqual([["a", "normal"]]);
  expect(pathsOf(germinationCompare({ a: good, b: { sown: 0, normal: 0 } }))).toEqual([["b", "sown"]]);
  expect(pathsOf(germinationCompare({ a: good, b: good, confidence: 0 }))).toEqual([["confidence"]]);
});
