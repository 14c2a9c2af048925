import { describe, expect, it } from "vitest";
import {
  countFault,
  type Fault,
  faultsAmong,
  finiteFault,
  insideFault,
  notNegativeFault,
  positiveFault,
  shareAboveZeroFault,
  shareFault,
} from "@/lib/science/limits";
import { guardedCeiling, reaches } from "@/lib/science/whole-steps";

const passes = (fault: (given: number | undefined) => Fault, ...numbers: (number | undefined)[]) =>
  numbers.map((number) => fault(number) === undefined);

describe("what a number may be", () => {
  it.each<[string, (given: number | undefined) => Fault, number[], number[]]>([
    ["a share", (given) => shareFault([], "share", given), [0, 0.5, 1], [-0.1, 1.1, Number.NaN]],
    ["a share above 0", (given) => shareAboveZeroFault([], "share", given), [1e-9, 1], [0, 1.1]],
    ["a confidence", (given) => insideFault([], "confidence", given), [0.001, 0.999], [0, 1]],
    ["a count", (given) => countFault([], "sown", given, 1), [1, 7], [0, 1.5, -1, 1e17]],
    ["a number", (given) => finiteFault([], "mean", given), [-3, 0], [Number.POSITIVE_INFINITY, Number.NaN]],
    ["0 or more", (given) => notNegativeFault([], "cv", given), [0, 2.5], [-1e-9, Number.POSITIVE_INFINITY]],
    ["above 0", (given) => positiveFault([], "grams", given), [1e-9], [0, -1, Number.POSITIVE_INFINITY]],
  ])("%s", (_, fault, good, bad) => {
    expect(passes(fault, undefined, ...good)).not.toContain(false);
    expect(passes(fault, ...bad)).not.toContain(true);
  });

  it("the sentence names the field, what stands there and what is needed", () => {
    const [fault] = faultsAmong(undefined, shareFault(["lots", 2], "selfingRate", 30));
    expect(fault?.path).toEqual(["lots", 2, "selfingRate"]);
    expect(fault?.sentence).toBe("30 cannot stand for selfingRate; a share from 0 to 1 is needed (0.25 for a quarter)");
    expect(shareFault(["shares"], 3, 2)?.sentence).toContain("2 cannot stand for shares");
  });
});

it("a ceiling and a comparison forgive rounding and no more", () => {
  expect([guardedCeiling(0.1 * 30), guardedCeiling(3.001), guardedCeiling(2.9)]).toEqual([3, 4, 3]);
  expect([reaches(0.1 + 0.2, 0.3), reaches(0.3, 0.1 + 0.2), reaches(0.299, 0.3)]).toEqual([true, true, false]);
});
