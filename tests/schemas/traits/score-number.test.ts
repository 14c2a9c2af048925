import { expect, it } from "vitest";
import { betterEnd, scoreNumber } from "@/lib/schemas/traits/score-number";
import { noWording, type TraitDefinition, type TraitKind } from "@/lib/schemas/traits/trait";

const trait = (kind: TraitKind, more: Partial<TraitDefinition> = {}): TraitDefinition => ({
  ...{ name: "x", kind, unit: null, direction: null, target: null, scaleLow: null, scaleHigh: null },
  wording: noWording,
  ...more,
});
const said = (text: string) => ({ value: null, text });

it("is the number itself, 1 for yes and wanted, 0 for no and not wanted, and days for a day", () => {
  expect(scoreNumber(trait("measure"), { value: 182.5, text: null })).toBe(182.5);
  expect(["yes", "no", "not looked"].map((text) => scoreNumber(trait("yes-no"), said(text)))).toEqual([1, 0, null]);
  const colour = trait("category", { wording: { ...noWording, choices: ["white", "cream"], wanted: ["white"] } });
  expect(["white", "cream"].map((text) => scoreNumber(colour, said(text)))).toEqual([1, 0]);
  expect(scoreNumber(trait("category"), said("white"))).toBeNull();
  const days = ["2024-03-31", "2024-02-28"].map((text) => scoreNumber(trait("date"), said(text)) ?? 0);
  // 2024 is a leap year: 28 February to 31 March are 32 days
  expect((days[0] ?? 0) - (days[1] ?? 0)).toBe(32);
  expect(scoreNumber(trait("date"), said("2024-08"))).toBeNull();
});

it("is good at the end that the trait says; at none where nobody said, or a target is not", () => {
  expect(betterEnd(trait("count", { direction: "lower" }))).toBe("lower");
  expect(betterEnd(trait("measure", { direction: "target", target: 190 }))).toEqual({ target: 190 });
  expect(betterEnd(trait("measure", { direction: "target" }))).toBeNull();
  expect(betterEnd(trait("scale", { direction: "none" }))).toBeNull();
  expect(betterEnd(trait("scale"))).toBeNull();
  expect(betterEnd(trait("category", { wording: { ...noWording, wanted: ["white"] } }))).toBe("higher");
});
