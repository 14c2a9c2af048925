import { describe, expect, it } from "vitest";
import { readScore, scoreText } from "@/lib/schemas/traits/read-score";
import { noWording, readWording, storedWording, type TraitDefinition } from "@/lib/schemas/traits/trait";

const trait = (kind: TraitDefinition["kind"], more: Partial<TraitDefinition> = {}): TraitDefinition => ({
  ...{ name: "t", kind, unit: null, direction: null, target: null, scaleLow: null, scaleHigh: null },
  wording: noWording,
  ...more,
});
const read = (of: TraitDefinition, typed: string) => {
  const outcome = readScore(of, typed, "north");
  return outcome.ok ? scoreText(outcome.value) : (outcome.refusals[0]?.sentence ?? "");
};

describe("a score", () => {
  it("of a count is a whole number, and 0 is one", () => {
    expect(read(trait("count"), "0")).toBe("0");
    expect(read(trait("count"), " 12 ")).toBe("12");
    for (const wrong of ["2.5", "-1", "two", "1e3"])
      expect(read(trait("count"), wrong)).toBe(`"${wrong}" is no count; write a whole number, 0 or more`);
  });

  it("of a measure takes a point or a comma, and its own unit", () => {
    const height = trait("measure", { unit: "cm" });
    expect(read(height, "182,5")).toBe("182.5");
    expect(read(height, "182.50")).toBe("182.5");
    expect(read(height, "182 cm")).toBe("182");
    expect(read(height, "1.8 m")).toBe('"1.8 m" is no number of cm; write the cm alone, as 12.5');
  });

  it("of a scale is one of its steps, by number or by the step's words", () => {
    const lodging = trait("scale", { wording: { ...noWording, steps: { "1": "all lodged", "9": "none lodged" } } });
    expect(read(lodging, "9")).toBe("9");
    expect(read(lodging, "None  lodged")).toBe("9");
    expect(read(lodging, "12")).toBe('"12" is no step of 1 to 9; write a whole number from 1 to 9');
    expect(read(lodging, "0")).toContain("is no step of 1 to 9");
    expect(read(lodging, "4.5")).toContain("is no step of 1 to 9");
    expect(read(trait("scale", { scaleLow: 1, scaleHigh: 5 }), "6")).toContain("is no step of 1 to 5");
    expect(read(trait("scale", { scaleLow: 0, scaleHigh: 5 }), "0")).toBe("0");
  });

  it("of yes or no keeps not looked apart from no", () => {
    const silk = trait("yes-no");
    expect(["y", "YES", "n", "no", "-", "not looked"].map((typed) => read(silk, typed))).toEqual([
      ...["yes", "yes", "no", "no", "not looked", "not looked"],
    ]);
    expect(read(silk, "maybe")).toBe('"maybe" is neither yes nor no; write y for yes, n for no, or - for not looked');
  });

  it("of a category is a word of its list, or a beginning that one alone has", () => {
    const colour = trait("category", { wording: { ...noWording, choices: ["white", "cream", "wine red"] } });
    expect(read(colour, "CREAM")).toBe("cream");
    expect(read(colour, "wi")).toBe("wine red");
    expect(read(colour, "w")).toBe('"w" may be white or wine red; write white, cream, wine red');
    expect(read(colour, "blue")).toBe(`"blue" is not in the trait's list; write white, cream, wine red`);
    expect(read(trait("category"), "as it comes")).toBe("as it comes");
  });

  it("of a day is as sharp or vague as it is known", () => {
    expect(read(trait("date"), "2024-07~")).toBe("2024-07~");
    expect(read(trait("date"), "2024-02-30")).toContain("is not a date");
  });
});

describe("the wording of a trait", () => {
  it("comes back as it was stored, and none is stored where there is none", () => {
    const wording = { steps: { "9": "strong", "1": "weak" }, choices: [], wanted: [] };
    expect(readWording(storedWording(wording))).toEqual(wording);
    expect(storedWording(noWording)).toBeNull();
    expect(readWording("no such thing")).toEqual(noWording);
  });
});
