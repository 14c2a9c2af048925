import { describe, expect, it } from "vitest";
import { besselI0Scaled } from "@/lib/science/isolation/bessel-i0-scaled";
import { shareAtDistance } from "@/lib/science/isolation/distance-curve";
import { kernelOverRectangle } from "@/lib/science/isolation/kernel-over-rectangle";
import { kernelDensity, type PollenKernel } from "@/lib/science/isolation/pollen-kernel";
import { type PollenRiskInput, pollenRisk } from "@/lib/science/isolation/pollen-risk";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";
import { isolationCases, within } from "./isolation-cases";

const kernels: Readonly<Record<string, PollenKernel>> = {
  "maize-2dt": { model: "2dt", a: 1.55, b: 1.45 },
  "maize-nig": { model: "nig", d: 0.2073, l: 0.3971, lz: 0.0649 },
  "maize-geometric": { model: "geometric", b: -2.59 },
};
const kernelOf = (name: unknown) => kernels[String(name)] as PollenKernel;
const faba = { a: 0.1628, b: -0.6067, cap: 0.5 };

/** x from, x to, y from, y to: how the shared cases write a rectangle. */
const ground = ([x = 0, right = 0, y = 0, top = 0]: readonly number[]) => ({ x, y, width: right - x, height: top - y });

describe("the shared cases of a kernel", () => {
  it.each(isolationCases("kernelDensity"))("$name", ({ input, expected, tolerance }) => {
    expect(within(kernelDensity(kernelOf(input.kernel), input.r as number), expected as number, tolerance)).toBe(true);
  });

  it.each(isolationCases("kernelMass"))("$name, by a square of the same ground", ({ input, expected }) => {
    // the mass of a circle lies between those of the squares within and around it
    const radius = input.radius as number;
    const square = (half: number) =>
      kernelOverRectangle(kernelOf(input.kernel), { x: 0, y: 0 }, ground([-half, half, -half, half]));
    expect(square(radius)).toBeGreaterThan(expected as number);
    expect(square(radius / Math.SQRT2)).toBeLessThan(expected as number);
  });

  it("a whole plane holds all of it", () => {
    const wide = ground([-5e6, 5e6, -5e6, 5e6]);
    // what lies beyond: the closed tail (1 + R²/a²)^(1 − b) of the 2Dt at 5,000 km is 0.0012 %
    expect(kernelOverRectangle(kernelOf("maize-2dt"), { x: 0, y: 0 }, wide)).toBeCloseTo(1, 4);
    expect(kernelOverRectangle(kernelOf("maize-nig"), { x: 0, y: 0 }, wide)).toBeCloseTo(1, 3);
  });

  it.each(isolationCases("insetPercent"))("$name", ({ input, expected, tolerance }) => {
    // a square donor in the middle of a field: percent at a distance from its edge, along the middle line
    const { donorSideM: side, fieldWidthM: width, fieldHeightM: height, distanceM } = input as Record<string, number>;
    const [w, h, s] = [(width as number) / 2, (height as number) / 2, (side as number) / 2];
    const place = { x: s + (distanceM as number), y: 0 };
    const donor = kernelOverRectangle(kernelOf(input.kernel), place, ground([-s, s, -s, s]));
    const whole = kernelOverRectangle(kernelOf(input.kernel), place, ground([-w, w, -h, h]));
    expect(within((100 * donor) / whole, expected as number, tolerance)).toBe(true);
  });
});

describe("the shared cases of a plot", () => {
  const risk = (input: Readonly<Record<string, unknown>>) =>
    answered(
      pollenRisk({
        form: "plane",
        kernel: kernelOf(input.kernel),
        plot: ground(input.own as number[]),
        sources: (input.sources as { rect: number[]; weight: number }[]).map(({ rect, weight }, index) => ({
          id: String(index),
          ...ground(rect),
          overlap: weight,
          compatibility: 1,
        })),
        points: input.samples as number,
      }),
    );

  it.each([...isolationCases("plotShareParts"), ...isolationCases("plotShare")])(
    "$name",
    ({ input, expected, tolerance }) => {
      const { foreignShare, bySource } = risk(input);
      const [given, wanted] = Array.isArray(expected)
        ? [bySource.map(({ share }) => share), expected as number[]]
        : [[foreignShare], [expected as number]];
      expect(given.map((share, index) => within(share, wanted[index] as number, tolerance))).toEqual(
        wanted.map(() => true),
      );
    },
  );

  it.each(isolationCases("oddsShare"))("$name", ({ input, expected, tolerance }) => {
    const [source] = input.sources as Record<string, number>[];
    const { percentEqualSize, sizeRatio, overlap, compatibility } = source as Record<string, number>;
    const { foreignShare } = answered(
      pollenRisk({
        form: "odds",
        curve: { a: (percentEqualSize as number) / 100, b: 0, cap: 1 },
        plotSize: 1,
        sources: [
          {
            id: "a",
            distanceMetres: 5,
            size: sizeRatio as number,
            overlap: overlap as number,
            compatibility: compatibility as number,
          },
        ],
      }),
    );
    expect(within(foreignShare, expected as number, tolerance)).toBe(true);
  });

  it.each(isolationCases("curvePercent").filter(({ input }) => input.curve === "faba-popebond-power"))(
    "$name",
    ({ input, expected, tolerance }) => {
      expect(within(100 * shareAtDistance(faba, input.distanceM as number), expected as number, tolerance)).toBe(true);
    },
  );

  it("the range of a share is clamped at all of it (shared case: 0.4 five times either way)", () => {
    const [clamped] = isolationCases("interval").filter(({ input }) => input.share === 0.4);
    const given = answered(
      pollenRisk({
        form: "odds",
        curve: { a: 0.4, b: 0, cap: 1 },
        plotSize: 1,
        sources: [{ id: "a", distanceMetres: 1, size: 1, overlap: 1, compatibility: 1 }],
        uncertaintyFactor: 5,
      }),
    );
    expect([given.range.low, given.range.high].map((end) => Number(end.toPrecision(12)))).toEqual(clamped?.expected);
  });
});

it("agrees with integrals along the rays of each bearing (plane) and with logarithms of the odds form", () => {
  for (const { input, expected } of referenceCases<PollenRiskInput>("pollen-risk")) {
    const tolerance = input.form === "odds" ? { relative: 1e-9, absolute: 1e-12 } : { relative: 1e-4, absolute: 1e-9 };
    expectAgreement(answered(pollenRisk(input)), expected, tolerance);
  }
});

it("the scaled Bessel function agrees with 30 digits, on both sides of the seam of its two series", () => {
  const cases = referenceCases("bessel-i0-scaled") as unknown as readonly { x: number; scaled: number }[];
  for (const { x, scaled } of cases) expect(Math.abs(besselI0Scaled(x) / scaled - 1)).toBeLessThan(1e-13);
});

it("points are followed log-log: flat before the first, along the last segment beyond the last", () => {
  const curve = {
    points: [
      { distanceMetres: 100, share: 0.001 },
      { distanceMetres: 1, share: 0.1 },
      { distanceMetres: 10, share: 0.01 },
    ],
  };
  expect(
    [0, 0.5, 1, 10, 31.6227766, 1000].map((metres) => Number(shareAtDistance(curve, metres).toPrecision(7))),
  ).toEqual([0.1, 0.1, 0.1, 0.01, 0.003162278, 0.0001]);
});

describe("what is taken for granted and what is refused", () => {
  const plot = ground([0, 10, 0, 10]);
  const source = { id: "a", ...ground([20, 30, 0, 10]), overlap: 1, compatibility: 1 };
  const plane = { form: "plane" as const, kernel: kernelOf("maize-2dt"), plot, sources: [source] };
  const odds = {
    form: "odds" as const,
    curve: faba,
    plotSize: 30,
    sources: [{ id: "a", distanceMetres: 9, size: 3, overlap: 1, compatibility: 1 }],
  };

  it("no sources are a share of nothing, and said to be none given", () => {
    expect(answered(pollenRisk({ ...plane, sources: [] }))).toMatchObject({
      foreignShare: 0,
      range: { low: 0, high: 0 },
      bySource: [],
      largest: null,
      assumed: [{ code: "no-sources" }],
    });
  });

  it("each default that moves the figure is named", () => {
    const codes = (input: PollenRiskInput) => answered(pollenRisk(input)).assumed.map(({ code }) => code);
    expect(codes(plane)).toEqual(["nine-places", "sheds-fully", "usual-uncertainty"]);
    expect(codes(odds)).toEqual(["usual-uncertainty"]);
    expect(codes({ ...plane, points: 3, uncertaintyFactor: 5, sources: [{ ...source, shedding: 1 }] })).toEqual([]);
  });

  it("a neighbour may touch the plot, but not stand in it", () => {
    answered(pollenRisk({ ...plane, sources: [{ ...source, x: 10 }] }));
    expect(pathsOf(pollenRisk({ ...plane, sources: [{ ...source, x: 9 }] }))).toEqual([["sources", 0]]);
    const borders = [ground([-2, 0, 0, 10]), ground([-1, 0, 5, 6])];
    expect(pathsOf(pollenRisk({ ...plane, ownBorders: borders }))).toEqual([["ownBorders", 1]]);
    expect(pathsOf(pollenRisk({ ...plane, ownBorders: [plot] }))).toEqual([["ownBorders", 0]]);
  });

  it("sizes of nothing, a share of all, ids twice, factors beyond 1 and kernels without a whole are refused at their place", () => {
    const one = odds.sources[0] as (typeof odds.sources)[number];
    expect(pathsOf(pollenRisk({ ...odds, plotSize: 0 }))).toEqual([["plotSize"]]);
    expect(pathsOf(pollenRisk({ ...odds, sources: [{ ...one, size: 0 }] }))).toEqual([["sources", 0, "size"]]);
    expect(pathsOf(pollenRisk({ ...odds, sources: [one, one] }))).toEqual([["sources", 1, "id"]]);
    expect(pathsOf(pollenRisk({ ...odds, sources: [{ ...one, overlap: 1.1 }] }))).toEqual([["sources", 0, "overlap"]]);
    const all = { a: 3, b: 0, cap: 1 };
    expect(pathsOf(pollenRisk({ ...odds, curve: all }))).toEqual([["sources", 0, "distanceMetres"]]);
    expect(pathsOf(pollenRisk({ ...odds, curve: { points: [] } }))).toEqual([["curve", "points"]]);
    expect(pathsOf(pollenRisk({ ...odds, uncertaintyFactor: 0.5 }))).toEqual([["uncertaintyFactor"]]);
    expect(pathsOf(pollenRisk({ ...plane, kernel: { model: "2dt", a: 1, b: 1 } }))).toEqual([["kernel", "b"]]);
    expect(pathsOf(pollenRisk({ ...plane, kernel: { model: "geometric", b: -2 } }))).toEqual([["kernel", "b"]]);
    expect(pathsOf(pollenRisk({ ...plane, plot: { ...plot, width: 0 } }))).toEqual([["plot", "width"]]);
    expect(pathsOf(pollenRisk({ ...plane, points: 0 }))).toEqual([["points"]]);
  });
});
