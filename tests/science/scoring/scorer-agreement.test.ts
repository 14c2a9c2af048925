import { describe, expect, it } from "vitest";
import { type ScorerAgreementInput, scorerAgreement } from "@/lib/science/scoring/scorer-agreement";
import { type ScorePair, weightedKappa } from "@/lib/science/scoring/weighted-kappa";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const pairsOf = (table: number[][]): ScorePair[] =>
  table.flatMap((row, i) => row.flatMap((count, j) => new Array<ScorePair>(count).fill([i + 1, j + 1])));
const pathologists = pairsOf([
  [22, 2, 2, 0],
  [5, 7, 14, 0],
  [0, 2, 36, 0],
  [0, 1, 17, 10],
]);
const dermatologists = pairsOf([
  [10, 4, 1, 0],
  [5, 10, 12, 2],
  [2, 4, 12, 5],
  [0, 2, 6, 13],
]);

describe("known tables", () => {
  it.each<[string, ScorePair[], "linear" | "quadratic", number, number]>([
    ["pathologists, linear", pathologists, "linear", 0.64881, 0.047652],
    ["pathologists, quadratic", pathologists, "quadratic", 0.7838, 0.0387],
    ["dermatologists, linear", dermatologists, "linear", 0.50816, 0.065508],
  ])("%s", (_, pairs, weights, kappa, standardError) => {
    const result = answered(scorerAgreement({ scale: [1, 4], pairs, weights }));
    expect(result.kappa).toBeCloseTo(kappa, 4);
    expect(result.standardError).toBeCloseTo(standardError, 4);
  });

  it("unused classes of the scale change nothing: 0.7015 linear, 0.8065 quadratic (worked by mean distances)", () => {
    const first = [3, 3, 5, 5, 6, 6, 3, 6, 5, 3];
    const second = [3, 5, 5, 6, 6, 6, 3, 5, 5, 3];
    const pairs = first.map((score, plant): ScorePair => [score, second[plant] as number]);
    expect(weightedKappa(pairs, 8, "linear")?.kappa).toBeCloseTo(0.701493, 6);
    expect(weightedKappa(pairs, 8, "quadratic")?.kappa).toBeCloseTo(0.806452, 6);
  });
});

describe("where kappa tells nothing", () => {
  it("19 plants have none, 20 have", () => {
    const plants = (n: number) =>
      Array.from({ length: n }, (_, i): ScorePair => [(i % 3) + 1, ((i + (i % 5 === 0 ? 1 : 0)) % 3) + 1]);
    expect(answered(scorerAgreement({ scale: [1, 9], pairs: plants(19) })).kappa).toBeNull();
    expect(answered(scorerAgreement({ scale: [1, 9], pairs: plants(20) })).kappa).not.toBeNull();
  });

  it("one score for every plant by both agrees wholly and proves nothing", () => {
    const pairs = new Array<ScorePair>(30).fill([5, 5]);
    expect(answered(scorerAgreement({ scale: [1, 9], pairs }))).toMatchObject({
      exact: 1,
      kappa: null,
      standardError: null,
    });
  });

  it("one score by the one and another by the other is no agreement: κ 0", () => {
    const pairs = new Array<ScorePair>(30).fill([5, 6]);
    expect(answered(scorerAgreement({ scale: [1, 9], pairs })).kappa).toBeCloseTo(0, 12);
  });
});

it("agrees with 300 pairs of scorers in exact fractions", () => {
  for (const { input, expected } of referenceCases<ScorerAgreementInput>("scorer-agreement")) {
    expectAgreement(answered(scorerAgreement(input)), expected);
  }
});

it.each<[string, ScorerAgreementInput, (string | number)[]]>([
  ["a scale of one class", { scale: [5, 5], pairs: [[5, 5]] }, ["scale"]],
  ["no pair", { scale: [1, 9], pairs: [] }, ["pairs"]],
  [
    "a score off the scale",
    {
      scale: [1, 9],
      pairs: [
        [1, 2],
        [1, 10],
      ],
    },
    ["pairs", 1, 1],
  ],
  ["half a point", { scale: [1, 9], pairs: [[1.5, 2]] }, ["pairs", 0, 0]],
])("%s is refused at its place", (_, input, path) => {
  expect(pathsOf(scorerAgreement(input))).toEqual([path]);
});
