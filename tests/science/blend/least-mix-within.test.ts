import fc from "fast-check";
import { expect, it } from "vitest";
import { coancestryOfMix, leastMixWithin } from "@/lib/science/blend/least-mix-within";

const two = [
  [0.1, 0.03],
  [0.03, 0.08],
];
const three = [
  [0.1, 0.03, 0.04],
  [0.03, 0.08, 0.03],
  [0.04, 0.03, 0.15],
];
const near = (found: Float64Array | null, wanted: readonly number[]) => {
  expect(found).not.toBeNull();
  wanted.forEach((share, i) => {
    expect(found?.[i]).toBeCloseTo(share, 9);
  });
};

it("without a limit that binds it is the mix of least coancestry (three lots: 0.32738, 0.49405, 0.17857; θ 0.054702)", () => {
  const mix = leastMixWithin(three, [1, 1, 1]);
  near(mix, [0.3273809523809527, 0.49404761904761885, 0.17857142857142863]);
  expect(coancestryOfMix(three, mix ?? [])).toBeCloseTo(0.054702380952380975, 12);
});

it("no lot makes up more than it can give (by hand)", () => {
  near(leastMixWithin(two, [1, 0.5]), [0.5, 0.5]);
  near(leastMixWithin(two, [1, 0.4]), [0.6, 0.4]);
  expect(coancestryOfMix(two, [0.6, 0.4])).toBeCloseTo(0.36 * 0.1 + 0.16 * 0.08 + 0.48 * 0.03, 12);
  // the second at 0.3: of the other 0.7 the first takes 22/34
  near(leastMixWithin(three, [1, 0.3, 1]), [(0.7 * 22) / 34, 0.3, (0.7 * 12) / 34]);
});

it("lots that together cannot fill the mix give none; those that just can give all they have", () => {
  expect(leastMixWithin(two, [0.5, 0.4])).toBeNull();
  near(leastMixWithin(two, [0.6, 0.4]), [0.6, 0.4]);
});

it("a split of a lot brings nothing, and needs nothing to be won", () => {
  const same = [
    [0.05, 0.05],
    [0.05, 0.05],
  ];
  expect(coancestryOfMix(same, leastMixWithin(same, [0.5, 0.5]) ?? [])).toBeCloseTo(0.05, 12);
});

it("no other mix within the limits is better (random matrices, random mixes)", () => {
  const entry = fc.double({ min: -1, max: 1, noNaN: true });
  const share = fc.double({ min: 0.01, max: 1, noNaN: true });
  const of4 = <T>(each: fc.Arbitrary<T>) => fc.array(each, { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(of4(of4(entry)), of4(share), of4(share), (points, limits, tried) => {
      const gram = points.map((a) => points.map((b) => a.reduce((sum, x, k) => sum + x * (b[k] as number), 0)));
      const mix = leastMixWithin(gram, limits);
      const all = limits.reduce((sum, each) => sum + each, 0);
      if (all < 1 - 1e-9) return mix === null;
      if (mix === null) return false;
      const sum = mix.reduce((total, each) => total + each, 0);
      const within = mix.every((each, i) => each >= 0 && each <= (limits[i] as number) + 1e-9);
      // another mix within the limits: each lot a part of what it can give, filled up from the first on
      let left = 1;
      const other = limits.map((limit, i) => {
        const part = Math.min(left, limit * (tried[i] as number));
        left -= part;
        return part;
      });
      limits.forEach((limit, i) => {
        const more = Math.min(left, limit - (other[i] as number));
        other[i] = (other[i] as number) + more;
        left -= more;
      });
      return Math.abs(sum - 1) < 1e-9 && within && coancestryOfMix(gram, mix) <= coancestryOfMix(gram, other) + 1e-9;
    }),
    { numRuns: 300 },
  );
});
