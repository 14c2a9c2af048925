import { describe, expect, it } from "vitest";
import { normalCdf } from "@/lib/science/distributions/normal";
import { kiLosing } from "@/lib/science/seed-life/ki-losing";
import { kiReaching } from "@/lib/science/seed-life/ki-reaching";

describe("the Ki that reaches a threshold in so many σ", () => {
  it("lies above the threshold's own deviate by them (Φ⁻¹(0.75) = 0.6745)", () => {
    expect(kiReaching(0.75, 1)(0)).toBeCloseTo(0.6744897501960817, 12);
    expect(kiReaching(0.75, 1)(1.5)).toBeCloseTo(2.174489750196082, 12);
    expect(kiReaching(0.675, 0.9)(1)).toBeCloseTo(1.674489750196082, 12);
  });

  it("loses the part asked for: Φ(Ki − d) = c·Φ(Ki)", () => {
    for (const c of [0.01, 0.5, 0.85, 0.99, 0.999999]) {
      for (const deviates of [0.003, 0.05, 0.3, 1, 2.7, 9, 40]) {
        const ki = kiLosing(c)(deviates);
        if (ki > -30) expect(normalCdf(ki - deviates) / (c * normalCdf(ki))).toBeCloseTo(1, 6);
      }
    }
  });

  it("is anything where the threshold stands at the beginning, nothing where no time has passed", () => {
    expect(kiReaching(1, 1)(0)).toBe(Number.POSITIVE_INFINITY);
    expect(kiReaching({ ofInitial: 1 }, 1)(0)).toBe(Number.POSITIVE_INFINITY);
    expect(kiReaching({ ofInitial: 0.85 }, 1)(0)).toBe(Number.NEGATIVE_INFINITY);
  });
});
