import { expect, it } from "vitest";
import { unusualSeedWeight } from "@/lib/science/seed-weight/unusual-seed-weight";

// A crop of 2 to 4 seeds a gram: 250 to 500 g a thousand; ten times beyond is below 25 and above 5,000 g.
const crop = { seedsPerGramMin: 2, seedsPerGramMax: 4 };

it("a seed weight is odd where it lies more than ten times off the crop's", () => {
  expect(unusualSeedWeight(24.9, crop)).toEqual({ lightest: 250, heaviest: 500 });
  expect(unusualSeedWeight(5001, crop)).toEqual({ lightest: 250, heaviest: 500 });
  for (const fits of [25, 320, 5000]) expect(unusualSeedWeight(fits, crop)).toBeNull();
});

it("nothing is odd where the crop's own is not known", () => {
  expect(unusualSeedWeight(1, { seedsPerGramMin: null, seedsPerGramMax: 4 })).toBeNull();
  expect(unusualSeedWeight(1, { seedsPerGramMin: 2, seedsPerGramMax: null })).toBeNull();
});
