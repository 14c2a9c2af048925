import { describe, expect, it } from "vitest";
import { effectiveSizeSpan } from "@/lib/science/effective-size/effective-size-span";
import { mostWhereSomeShed } from "@/lib/science/effective-size/some-shed";
import { driftEnds } from "@/lib/science/lineage/drift-ends";
import type { GrowOutAsKnown } from "@/lib/science/lineage/span-lots";
import { answered } from "../agreement";

interface Case {
  readonly kappa: number;
  readonly alpha: number;
  readonly passing: number;
}

/** Plant by plant: the seed parents of `shed` (by bits) shed pollen and self, with further plants up to n that shed and gave no seed. */
function byPlants(q: readonly number[], shed: number, n: number, s: number, m: number): Case | null {
  const sheds = q.map((_, i) => ((shed >> i) & 1) === 1);
  const others = n - sheds.filter(Boolean).length;
  if (others < 0) return null;
  const selfed = q.reduce((sum, share, i) => sum + (sheds[i] ? s * share : 0), 0);
  const outcross = (1 - selfed) * (1 - m);
  const pollen = q.map((share, i) => (sheds[i] ? s * share + outcross / n : 0));
  const gave = q.map((share, i) => (share + (pollen[i] ?? 0)) / 2);
  const kappa = gave.reduce((sum, c) => sum + c * c, 0) + others * (outcross / n / 2) ** 2;
  const alpha = q.reduce((sum, share, i) => sum + (sheds[i] ? share * (s + ((1 - s) * (1 - m)) / n) : 0), 0);
  return { kappa, alpha, passing: (1 + selfed + outcross) / 2 };
}

function everyCase(qs: readonly (readonly number[])[], ns: readonly number[], rates: readonly number[], m: number) {
  return qs
    .flatMap((q) =>
      ns.flatMap((n) =>
        rates.flatMap((s) => Array.from({ length: 2 ** q.length }, (_, shed) => byPlants(q, shed, n, s, m) ?? [])),
      ),
    )
    .flat();
}

const between = (low: number, high: number) => Array.from({ length: high - low + 1 }, (_, i) => low + i);
const alike = (n: number) => Array.from({ length: n }, () => 1 / n);
const lotOf = (more: Partial<GrowOutAsKnown>): GrowOutAsKnown => ({
  ...{ id: "B", kind: "grow-out", parents: [{ id: "A", share: 1 }], seedParentsMayNotShed: true },
  ...more,
});

describe("seed parents of a selfing crop that may not have shed", () => {
  it("six alike, five plants that shed, all selfed: greatest where five of the six shed, 0.175, and not 1/6", () => {
    // by hand: five plants with c = 1/6 + 1/60, one with 1/12: 5·(11/60)² + (1/12)² = 0.175
    const found = mostWhereSomeShed(
      { pollenParents: { low: 5, high: 5 }, seedParents: { low: 6, high: 6 }, seedShares: "equal" },
      1,
    );
    expect(found.fromOnePlant).toBeCloseTo(0.175, 12);
    expect(found.selfed).toBeCloseTo(5 / 6, 12);
  });

  it.each([0.03, 0.3, 0.7, 1])(
    "every case of alike plants lies within the ends, and the ends are met, at s to %d",
    (s) => {
      for (const [n, k] of [
        [between(5, 5), between(6, 6)],
        [between(2, 6), between(3, 5)],
        [between(1, 3), between(4, 6)],
      ] as const) {
        for (const m of [0, 0.2, 0.9]) {
          const cases = everyCase(k.map(alike), n, [s / 3, s], m);
          const bounds = (of: readonly number[]) => ({ low: of[0] ?? 0, high: of.at(-1) ?? 0 });
          const ends = driftEnds(
            lotOf({
              ...{ pollenParents: bounds(n), seedParents: bounds(k), seedShares: "equal", foreignPollen: m },
              selfingRate: { low: s / 3, high: s },
            }),
          );
          const of = (key: keyof Case) => cases.map((each) => each[key]);
          expect(ends.fromOnePlant.high).toBeCloseTo(Math.max(...of("kappa")), 12);
          expect(ends.fromOnePlant.low).toBeCloseTo(Math.min(...of("kappa")), 12);
          expect(ends.insideOnePlant).toEqual({ low: 0, high: expect.closeTo(Math.max(...of("alpha")), 12) });
          expect(ends.passing.low).toBeCloseTo(Math.min(...of("passing")), 12);
          expect(ends.passing.high).toBeCloseTo(Math.max(...of("passing")), 12);
        }
      }
    },
  );

  it.each([
    ["listed", [[5, 3, 1, 1]], [5, 3, 1, 1]],
    ["no larger than 0.4", [[0.4, 0.4, 0.2, 0]], { largest: 0.4 }],
    ["not known", [[1, 0, 0, 0]], "unknown"],
  ] as const)("every case of shares that are %s lies within the ends", (_, lists, seedShares) => {
    const qs = lists.map((list) => list.map((each) => each / list.reduce((sum: number, x) => sum + x, 0)));
    for (const s of [0.1, 0.5, 1]) {
      for (const m of [0, 0.5]) {
        const cases = everyCase(qs, between(1, 5), [s], m);
        const plants = { pollenParents: { low: 1, high: 5 }, seedParents: { low: 4, high: 4 }, seedShares };
        const ends = driftEnds(lotOf({ ...plants, selfingRate: s, foreignPollen: m }));
        const greatest = Math.max(...cases.map(({ kappa }) => kappa));
        expect(ends.fromOnePlant.high).toBeGreaterThanOrEqual(greatest - 1e-12);
        // between listed plants a little wider than the truth, else met
        expect(ends.fromOnePlant.high).toBeLessThan(Array.isArray(seedShares) ? 1.05 * greatest : greatest + 1e-12);
        expect(ends.fromOnePlant.low).toBeLessThanOrEqual(Math.min(...cases.map(({ kappa }) => kappa)) + 1e-12);
        expect(ends.insideOnePlant.high).toBeGreaterThanOrEqual(Math.max(...cases.map(({ alpha }) => alpha)) - 1e-12);
      }
    }
  });

  it("of a spread alone more is taken than any plants with it can do", () => {
    const q = [0.5, 0.3, 0.1, 0.1];
    const cv = Math.sqrt(4 * q.reduce((sum, share) => sum + share * share, 0) - 1);
    for (const s of [0.1, 0.6, 1]) {
      const greatest = Math.max(...everyCase([q], between(4, 6), [s], 0).map(({ kappa }) => kappa));
      const plants = { pollenParents: { low: 4, high: 6 }, seedParents: { low: 4, high: 4 }, seedShares: { cv } };
      expect(mostWhereSomeShed(plants, s).fromOnePlant).toBeGreaterThanOrEqual(greatest - 1e-12);
    }
  });

  it("the effective size goes from the most to the least of them", () => {
    const plants = {
      pollenParents: { low: 5, high: 5 },
      seedParents: { low: 6, high: 6 },
      seedShares: "equal",
    } as const;
    const span = answered(effectiveSizeSpan({ ...plants, selfingRate: 1, inbreeding: 1, seedParentsMayNotShed: true }));
    expect(span.low).toBeCloseTo(1 / 0.175 / 2, 9);
    // none shed: 4·5·6/(5 + 6), of plants that are inbred half of it
    expect(span.high).toBeCloseTo(120 / 11 / 2, 9);
  });
});
