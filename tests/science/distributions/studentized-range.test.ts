import { describe, expect, it } from "vitest";
import { studentizedRangeCdf, studentizedRangeQuantile975 } from "@/lib/science/distributions/studentized-range";
import { referenceCases } from "../agreement";

interface Row {
  readonly k: number;
  readonly quantile975: number;
  readonly cdfAt3: number;
}

describe("the studentized range", () => {
  const rows = referenceCases("studentized-range") as unknown as readonly Row[];

  it("has the 2.5 % points 3.170, 3.984 and 4.605 for 2, 4 and 8 replicates (as Miles 1963 is quoted)", () => {
    expect([2, 4, 8].map((k) => studentizedRangeQuantile975(k).toFixed(3))).toEqual(["3.170", "3.984", "4.605"]);
  });

  it("is within 1e-12 of 20-digit quadrature for 2 to 1000 replicates", () => {
    for (const { k, quantile975, cdfAt3 } of rows) {
      expect(Math.abs(studentizedRangeQuantile975(k) / quantile975 - 1), `k ${k}`).toBeLessThan(1e-12);
      expect(Math.abs(studentizedRangeCdf(3, k) - cdfAt3), `k ${k}`).toBeLessThan(1e-14);
    }
  });

  it("is for two draws the distance of a normal pair: Q = √2 z", () => {
    expect(studentizedRangeQuantile975(2)).toBeCloseTo(Math.SQRT2 * 2.241402727604945, 12);
  });
});
