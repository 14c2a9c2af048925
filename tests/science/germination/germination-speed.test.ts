import { describe, expect, it } from "vitest";
import { type GerminationSpeedInput, germinationSpeed } from "@/lib/science/germination/germination-speed";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const daily = (sown: number, ...news: number[]) =>
  answered(germinationSpeed({ sown, counts: news.map((newlyGerminated, i) => ({ day: i + 1, newlyGerminated })) }));

describe("published and hand-worked speeds", () => {
  it("running totals 1 3 6 7 15 16 23 25 from day 5 have t50 8.6875 (published example of Farooq's form)", () => {
    expect(daily(50, 0, 0, 0, 0, 1, 2, 3, 1, 8, 1, 7, 2).t50).toBeCloseTo(8.6875, 12);
  });

  it("4 17 10 7 1 0 1 from day 5 have t50 5.9412, mean time 6.7, index 6.1389", () => {
    const { t50, meanTime, index } = daily(50, 0, 0, 0, 0, 4, 17, 10, 7, 1, 0, 1);
    expect(t50).toBeCloseTo(5.9412, 4);
    expect(meanTime).toBeCloseTo(6.7, 12);
    expect(index).toBeCloseTo(6.13892496, 8);
  });

  it("20 by day 4 and 38 by day 7 have their half on the line from day 0: 3.8", () => {
    const counts = [
      { day: 4, newlyGerminated: 20 },
      { day: 7, newlyGerminated: 18 },
    ];
    expect(answered(germinationSpeed({ sown: 50, counts })).t50).toBeCloseTo(3.8, 12);
  });

  it("a total that meets the half exactly does so on that day", () => {
    expect(daily(10, 2, 3, 0, 5).t50).toBe(2);
  });

  it("nothing germinated has no speed", () => {
    expect(daily(10, 0, 0)).toMatchObject({ germinated: 0, finalShare: 0, t50: null, meanTime: null, index: null });
    expect(daily(10)).toMatchObject({ germinated: 0, t50: null });
  });
});

it("agrees with 300 tests worked in exact fractions", () => {
  for (const { input, expected } of referenceCases<GerminationSpeedInput>("germination-speed")) {
    expectAgreement(answered(germinationSpeed(input)), expected);
  }
});

it.each<[string, GerminationSpeedInput, (string | number)[]]>([
  ["day 0", { sown: 10, counts: [{ day: 0, newlyGerminated: 1 }] }, ["counts", 0, "day"]],
  [
    "a day that comes twice",
    {
      sown: 10,
      counts: [
        { day: 2, newlyGerminated: 1 },
        { day: 2, newlyGerminated: 1 },
      ],
    },
    ["counts", 1, "day"],
  ],
  [
    "a running total in place of new ones",
    {
      sown: 10,
      counts: [
        { day: 2, newlyGerminated: 6 },
        { day: 3, newlyGerminated: 9 },
      ],
    },
    ["counts", 1, "newlyGerminated"],
  ],
  ["half a seed", { sown: 10, counts: [{ day: 2, newlyGerminated: 0.5 }] }, ["counts", 0, "newlyGerminated"]],
  ["nothing sown", { sown: 0, counts: [] }, ["sown"]],
])("%s is refused at its place", (_, input, path) => {
  expect(pathsOf(germinationSpeed(input))).toEqual([path]);
});
