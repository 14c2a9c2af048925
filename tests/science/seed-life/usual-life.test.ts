import { describe, expect, it } from "vitest";
import crops from "@/lib/science/crops/crops.json";
import { lifePrior } from "@/lib/science/seed-life/life-prior";
import storageLife from "@/lib/science/seed-life/storage-life.json";
import rowOfCrop from "@/lib/science/seed-life/storage-life-of-crop.json";
import { usualLife } from "@/lib/science/seed-life/usual-life";

describe("usual seed life", () => {
  it("is the range of the table of storage lives where that has the crop (onion 1, lettuce 3 to 6 years)", () => {
    expect(usualLife({ cropKey: "onion", profile: { low: 1, high: 2 } })).toMatchObject({
      low: 1,
      high: 1,
      verified: true,
    });
    expect(usualLife({ cropKey: "lettuce" })).toMatchObject({ low: 3, high: 6 });
  });

  it("is found by the common name of a crop that is not in the list", () => {
    expect(usualLife({ commonName: " cornsalad " })).toMatchObject({ low: 5, high: 5 });
  });

  it("is the profile's where the table lacks the crop, and says that it was not verified", () => {
    const profile = { low: 3, high: 6, source: "the crop list" };
    expect(usualLife({ cropKey: "wheat-bread", profile })).toEqual({
      low: 3,
      high: 6,
      source: "the crop list",
      verified: false,
    });
    expect(usualLife({ cropKey: "own-crop", profile: { low: null, high: 4 } })).toMatchObject({ low: 4, high: 4 });
  });

  it("is not known where nothing says it", () => {
    expect(usualLife({ cropKey: "own-crop", commonName: "Skirret" })).toBeNull();
    expect(usualLife({ cropKey: "own-crop", profile: { low: null, high: null } })).toBeNull();
  });

  it("every crop joined to the table stands in the crop list, every row in the table", () => {
    const keys = new Set((crops as { key: string }[]).map(({ key }) => key));
    const rows = new Set(storageLife.rows.map(({ crop }) => crop));
    for (const [key, row] of Object.entries(rowOfCrop)) {
      expect(keys, key).toContain(key);
      expect(rows, row).toContain(row);
    }
  });
});

it("the prior of a kind puts ln σ at ln(L/1.12): bean of 3 years, σ about 2.7 years", () => {
  expect(Math.exp(lifePrior({ low: 3, high: 3 }).lnSigmaYears.mean)).toBeCloseTo(2.679, 3);
  expect(lifePrior({ low: 3, high: 5 })).toMatchObject({ Ki: { mean: 1.65, sd: 0.5 }, lnSigmaYears: { sd: 0.8 } });
});
