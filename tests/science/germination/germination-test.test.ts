import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type GerminationTestInput, germinationTest } from "@/lib/science/germination/germination-test";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const one = (normal: number, sown: number, more: Partial<GerminationTestInput> = {}) =>
  answered(germinationTest({ replicates: [{ sown, normal }], ...more }));
const bounds = ({ low, high }: { low: number; high: number }) => [low.toFixed(4), high.toFixed(4)];
const inReplicates = (normals: number[], sown: number) =>
  answered(germinationTest({ replicates: normals.map((normal) => ({ sown, normal })) }));

describe("published and hand-worked tests", () => {
  it("81 of 263 lies within .2553 to .3662 (Newcombe 1998, Wilson)", () => {
    expect(bounds(one(81, 263).wilson)).toEqual(["0.2553", "0.3662"]);
    expect(bounds(one(15, 148).wilson)).toEqual(["0.0624", "0.1605"]);
    expect(bounds(one(1, 29).wilson)).toEqual(["0.0061", "0.1718"]);
    expect(bounds(one(0, 20).wilson)).toEqual(["0.0000", "0.1611"]);
  });

  // an independent program; confirmed by the closed form 0.025^(1/10) for 10 of 10
  it.each([
    [10, 10, [0.69150289, 1], [0.7224672, 1], [0.78280373, 1]],
    [9, 10, [0.55498388, 0.99747142], [0.59584997, 0.98212379], [0.61868523, 0.98898833]],
    [18, 20, [0.68301729, 0.98765147], [0.69896635, 0.97213352], [0.71614674, 0.97862751]],
    [47, 50, [0.83451805, 0.98745141], [0.83782908, 0.97938503], [0.84846744, 0.98281335]],
    [368, 400, [0.88893948, 0.94463833], [0.88924542, 0.94276425], [0.89036733, 0.94358593]],
  ])("%d of %d has its three intervals", (normal, sown, exact, wilson, jeffreys) => {
    const test = one(normal, sown);
    for (const [interval, [low, high]] of [
      [test.exact, exact],
      [test.wilson, wilson],
      [test.jeffreys, jeffreys],
    ] as const) {
      expect(interval.low).toBeCloseTo(low as number, 7);
      expect(interval.high).toBeCloseTo(high as number, 7);
    }
  });

  it("ten of ten is not 100 %: 0.932 to stand above 85 %, which cannot tell", () => {
    const { standard } = one(10, 10, { standard: 0.85 });
    expect(standard?.probabilityAbove).toBeCloseTo(0.93212706, 7);
    expect(standard?.verdict).toBe("cannot tell");
    expect(one(16, 20, { standard: 0.75 }).standard?.probabilityAbove).toBeCloseTo(0.68477263, 7);
  });

  it("a test speaks above or below a standard only when it is sure", () => {
    expect(one(99, 100, { standard: 0.85 }).standard?.verdict).toBe("above");
    expect(one(10, 20, { standard: 0.85 }).standard?.verdict).toBe("below");
  });

  it("98, 85, 92, 90 of 100 are not alike: exact chance 0.0082, χ² 10.865, p 0.0125", () => {
    const { spread } = inReplicates([98, 85, 92, 90], 100);
    expect(spread?.exactP).toBeCloseTo(0.0082, 4);
    expect(spread?.chiSquare).toBeCloseTo(10.86497065, 7);
    expect(spread?.pValue).toBeCloseTo(0.01247889, 7);
    expect(spread).toMatchObject({ degrees: 3, consistent: false });
  });

  it("23, 25, 22, 24 of 25 are alike: χ² 3.546, p 0.315", () => {
    const { spread } = inReplicates([23, 25, 22, 24], 25);
    expect(spread?.chiSquare).toBeCloseTo(3.54609929, 7);
    expect(spread?.pValue).toBeCloseTo(0.31483223, 7);
    expect(spread?.consistent).toBe(true);
  });

  it("the tolerated range of 4 × 100 at 90 % is 11.95 points", () => {
    expect(100 * (inReplicates([90, 90, 90, 90], 100).spread?.toleratedRange ?? 0)).toBeCloseTo(11.95, 2);
  });

  it("hard and fresh seeds are alive though they did not germinate", () => {
    const replicates = [{ sown: 100, normal: 88, abnormal: 4, hard: 3, fresh: 2, dead: 3 }];
    const test = answered(germinationTest({ replicates, confidence: 0.95 }));
    expect(test.germination).toBeCloseTo(0.88, 15);
    expect(test.viablePotential).toBeCloseTo(0.93, 15);
    expect(test.assumed).toEqual([]);
  });
});

it("agrees with 300 tests worked out in whole numbers and 30 digits", () => {
  for (const { input, expected } of referenceCases<GerminationTestInput>("germination-test")) {
    expectAgreement(answered(germinationTest(input)), expected);
  }
});

describe("edges", () => {
  it("a single replicate has no spread", () => {
    expect(one(18, 20).spread).toBeNull();
  });

  it("none or all germinated is no spread at all", () => {
    for (const normal of [0, 50]) {
      const { spread } = inReplicates([normal, normal], 50);
      expect(spread).toMatchObject({
        range: 0,
        toleratedRange: 0,
        chiSquare: 0,
        pValue: 1,
        exactP: 1,
        consistent: true,
      });
    }
  });

  it("replicates of unlike size are judged by the tolerated range", () => {
    const replicates = [
      { sown: 50, normal: 45 },
      { sown: 40, normal: 36 },
    ];
    const { spread } = answered(germinationTest({ replicates }));
    expect(spread).toMatchObject({ exactP: null, consistent: true });
  });

  it("above 10,000 seeds no exact chance is given", () => {
    expect(inReplicates([4500, 4510], 5000).spread?.exactP).not.toBeNull();
    expect(inReplicates([4500, 4510], 5001).spread?.exactP).toBeNull();
  });
});

describe("refusals", () => {
  const refusedAt = (input: GerminationTestInput) => pathsOf(germinationTest(input));

  it.each<[string, GerminationTestInput, (string | number)[]]>([
    ["no replicate", { replicates: [] }, ["replicates"]],
    ["nothing sown", { replicates: [{ sown: 0, normal: 0 }] }, ["replicates", 0, "sown"]],
    ["more germinated than sown", { replicates: [{ sown: 10, normal: 11 }] }, ["replicates", 0, "normal"]],
    ["kinds past sown", { replicates: [{ sown: 10, normal: 8, dead: 3 }] }, ["replicates", 0, "dead"]],
    ["half a seed", { replicates: [{ sown: 10, normal: 8.5 }] }, ["replicates", 0, "normal"]],
    ["a negative count", { replicates: [{ sown: 10, normal: 8, hard: -1 }] }, ["replicates", 0, "hard"]],
    ["confidence 1", { replicates: [{ sown: 10, normal: 8 }], confidence: 1 }, ["confidence"]],
    ["a standard in percent", { replicates: [{ sown: 10, normal: 8 }], standard: 85 }, ["standard"]],
  ])("%s is refused at its place", (_, input, path) => {
    expect(refusedAt(input)).toEqual([path]);
  });
});

describe("whatever the counts", () => {
  const counts = fc
    .integer({ min: 1, max: 500 })
    .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
  const confidence = fc.double({ min: 0.01, max: 0.999, noNaN: true });

  it("every interval covers x/n, and the exact one contains Jeffreys'", () => {
    fc.assert(
      fc.property(counts, confidence, ([x, n], level) => {
        const { exact, wilson, jeffreys, germination } = one(x, n, { confidence: level });
        for (const { low, high } of [exact, wilson]) {
          expect(low).toBeLessThanOrEqual(germination);
          expect(high).toBeGreaterThanOrEqual(germination);
        }
        expect(exact.low).toBeLessThanOrEqual(jeffreys.low + 1e-12);
        expect(exact.high).toBeGreaterThanOrEqual(jeffreys.high - 1e-12);
      }),
    );
  });

  it("the 95 % exact interval covers the true share at least 95 times in 100, for every share on a grid", () => {
    for (const n of [5, 10, 20, 50]) {
      const intervals = Array.from({ length: n + 1 }, (_, x) => one(x, n).exact);
      for (let p = 0.005; p < 1; p += 0.005) {
        let covered = 0;
        let chance = (1 - p) ** n;
        for (let x = 0; x <= n; x++) {
          const { low, high } = intervals[x] ?? { low: 1, high: 0 };
          if (low <= p && p <= high) covered += chance;
          chance *= (((n - x) / (x + 1)) * p) / (1 - p);
        }
        expect(covered, `n ${n}, p ${p}`).toBeGreaterThanOrEqual(0.95 - 1e-12);
      }
    }
  });

  it("the order of the replicates does not matter", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 25 }), { minLength: 2, maxLength: 8 }), (normals) => {
        expectAgreement(inReplicates([...normals].reverse(), 25), inReplicates(normals, 25));
      }),
    );
  });
});
