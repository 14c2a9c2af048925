import { describe, expect, it } from "vitest";
import { type OffTypeYear, offTypeTrend } from "@/lib/science/off-types/off-type-trend";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const trend = (found: number[], looked: number[], years: number[]) =>
  answered(
    offTypeTrend({ years: years.map((year, i) => ({ year, looked: looked[i] as number, found: found[i] as number })) }),
  );

describe("published trends", () => {
  it("malformations 48 38 5 1 1 of 17114 14502 793 127 38 have p .1764 (Graubard & Korn; printed .1765)", () => {
    const { z, pValue } = trend([48, 38, 5, 1, 1], [17114, 14502, 793, 127, 38], [1, 2, 3, 4, 5]);
    expect(z).toBeCloseTo(1.351967, 6);
    expect(pValue).toBeCloseTo(0.176386, 6);
  });

  it("17 76 34 32 20 of 57 271 122 85 50 have χ² 3.5408 (Chang et al. 1983; 3.535 printed for the N − 1 form)", () => {
    const { z } = trend([17, 76, 34, 32, 20], [57, 271, 122, 85, 50], [1, 2, 3, 4, 5]);
    expect((z as number) ** 2).toBeCloseTo(3.540754, 5);
    expect(((z as number) ** 2 * 584) / 585).toBeCloseTo(3.535, 3);
  });

  it("9/180 7/200 6/220 3/190 2/210 fall: z −2.620, p .0088; years in between count", () => {
    const { z, pValue } = trend([9, 7, 6, 3, 2], [180, 200, 220, 190, 210], [2019, 2020, 2021, 2023, 2025]);
    expect(z).toBeCloseTo(-2.620409, 5);
    expect(pValue).toBeCloseTo(0.008782, 6);
  });
});

it("nothing that varies is no trend: no off-type at all, every plant one, or one year twice", () => {
  expect(trend([0, 0], [10, 20], [1, 2])).toEqual({ share: 0, z: null, pValue: null, assumed: [] });
  expect(trend([10, 20], [10, 20], [1, 2])).toMatchObject({ share: 1, z: null });
  expect(trend([1, 2], [10, 20], [3, 3])).toMatchObject({ share: 0.1, z: null });
});

it("agrees with 300 trends in exact fractions", () => {
  for (const { input, expected } of referenceCases<{ years: OffTypeYear[] }>("off-type-trend")) {
    expectAgreement(answered(offTypeTrend(input)), expected);
  }
});

it("one year, nothing looked at and more found than looked at are refused at their place", () => {
  const year = { year: 2020, looked: 10, found: 1 };
  expect(pathsOf(offTypeTrend({ years: [year] }))).toEqual([["years"]]);
  expect(pathsOf(offTypeTrend({ years: [year, { ...year, looked: 0, found: 0 }] }))).toEqual([["years", 1, "looked"]]);
  expect(pathsOf(offTypeTrend({ years: [year, { ...year, found: 11 }] }))).toEqual([["years", 1, "found"]]);
  expect(pathsOf(offTypeTrend({ years: [year, { ...year, year: 2020.5 }] }))).toEqual([["years", 1, "year"]]);
});
