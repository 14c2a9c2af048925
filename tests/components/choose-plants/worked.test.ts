import { expect, it } from "vitest";
import { againstFloor, againstWanted, costInWords, seedsOfEach } from "@/components/choose-plants/choice-words";
import { pollenOf, startSetting } from "@/components/choose-plants/setting";
import {
  cellsOfChoice,
  choiceBy,
  heritabilityOffered,
  responseOf,
  scoredBy,
  sizesOfCuts,
} from "@/components/choose-plants/worked";
import { cellsOfMixedScorers } from "@/lib/schemas/plants/scored-as";
import { answered } from "../../science/agreement";
import { aGround, aPlant, aTrait } from "./a-ground";

// Heights by hand in three blocks: deviations 8 1 −6 −3, 0 8 −6 −2, 8 −3 2 −7.
const heights = [182, 175, 168, 171, 150, 158, 144, 148, 201, 190, 195, 186];
const ground = aGround({
  plants: heights.map((value, at) =>
    aPlant(`${at}`, { cell: `A${Math.floor(at / 4)}`, scores: { height: [{ by: null, value }] } }),
  ),
  traits: [aTrait("height"), aTrait("mute", { better: null })],
});
const by = (setting = startSetting, of = ground) => answered(choiceBy(of, setting, scoredBy(of, setting.scoresOf)));

it("the best of each block are kept, by the traits that have a good end alone", () => {
  const choice = by({ ...startSetting, keep: 3 });
  expect(choice.kept).toEqual(["id-0", "id-5", "id-8"]);
  expect(
    cellsOfChoice(ground, new Set(choice.kept)).map(({ cell, kept, plants }) => [cell, kept, plants.length]),
  ).toEqual([
    ["A0", 1, 4],
    ["A1", 1, 4],
    ["A2", 1, 4],
  ]);
});

it("a pulled or lost plant is never kept, nor one that was left out by hand", () => {
  const gone = { ...ground, plants: ground.plants.map((plant, at) => (at === 8 ? { ...plant, gone: "lost" } : plant)) };
  expect(by({ ...startSetting, keep: 2, leftOut: { "0": "smut" } }, gone).kept).toEqual(["id-10", "id-5"]);
});

it("8 cm above their neighbours: at most 4 cm by seed parents alone, and 0.4 to 1.6 cm of a heritability between 0.1 and 0.4", () => {
  const setting = { ...startSetting, keep: 3 };
  const choice = by(setting);
  expect(responseOf("height", choice, ground, setting)).toMatchObject({
    span: { atLeast: 0, atMost: 4 },
    from: "unknown",
  });
  const planned = { ...setting, heritability: { height: [0.1, 0.4] as const } };
  const response = responseOf("height", choice, ground, planned);
  expect(response?.span.atLeast).toBeCloseTo(0.4, 12);
  expect(response?.span.atMost).toBeCloseTo(1.6, 12);
  expect(responseOf("mute", choice, ground, setting)).toBeNull();
});

it("what stayed beside another variety is offered in hundredths, and counts only where a person takes it", () => {
  const found = { low: 0.2666, high: 0.8234, from: "4 cycles beside Plain" };
  const withFound = { ...ground, traits: [aTrait("height", { heritability: found })] };
  const setting = { ...startSetting, keep: 3 };
  expect(heritabilityOffered(aTrait("height", { heritability: found }))).toEqual([0.27, 0.82]);
  expect(heritabilityOffered(aTrait("height"))).toBeNull();
  expect(responseOf("height", by(setting), withFound, setting)).toMatchObject({
    heritability: [0, 1],
    from: "unknown",
  });
});

it("two people's scores are read as their mean, or one of them alone; a block that they shared is told", () => {
  const two = aGround({
    plants: [
      aPlant("1", {
        scores: {
          height: [
            { by: "a", value: 4 },
            { by: "b", value: 8 },
          ],
        },
      }),
      aPlant("2", { scores: { height: [{ by: "a", value: 5 }] } }),
    ],
  });
  expect(scoredBy(two, "all").map(({ scores }) => scores.height)).toEqual([6, 5]);
  expect(scoredBy(two, { person: "b" }).map(({ scores }) => scores.height)).toEqual([8, null]);
  expect(cellsOfMixedScorers(two)).toEqual(["A"]);
});

it("the size of every cut, of 200 that shed: 1/(1/(4n) + 3/800) by hand", () => {
  const sizes = sizesOfCuts(ground, pollenOf(startSetting, ground), 20).map((size) =>
    size?.ok ? size.value.low : null,
  );
  expect(sizes[0]).toBeCloseTo(1 / (0.25 + 0.00375), 9);
  expect(sizes[19]).toBeCloseTo(1 / (0.0125 + 0.00375), 9);
  expect(sizesOfCuts({ ...ground, plot: null }, pollenOf(startSetting, ground), 2)).toEqual([null, null]);
});

it("says what is missing of the wanted, what lies under the floor, what a year costs, and how much seed to take of each", () => {
  expect(againstWanted(60, aGround({ wanted: { count: 100, from: "plan" } }))).toEqual({
    waits: true,
    words: "The plan asks for 100 seed parents: 40 are missing.",
  });
  expect(againstFloor({ low: 61.5, high: 61.5 }, 100)?.waits).toBe(true);
  expect(againstFloor({ low: 61.5, high: 120 }, 100)?.words).toBe("The crop’s floor is 100 plants, which lies within.");
  expect(againstFloor({ low: 120, high: 120 }, 100)?.waits).toBe(false);
  // 1/(2 · 61.538) = 0.008125
  expect(costInWords({ low: 61.538, high: 61.538 })).toBe("0.8\u00a0%");
  expect(costInWords({ low: 25, high: null })).toBe("at most 2\u00a0%");
  expect(seedsOfEach(1200, 20)).toBe(60);
  expect(seedsOfEach(1201, 20)).toBe(61);
});
