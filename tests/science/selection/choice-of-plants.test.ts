import { describe, expect, it } from "vitest";
import { type ChoiceQuestion, choiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

type Given = Omit<ChoiceQuestion, "barred" | "taken"> & { barred: readonly string[]; taken: readonly string[] };

const asked = ({ barred, taken, ...rest }: Given): ChoiceQuestion => ({
  ...rest,
  barred: new Set(barred),
  taken: new Set(taken),
});

// Blocks of the worked example in choose-plants.test.ts: deviations 8 1 −6 −3, 0 8 −6 −2, 8 −3 2 −7; s = √(340/9).
const heights = [182, 175, 168, 171, 150, 158, 144, 148, 201, 190, 195, 186];
const patch = heights.map((height, at) => ({ id: `p${at}`, cell: `A${Math.floor(at / 4)}`, scores: { height } }));
const given: Given = {
  plants: patch,
  traits: [{ key: "height", weight: 1, better: "higher" }],
  keep: 3,
  withinCells: true,
  barred: [],
  taken: [],
};
const s = Math.sqrt(340 / 9);

describe("a choice among twelve plants in three blocks, by hand", () => {
  it("keeps the best of each, which stand 8 cm above their neighbours", () => {
    const { kept, gain, differential } = answered(choiceOfPlants(asked(given)));
    expect(kept).toEqual(["p0", "p5", "p8"]);
    expect(gain).toBeCloseTo(8 / s, 12);
    expect(differential.get("height")).toEqual({ differential: 8, plants: 3 });
  });

  it("who is left out makes room for the next, and still tells what its block is like", () => {
    const { kept, gain, ranked } = answered(choiceOfPlants(asked({ ...given, barred: ["p0"] })));
    // p10 stands 2 above its block, p1 only 1
    expect(kept).toEqual(["p10", "p5", "p8"]);
    expect(gain).toBeCloseTo(18 / 3 / s, 12);
    expect(ranked.find(({ id }) => id === "p1")?.index).toBeCloseTo(1 / s, 12);
    expect(ranked.find(({ id }) => id === "p0")?.standing).toBe("barred");
  });

  it("who is put in by hand takes a place of the cut; three that stand alike then share two", () => {
    const choice = answered(choiceOfPlants(asked({ ...given, taken: ["p2"] })));
    expect(choice.kept).toEqual(["p2"]);
    expect(choice.tied).toEqual(["p0", "p5", "p8"]);
    expect(choice.placesLeft).toBe(2);
    const settled = answered(choiceOfPlants(asked({ ...given, taken: ["p2", "p5", "p8"] })));
    expect(settled).toMatchObject({ kept: ["p2", "p5", "p8"], tied: [], placesLeft: 0 });
  });

  it("gain falls as the cut moves: 8 8 8 then 26/4, 27/5, 27/6 in units of s", () => {
    const { gains } = answered(choiceOfPlants(asked(given)));
    [8, 8, 8, 26 / 4, 27 / 5, 27 / 6].forEach((deviation, at) => {
      expect(gains[at]).toBeCloseTo(deviation / s, 12);
    });
    expect(gains.at(-1)).toBeCloseTo(0, 12);
  });
});

it("a plant alone in its cell, or with nothing scored, is not compared: it has no rank, and gets in by hand alone", () => {
  const plants = [
    ...patch,
    { id: "alone", cell: "Z", scores: { height: 300 } },
    { id: "blank", cell: "A0", scores: {} },
  ];
  const all = answered(choiceOfPlants(asked({ ...given, plants, keep: 14 })));
  expect(all.kept).not.toContain("alone");
  expect(all.rankable).toBe(12);
  for (const id of ["alone", "blank"])
    expect(all.ranked.find((plant) => plant.id === id)).toMatchObject({ rank: null, standing: "not-compared" });
  const put = answered(choiceOfPlants(asked({ ...given, plants, keep: 4, taken: ["alone"] })));
  expect(put.kept).toEqual(["alone", "p0", "p5", "p8"]);
});

it("refuses what has no weight", () => {
  const refusedChoice = choiceOfPlants(asked({ ...given, traits: [] }));
  expect(pathsOf(refusedChoice)).toEqual([["traits"]]);
});

it("agrees with three hundred choices made by the plainest way in Python fractions", () => {
  for (const { input, expected } of referenceCases<Given>("choice-of-plants")) {
    const { ranked, differential, ...choice } = answered(choiceOfPlants(asked(input)));
    const ranks = Object.fromEntries(ranked.flatMap(({ id, rank }) => (rank === null ? [] : [[id, rank]])));
    expectAgreement({ ...choice, ranks, differential: Object.fromEntries(differential) }, expected);
  }
});
