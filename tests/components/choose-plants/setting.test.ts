import { describe, expect, it } from "vitest";
import {
  keepOf,
  pollenOf,
  readSetting,
  type Setting,
  settingInAddress,
  startSetting,
} from "@/components/choose-plants/setting";
import { aGround, aPlant, aTrait } from "./a-ground";

const ground = aGround({
  plants: [aPlant("1"), aPlant("T 2~b"), aPlant("3", { gone: "eaten" })],
  traits: [aTrait("height"), aTrait("ears")],
  people: [
    { id: "halda", name: "Halda Morrow" },
    { id: null, name: "somebody" },
  ],
});

describe("a setting in the address", () => {
  it("comes back as it was", () => {
    const setting: Setting = {
      weights: { height: 0, ears: 9 },
      keep: 2,
      withinCells: false,
      pollen: "kept",
      scoresOf: { person: null },
      leftOut: { "1": "smut, lodged & late" },
      taken: ["3"],
      heritability: { ears: [0.1, 0.4] },
      seeds: 1200,
    };
    expect(readSetting(new URLSearchParams(settingInAddress(setting)), ground)).toEqual(setting);
  });

  it("is empty where nothing was set", () => {
    expect(settingInAddress(startSetting)).toBe("");
    expect(readSetting(new URLSearchParams(""), ground)).toEqual(startSetting);
  });

  it("reads nothing out of what it cannot be: unknown plants and traits, weights off the scale, shares above 1", () => {
    const asked =
      "weight=height~11&weight=nothing~3&keep=-2&pollen=half&scores=nobody-here&out=9~smut&out=1&in=9&inherited=ears~0.4-1.2&seeds=many";
    expect(readSetting(new URLSearchParams(asked), ground)).toEqual(startSetting);
  });
});

it("keeps what was set, else what is wanted, else half of those that can be, never more than there are", () => {
  expect(keepOf({ ...startSetting, keep: 40 }, ground)).toBe(2);
  expect(keepOf(startSetting, ground)).toBe(1);
  expect(keepOf(startSetting, { ...ground, wanted: { count: 2, from: "plan" } })).toBe(2);
});

it("roots are chosen before they flower, so the kept alone shed pollen; males that were not marked do all the same", () => {
  expect(pollenOf(startSetting, ground)).toBe("all");
  expect(pollenOf(startSetting, { ...ground, chosenBeforeFlower: true })).toBe("kept");
  const separate = { ...ground, plot: { pollenParents: { low: 9, high: 9 }, sexes: "separate" as const } };
  expect(pollenOf({ ...startSetting, pollen: "kept" }, separate)).toBe("all");
});
