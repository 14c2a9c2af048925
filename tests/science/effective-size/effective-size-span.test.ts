import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import { type EffectiveSizeSpanInput, effectiveSizeSpan } from "@/lib/science/effective-size/effective-size-span";
import { answered, pathsOf, refusalsOf } from "../agreement";

const span = (input: EffectiveSizeSpanInput) => answered(effectiveSizeSpan(input));
const known = (count: number) => ({ low: count, high: count });
const between = (low: number, high: number | null) => ({ low, high });

describe("worked by hand", () => {
  it("10 equal seed parents among 10 to 60 count as 10 to 26.7 (4·10·60/(60 + 30) = 80/3)", () => {
    const { low, high } = span({ pollenParents: between(10, 60), seedParents: known(10), seedShares: "equal" });
    expect(low).toBeCloseTo(10, 9);
    expect(high).toBeCloseTo(80 / 3, 9);
  });

  it("10 equal seed parents whose pollen plants nobody counted stay below 4·10, and at or above 10", () => {
    const { low, high } = span({ pollenParents: between(1, null), seedParents: known(10), seedShares: "equal" });
    expect(low).toBeCloseTo(10, 9);
    expect(high).toBeCloseTo(40, 9);
  });

  it("10 females and a number of males nobody counted: a lone father gives 4·10/11, many fathers 40", () => {
    const input = { pollenParents: between(1, null), seedParents: known(10), sexes: "separate", seedShares: "equal" };
    const { low, high } = span(input as EffectiveSizeSpanInput);
    expect(low).toBeCloseTo(40 / 11, 9);
    expect(high).toBeCloseTo(40, 9);
  });

  it("shares that nobody wrote down reach from one plant's seed to equal seed", () => {
    // κ of one seed parent among 40 is ¼(1 + 3/40) = 43/160; 40 of 40 alike count as 40.
    const { low, high } = span({ pollenParents: known(40), seedParents: known(40) });
    expect(low).toBeCloseTo(160 / 43, 9);
    expect(high).toBeCloseTo(40, 9);
  });

  it("no seed taken yet of 62 plants: one seed parent counts as 4·62/65, all as 62", () => {
    const { low, high } = span({ pollenParents: known(62), seedParents: between(1, 62), seedShares: "equal" });
    expect(low).toBeCloseTo(248 / 65, 9);
    expect(high).toBeCloseTo(62, 9);
  });

  it("of 12 complete selfers one gave 0.3 of the seed: Σq² between 0.134545 and 0.28, halved by F = 1", () => {
    const { low, high } = span({
      pollenParents: known(12),
      seedParents: known(12),
      selfingRate: 1,
      inbreeding: 1,
      seedShares: { largest: 0.3 },
    });
    expect(low).toBeCloseTo(1 / (2 * 0.28), 9);
    expect(high).toBeCloseTo(1 / (2 * (0.09 + 0.49 / 11)), 9);
  });

  it("shares known as a spread: at cv 2 no fewer than 5 plants gave the seed", () => {
    // 5 of 5: ¼[5/5 + 2/5 + 1/5] = 0.4; 20 of 20: ¼[5/20 + 2/20 + 1/20] = 0.1
    const { low, high } = span({ pollenParents: between(1, 20), seedParents: between(1, 20), seedShares: { cv: 2 } });
    expect(low).toBeCloseTo(2.5, 9);
    expect(high).toBeCloseTo(10, 9);
  });

  it("a self-incompatible crop needs two to set seed at all: one mother and one father count as 2", () => {
    // c = ½ each
    const { low, high } = span({
      pollenParents: between(1, 40),
      seedParents: between(1, 10),
      selfIncompatible: true,
      seedShares: "equal",
    });
    expect(low).toBeCloseTo(2, 9);
    // the landmark of 10 of 40, by gene drop 23.356
    expect(high).toBeCloseTo(23.364, 3);
  });

  it("names what was assumed, and no inbreeding where it is given", () => {
    const codes = (input: EffectiveSizeSpanInput) => span(input).assumed.map(({ code }) => code);
    const input = { pollenParents: known(40), seedParents: between(1, 40) };
    expect(codes(input)).toEqual(["pollen-shares-equal", "selfing-by-chance-only", "parents-not-inbred"]);
    expect(codes({ ...input, inbreeding: 0, selfingRate: 0 })).toEqual(["pollen-shares-equal"]);
  });
});

describe("what is not bounded", () => {
  it("gives no figure where neither side was counted", () => {
    const [only] = refusalsOf(effectiveSizeSpan({ pollenParents: between(1, null), seedParents: between(1, null) }));
    expect(only).toMatchObject({ code: "not-bounded", path: ["seedParents"] });
  });

  it("gives a low end alone where 20 or more gave seed, shared alike", () => {
    const input = { pollenParents: between(1, null), seedParents: between(20, null), seedShares: "equal" } as const;
    expect(span(input)).toMatchObject({ high: null });
    expect(span(input).low).toBeCloseTo(20, 9);
  });
});

describe("refused", () => {
  const input = { pollenParents: known(40), seedParents: known(10) };
  it.each<[string, EffectiveSizeSpanInput, (string | number)[]]>([
    ["no plant at all", { ...input, seedParents: between(0, 5) }, ["seedParents", "low"]],
    ["half a plant", { ...input, pollenParents: between(1.5, 5) }, ["pollenParents", "low"]],
    ["bounds in the wrong order", { ...input, pollenParents: between(30, 20) }, ["pollenParents", "high"]],
    ["more seed than pollen parents", { ...input, seedParents: known(41) }, ["seedParents"]],
    ["selfing of separate sexes", { ...input, sexes: "separate", selfingRate: 0.2 }, ["selfingRate"]],
    ["an inbreeding above 1", { ...input, inbreeding: 1.2 }, ["inbreeding"]],
    ["a spread among too few", { ...input, seedShares: { cv: 4 } }, ["seedShares", "cv"]],
    ["a largest share below an even one", { ...input, seedShares: { largest: 0.05 } }, ["seedShares", "largest"]],
    ["shares of another number of plants", { ...input, seedShares: [1, 2] }, ["seedShares"]],
    [
      "a self-incompatible plant alone",
      { pollenParents: known(1), seedParents: known(1), selfIncompatible: true },
      ["selfIncompatible"],
    ],
  ])("%s", (_, wrong, path) => {
    expect(pathsOf(effectiveSizeSpan(wrong))).toContainEqual(path);
  });
});

describe("against the size of every case within the bounds", () => {
  const bounds = fc
    .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 6 }))
    .map(([low, more]) => ({ low, high: low + more }));
  const mating = fc.oneof(
    fc.constant({ sexes: "separate" as const }),
    fc.constant({ selfIncompatible: true }),
    fc.double({ min: 0, max: 1, noNaN: true }).map((selfingRate) => ({ selfingRate })),
  );
  const shares = fc.constantFrom("equal" as const, "unknown" as const, { cv: 0.8 });

  it("no case lies outside, and equal shares reach both ends", () => {
    fc.assert(
      fc.property(
        bounds,
        bounds,
        mating,
        shares,
        fc.infiniteStream(fc.double({ min: 0.01, max: 1, noNaN: true })),
        (pollenParents, seedParents, how, seedShares, draws) => {
          const outcome = effectiveSizeSpan({ pollenParents, seedParents, seedShares, inbreeding: 0.1, ...how });
          const sizes: number[] = [];
          for (let males = pollenParents.low; males <= pollenParents.high; males += 1)
            for (let mothers = seedParents.low; mothers <= seedParents.high; mothers += 1) {
              const drawn = Array.from({ length: mothers }, () => draws.next().value as number);
              const input = { pollenParents: males, seedParents: mothers, inbreeding: 0.1, ...how };
              const one = effectiveSize({ ...input, seedShares: seedShares === "unknown" ? drawn : seedShares });
              if (one.ok && one.value.effectiveSize !== null) sizes.push(one.value.effectiveSize);
            }
          if (sizes.length === 0) return;
          const { low, high } = answered(outcome);
          const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
          expect(least).toBeGreaterThanOrEqual(low * (1 - 1e-9));
          expect(most).toBeLessThanOrEqual((high as number) * (1 + 1e-9));
          if (seedShares === "unknown") return;
          expect(least / low).toBeCloseTo(1, 9);
          expect(most / (high as number)).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 300 },
    );
  });
});
