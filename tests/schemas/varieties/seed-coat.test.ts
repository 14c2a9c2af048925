import { describe, expect, it } from "vitest";
import { coatColours, coatPatterns } from "@/components/seed-coat";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";

describe("a seed-coat mark", () => {
  it("can be chosen in every pattern and colour that is drawn", () => {
    for (const pattern of coatPatterns) {
      for (const ground of coatColours) {
        const coat = { pattern, ground, second: "wine" };
        expect(storedSeedCoat(JSON.stringify(coat))).toEqual(coat);
      }
    }
  });

  it("is read as it was stored, and is none where what stands there is none", () => {
    const coat = { pattern: "eye", ground: "cream", second: "wine" };
    expect(storedSeedCoat(JSON.stringify(coat))).toEqual(coat);
    expect(storedSeedCoat(null)).toBeNull();
    expect(storedSeedCoat("{broken")).toBeNull();
    expect(storedSeedCoat('{"pattern":"spiral","ground":"cream","second":"wine"}')).toBeNull();
  });
});
