import { expect, it } from "vitest";
import { replicateSpread } from "@/lib/science/germination/replicate-spread";

const replicates = (sown: number, ...normals: number[]) => normals.map((normal) => ({ sown, normal }));

it("45 of 2 × 25 in halves of 25 and 20 are no wider than chance gives once in 20: exact 0.0502 (whole numbers)", () => {
  const spread = replicateSpread(replicates(25, 25, 20));
  expect(spread.exactP).toBeCloseTo(0.05015198, 8);
  expect(spread.consistent).toBe(true);
});

it("replicates of unlike size have the harmonic mean of their sizes: 3.170 √(0.9·0.1/40) for 30 and 60", () => {
  const spread = replicateSpread([
    { sown: 30, normal: 27 },
    { sown: 60, normal: 54 },
  ]);
  expect(spread.toleratedRange).toBeCloseTo(3.169822136118961 * Math.sqrt(0.09 / 40), 12);
  expect(spread).toMatchObject({ exactP: null, degrees: 1, consistent: true });
});

it("χ² of 47 and 40 of 50 is the square of z 2.0815", () => {
  expect(replicateSpread(replicates(50, 47, 40)).chiSquare).toBeCloseTo(2.08145362 ** 2, 6);
});
