import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { coatColours, coatFromName, coatPatterns, SeedCoat, seedShapes, shapeOfCrop } from "@/components/seed-coat";
import { tone } from "@/components/seed-coat/coat";
import { numberOf } from "@/components/seed-coat/number-stream";
import { SeedCoatSchema } from "@/lib/schemas/varieties/seed-coat";
import crops from "@/lib/science/crops/crops.json";

const names = Array.from({ length: 400 }, (_, index) => `Variety ${index}`);

describe("a mark drawn from the name", () => {
  it("hashes as the published FNV-1a does", () => {
    // test vectors of the authors' reference page: "" and "a", "foobar" (32 bit)
    expect(numberOf("")).toBe(0x811c9dc5);
    expect(numberOf("a")).toBe(0xe40c292c);
    expect(numberOf("foobar")).toBe(0xbf9cf968);
  });

  it("is the same for the same name, however it is written", () => {
    expect(coatFromName("Tallow Wren")).toEqual(coatFromName("  tallow wren "));
    const drawing = renderToStaticMarkup(<SeedCoat name="Tallow Wren" crop="pea" />);
    expect(renderToStaticMarkup(<SeedCoat name="Tallow Wren" crop="pea" />)).toBe(drawing);
  });

  it("uses every pattern but plain, and two colours of different tone", () => {
    const coats = names.map(coatFromName);
    expect(new Set(coats.map((coat) => coat.pattern)).size).toBe(coatPatterns.length - 1);
    for (const coat of coats) expect(coat.ground).not.toBe(coat.second);
  });

  it("tells most names of a hundred apart", () => {
    const marks = new Set(names.slice(0, 100).map((name) => JSON.stringify(coatFromName(name))));
    expect(marks.size).toBeGreaterThan(80);
  });
});

describe("a chosen mark", () => {
  it("can be any that the registry takes", () => {
    expect(SeedCoatSchema.safeParse({ pattern: "two tones", ground: "cream", second: "wine" }).success).toBe(true);
  });

  it("is drawn in every shape, pattern and ink", () => {
    for (const shape of seedShapes) {
      for (const pattern of coatPatterns) {
        const drawing = renderToStaticMarkup(
          <SeedCoat name="x" shape={shape} coat={{ pattern, ground: "cream", second: "brown" }} ink="black" />,
        );
        expect(drawing).not.toContain("NaN");
        expect(drawing).not.toContain("--seed-cream");
      }
    }
  });
});

it("a colour is white, dotted or black in ink, and all three occur", () => {
  expect(new Set(coatColours.map(tone))).toEqual(new Set(["white", "stippled", "black"]));
});

it("crops have the outline of their seed", () => {
  expect(shapeOfCrop("bean-runner")).toBe("bean");
  expect(shapeOfCrop("maize-pop")).toBe("kernel");
  expect(shapeOfCrop("squash-maxima")).toBe("flat");
  expect(shapeOfCrop("lettuce")).toBe("long");
  expect(shapeOfCrop("onion")).toBe("angular");
  expect(shapeOfCrop("beet")).toBe("cluster");
  expect(shapeOfCrop("cabbage")).toBe("round");
  expect(shapeOfCrop("a crop of my own")).toBe("round");
  expect(JSON.stringify(crops)).toContain("bean-runner");
});
