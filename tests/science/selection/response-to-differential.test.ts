import { expect, it } from "vitest";
import { responseToDifferential } from "@/lib/science/selection/response-to-differential";
import { answered, pathsOf } from "../agreement";

const known = (value: number) => ({ low: value, high: value });

it("by hand: h² 0.4 of a differential of 8; half of it where seed parents alone were chosen", () => {
  const both = answered(responseToDifferential({ differential: 8, heritability: known(0.4), control: "both-parents" }));
  expect(both.atLeast).toBeCloseTo(3.2, 12);
  const seed = answered(
    responseToDifferential({ differential: 8, heritability: known(0.4), control: "seed-parents", selfingRate: 0 }),
  );
  expect(seed.atMost).toBeCloseTo(1.6, 12);
});

it("with selfing seed parents weigh more: s = 0.9 gives (1 + 0.9)/2 · 0.4 · 8 = 3.04 (hand calculation)", () => {
  const { atLeast, atMost } = answered(
    responseToDifferential({ differential: 8, heritability: known(0.4), control: "seed-parents", selfingRate: 0.9 }),
  );
  expect([atLeast, atMost]).toEqual([expect.closeTo(3.04, 12), expect.closeTo(3.04, 12)]);
});

it("what is not known stays a span, and a differential downwards keeps its sign", () => {
  const span = answered(
    responseToDifferential({ differential: -10, heritability: { low: 0, high: 1 }, control: "seed-parents" }),
  );
  expect(span.atLeast).toBeCloseTo(0, 12);
  expect(span.atMost).toBe(-5);
  expect(span.assumed.map(({ code }) => code)).toEqual(["selfing-rate"]);
});

it("refuses a heritability above 1, ends that run backwards, and a differential that is no number", () => {
  const refusedAt = (heritability: { low: number; high: number }, differential = 1) =>
    pathsOf(responseToDifferential({ differential, heritability, control: "both-parents" }));
  expect(refusedAt({ low: 0.2, high: 1.2 })).toEqual([["heritability", "high"]]);
  expect(refusedAt({ low: 0.4, high: 0.2 })).toEqual([["heritability"]]);
  expect(refusedAt({ low: 0, high: 1 }, Number.NaN)).toEqual([["differential"]]);
});
