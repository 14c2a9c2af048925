import { expect, it } from "vitest";
import { realisedHeritability } from "@/lib/science/selection/realised-heritability";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

type Given = Parameters<typeof realisedHeritability>[0];

// Cumulative S 0 .30 .58 .90 1.21 1.50 and R 0 .05 .13 .16 .25 .29: slope .196324, standard error .006329 by an independent program;
// with V_A .04, Ne 30, V_P .2 and 200 plants measured each cycle: .1958 and .0606.
const cycles = [
  { differential: 0.3, mean: 0 },
  { differential: 0.28, mean: 0.05 },
  { differential: 0.32, mean: 0.13 },
  { differential: 0.31, mean: 0.16 },
  { differential: 0.29, mean: 0.25 },
  { mean: 0.29 },
];
const drift = {
  additiveVariance: 0.04,
  effectiveSize: 30,
  phenotypicVariance: 0.2,
  measured: [200, 200, 200, 200, 200, 200],
};

it("five cycles of choosing kept a fifth of what was chosen for", () => {
  const answer = answered(realisedHeritability({ cycles }));
  expect(answer.heritability).toBeCloseTo(0.196324, 5);
  expect(answer.standardError).toBeCloseTo(0.006329, 5);
  expect(answer.cumulative.at(-1)?.differential).toBeCloseTo(1.5, 12);
  expect(answer.withDrift).toBeNull();
});

it("with drift counted in, the same is ten times less sure", () => {
  const { withDrift } = answered(realisedHeritability({ cycles, drift }));
  expect(withDrift?.heritability).toBeCloseTo(0.1958, 4);
  expect(withDrift?.standardError).toBeCloseTo(0.0606, 4);
});

it("agrees with 300 series worked out by matrices of another program", () => {
  for (const { input, expected } of referenceCases<Given>("realised-heritability")) {
    expectAgreement(answered(realisedHeritability(input)), expected, { relative: 1e-8, absolute: 1e-11 });
  }
});

it("too few cycles, a missing differential, nothing chosen and counts that do not fit are refused at their place", () => {
  const paths = (given: Given) => pathsOf(realisedHeritability(given));
  expect(paths({ cycles: cycles.slice(0, 2) })).toEqual([["cycles"]]);
  expect(paths({ cycles: [{ mean: 1 }, ...cycles.slice(1)] })).toEqual([["cycles", 0, "differential"]]);
  expect(paths({ cycles: cycles.map(({ mean }) => ({ differential: 0, mean })) })).toEqual([["cycles"]]);
  expect(paths({ cycles, drift: { ...drift, measured: [200] } })).toEqual([["drift", "measured"]]);
  expect(paths({ cycles, drift: { ...drift, effectiveSize: 0 } })).toEqual([["drift", "effectiveSize"]]);
  expect(paths({ cycles, drift: { ...drift, measured: [200, 0, 200, 200, 200, 200] } })).toEqual([
    ["drift", "measured", 1],
  ]);
});
