import { describe, expect, it } from "vitest";
import { parseTrait, traitTexts } from "@/lib/schemas/traits/trait-form";
import { granted } from "../../setup/registry";

const base = { name: "lodging", scope: "variety" };
const refusals = (typed: Record<string, string>) => {
  const outcome = parseTrait({ ...base, ...typed });
  return outcome.ok ? [] : outcome.refusals.map((each) => [each.path.join("."), each.code]);
};

describe("a trait that is defined", () => {
  it("has a scale of 1 to 9 unless told, with words for its steps and the end that is good", () => {
    const steps = "1 = all lodged\n9: none lodged";
    const trait = granted(parseTrait({ ...base, kind: "scale", direction: "higher", steps }));
    expect(trait).toMatchObject({ scaleLow: 1, scaleHigh: 9, direction: "higher", unit: null });
    expect(trait.wording.steps).toEqual({ "1": "all lodged", "9": "none lodged" });
    expect(granted(parseTrait(traitTexts(trait, "variety")))).toEqual(trait);
  });

  it("takes only what belongs to its kind", () => {
    const all = { unit: "cm", scaleLow: "1", scaleHigh: "5", choices: "red\nwhite", steps: "yes = red" };
    const count = granted(parseTrait({ ...base, ...all, kind: "count" }));
    expect(count).toMatchObject({ unit: null, scaleLow: null, scaleHigh: null });
    expect(count.wording.choices).toEqual([]);
    expect(granted(parseTrait({ ...base, ...all, kind: "yes-no" })).wording.steps).toEqual({ yes: "red" });
  });

  it("of a category has a list, and may have a part of it that is wanted", () => {
    const typed = { kind: "category", choices: "white; cream\nRed", wanted: "red", direction: "target" };
    expect(granted(parseTrait({ ...base, ...typed })).wording).toEqual({
      ...{ steps: {}, choices: ["white", "cream", "Red"], wanted: ["Red"] },
    });
    expect(refusals({ ...typed, wanted: "blue" })).toEqual([["wanted", "not-a-choice"]]);
    expect(refusals({ ...typed, choices: "white" })).toContainEqual(["choices", "choices-missing"]);
    expect(refusals({ ...typed, choices: "red\nRED", wanted: "" })).toContainEqual(["choices", "choice-twice"]);
    expect(refusals({ kind: "category", choices: "a\nb", direction: "higher" })).toEqual([["direction", "no-ends"]]);
  });

  it("is refused at each field that is not right", () => {
    expect(refusals({ kind: "measure" })).toEqual([["unit", "unit-missing"]]);
    expect(refusals({ kind: "scale", scaleLow: "5", scaleHigh: "1" })).toEqual([["scaleHigh", "scale-ends"]]);
    expect(refusals({ kind: "scale", scaleLow: "1", scaleHigh: "500" })).toEqual([["scaleHigh", "scale-too-long"]]);
    expect(refusals({ kind: "scale", steps: "12 = best" })).toEqual([["steps", "not-a-step"]]);
    expect(refusals({ kind: "scale", steps: "1 = a\n1 = b" })).toEqual([["steps", "step-twice"]]);
    expect(refusals({ kind: "scale", direction: "target" })).toEqual([["target", "target-missing"]]);
    expect(refusals({ kind: "scale", direction: "target", target: "12" })).toEqual([["target", "target-off-scale"]]);
    expect(refusals({ kind: "date", direction: "target" })).toEqual([["direction", "no-target"]]);
    expect(refusals({ kind: "sort" })).toEqual([["kind", "not-one-of"]]);
    expect(refusals({ name: "", kind: "count" })).toEqual([["name", "missing"]]);
  });
});
