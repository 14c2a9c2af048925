import { describe, expect, it } from "vitest";
import { coatColours, coatPatterns } from "@/components/seed-coat";
import { seedCoatColours, seedCoatPatterns, storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";

describe("a seed-coat mark", () => {
  it("can be chosen in every pattern and colour that is drawn, and in no other", () => {
    expect([...seedCoatPatterns]).toEqual([...coatPatterns]);
    expect([...seedCoatColours]).toEqual([...coatColours]);
  });

  it("is read as it was stored, and is none where what stands there is none", () => {
    const coat = { pattern: "eye", ground: "cream", second: "wine" };
    expect(storedSeedCoat(JSON.stringify(coat))).toEqual(coat);
    expect(storedSeedCoat(null)).toBeNull();
    expect(storedSeedCoat("{broken")).toBeNull();
    expect(storedSeedCoat('{"pattern":"spiral","ground":"cream","second":"wine"}')).toBeNull();
  });
});
