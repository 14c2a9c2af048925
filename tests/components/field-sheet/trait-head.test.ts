import { describe, expect, it } from "vitest";
import { traitHead } from "@/components/field-sheet/trait-head";
import { noWording, type TraitDefinition } from "@/lib/schemas/traits/trait";

const trait = (change: Partial<TraitDefinition>): TraitDefinition => ({
  ...{ name: "vigour", kind: "scale", unit: null, direction: null, target: null, scaleLow: null, scaleHigh: null },
  wording: noWording,
  ...change,
});

// Expected heads by hand.
describe("the head of a trait's column", () => {
  it("tells the ends of a scale in their words, and the unit of a measure", () => {
    const wording = { ...noWording, steps: { "1": "weak", "9": "strong" } };
    expect(traitHead(trait({ wording }))).toEqual({ name: "vigour", scale: ["1 weak", "9 strong"], full: null });
    expect(traitHead(trait({ scaleLow: 1, scaleHigh: 5 })).scale).toEqual(["1–5"]);
    expect(traitHead(trait({ kind: "measure", unit: "cm" })).scale).toEqual(["cm"]);
    expect(traitHead(trait({ kind: "yes-no" })).scale).toEqual(["y  n  –"]);
  });

  it("says in full under the table what finds no room over the column", () => {
    const steps = { "1": "lies on the ground", "5": "leans", "9": "upright" };
    const scale = traitHead(trait({ wording: { ...noWording, steps } }));
    expect(scale).toEqual({ name: "vigour", scale: ["1–9"], full: "1 lies on the ground, 5 leans, 9 upright" });
    const choices = ["white", "cream", "buff", "red"];
    const colour = traitHead(trait({ kind: "category", wording: { ...noWording, choices } }));
    expect(colour).toMatchObject({ scale: ["a word of", "the list"], full: "white, cream, buff, red" });
    const two = traitHead(trait({ kind: "category", wording: { ...noWording, choices: ["white", "cream"] } }));
    expect(two).toMatchObject({ scale: ["white", "cream"], full: null });
  });
});
