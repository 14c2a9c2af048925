import { expect, it } from "vitest";
import { type ReserveInput, reserve } from "@/lib/science/reserve/reserve";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

it("three sowings of 97, four tests, a duplicate and an archive are 638 seeds (worked by hand)", () => {
  const { seeds, parts, assumed } = answered(
    reserve({ seedsPerGrowOut: 97, growOuts: 3, tests: 4, seedsPerTest: 50, duplicates: 1, archive: 50 }),
  );
  expect(seeds).toBe(638);
  expect(parts).toEqual({ growOuts: 291, tests: 200, duplicates: 97, archive: 50 });
  expect(assumed).toEqual([]);
});

it("a home holder keeps one sowing, two tests, one duplicate and 50 seeds by default: 97 + 100 + 97 + 50", () => {
  const { seeds, assumed } = answered(reserve({ seedsPerGrowOut: 97 }));
  expect(seeds).toBe(344);
  expect(assumed.map(({ code }) => code)).toEqual([
    "one-grow-out",
    "two-tests",
    "tests-of-50",
    "one-duplicate",
    "archive-of-50",
  ]);
});

it("nothing is kept for another place where two are confirmed", () => {
  expect(answered(reserve({ seedsPerGrowOut: 97, duplicates: 0 })).seeds).toBe(247);
});

it.each<[string, ReserveInput, string[]]>([
  ["a grow-out of no seed", { seedsPerGrowOut: 0 }, ["seedsPerGrowOut"]],
  ["half a test", { seedsPerGrowOut: 10, tests: 0.5 }, ["tests"]],
  ["less than no archive", { seedsPerGrowOut: 10, archive: -1 }, ["archive"]],
  ["more than can be counted", { seedsPerGrowOut: 9e15, growOuts: 3 }, ["seedsPerGrowOut"]],
])("%s is refused at its place", (_, input, path) => {
  expect(pathsOf(reserve(input))).toEqual([path]);
});

it("agrees with 300 cases in exact fractions", () => {
  for (const { input, expected } of referenceCases<ReserveInput>("reserve")) {
    expectAgreement(answered(reserve(input)), expected);
  }
});
