import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { choosePlants, type PlantsToChoose } from "@/lib/science/selection/choose-plants";
import type { ScoredPlant } from "@/lib/science/selection/scored-plant";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const heights = [182, 175, 168, 171, 150, 158, 144, 148, 201, 190, 195, 186];
const cells = ["A1", "A1", "A1", "A1", "A2", "A2", "A2", "A2", "A3", "A3", "A3", "A3"];
const patch = heights.map((height, at) => ({ id: `p${at}`, cell: cells[at] as string, scores: { height } }));
const tall = [{ key: "height", weight: 1, better: "higher" as const }];

describe("twelve plants in three blocks (worked by hand: deviations 8 1 −6 −3, 0 8 −6 −2, 8 −3 2 −7; s = √(340/9) = 6.146363)", () => {
  it("are ranked by their standing among their neighbours, not by the soil they stand on", () => {
    const { ranked, kept, tied, differential } = answered(choosePlants({ plants: patch, traits: tall, keep: 3 }));
    const z = Object.fromEntries(ranked.map(({ id, index }) => [id, index]));
    expect(z.p0).toBeCloseTo(1.301583, 6);
    expect(z.p1).toBeCloseTo(0.162698, 6);
    expect(z.p11).toBeCloseTo(-1.138885, 6);
    expect(kept).toEqual(["p0", "p5", "p8"]);
    expect(tied).toEqual([]);
    // (182 + 158 + 201)/3 − 2068/12
    expect(differential.height).toBeCloseTo(180.333333 - 172.333333, 5);
  });

  it("the three tallest all come from the best soil when the field is one block", () => {
    expect(answered(choosePlants({ plants: patch, traits: tall, keep: 3, withinCells: false })).kept).toEqual([
      "p10",
      "p8",
      "p9",
    ]);
  });

  it("three that stand alike share the cut where only two places are left; nobody is chosen by the order of rows", () => {
    const chosen = answered(choosePlants({ plants: patch, traits: tall, keep: 2 }));
    expect(chosen).toMatchObject({ kept: [], tied: ["p0", "p5", "p8"], placesLeft: 2 });
    const turned = answered(choosePlants({ plants: [...patch].reverse(), traits: tall, keep: 2 }));
    expect(turned).toEqual(chosen);
    expect(chosen.ranked.slice(0, 4).map(({ rank }) => rank)).toEqual([1, 1, 1, 4]);
  });
});

describe("what was not scored", () => {
  it("has no index without any score, ranks last and is never kept", () => {
    const plants: ScoredPlant[] = [
      { id: "a", cell: "A", scores: { height: 3 } },
      { id: "b", cell: "A", scores: { height: 5 } },
      { id: "c", cell: "A", scores: {} },
    ];
    const chosen = answered(choosePlants({ plants, traits: tall, keep: 3 }));
    expect(chosen.kept).toEqual(["a", "b"]);
    expect(chosen.ranked.at(-1)).toEqual({ id: "c", index: null, rank: null, weightCompared: 0 });
    expect(chosen.proportion).toBeCloseTo(2 / 3, 12);
  });

  it("counts as no difference, and weightCompared tells how much was really compared", () => {
    const plants = [
      { id: "a", cell: "A", scores: { height: 3, ears: 2 } },
      { id: "b", cell: "A", scores: { height: 5, ears: null } },
      { id: "alone", cell: "B", scores: { height: 9, ears: 4 } },
    ];
    const traits = [...tall, { key: "ears", weight: 3, better: "higher" as const }];
    const { ranked } = answered(choosePlants({ plants, traits, keep: 1 }));
    // d = ±1, s = √2: z = ±0.707107, weighed 1 of 4
    expect(ranked.find(({ id }) => id === "b")).toMatchObject({ weightCompared: 0.25 });
    expect(ranked.find(({ id }) => id === "b")?.index).toBeCloseTo(Math.SQRT1_2 / 4, 6);
    expect(ranked.find(({ id }) => id === "alone")).toMatchObject({ index: 0, weightCompared: 0 });
  });

  it("equal scores that differ by rounding alone are no difference", () => {
    const plants = [0.1 + 0.2, 0.3, 0.3].map((height, at) => ({ id: `${at}`, cell: "A", scores: { height } }));
    const { ranked } = answered(choosePlants({ plants, traits: tall, keep: 1 }));
    expect(ranked.map(({ index }) => index)).toEqual([0, 0, 0]);
  });
});

it("agrees with 300 choices worked out with exact squares", () => {
  for (const { input, expected } of referenceCases<PlantsToChoose>("choose-plants")) {
    expectAgreement(answered(choosePlants(input)), expected);
  }
});

it("keeps and ties never depend on the order of the plants", () => {
  const cases = referenceCases<PlantsToChoose>("choose-plants");
  fc.assert(
    fc.property(
      fc.constantFrom(...cases),
      fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
      ({ input }, draws) => {
        const plants = [...input.plants]
          .map((plant) => ({ plant, at: draws.next().value ?? 0 }))
          .sort((a, b) => a.at - b.at)
          .map(({ plant }) => plant);
        const [one, other] = [answered(choosePlants(input)), answered(choosePlants({ ...input, plants }))];
        expect(other.kept).toEqual(one.kept);
        expect(other.tied).toEqual(one.tied);
      },
    ),
    { numRuns: 200, seed: 7 },
  );
});

it("ids twice, weights that are none, a target that is none and too many to keep are refused at their place", () => {
  const given = { plants: patch, traits: tall, keep: 3 };
  const paths = (change: Partial<PlantsToChoose>) => pathsOf(choosePlants({ ...given, ...change }));
  expect(paths({ plants: [...patch, patch[0] as (typeof patch)[0]] })).toEqual([["plants", 12, "id"]]);
  expect(paths({ plants: [] })).toEqual([["plants"]]);
  expect(paths({ traits: [] })).toEqual([["traits"]]);
  expect(paths({ traits: [{ key: "height", weight: 0, better: "higher" }] })).toEqual([["traits"]]);
  expect(paths({ traits: [{ key: "height", weight: -1, better: "higher" }] })).toEqual([["traits", 0, "weight"]]);
  expect(paths({ traits: [...tall, ...tall] })).toEqual([["traits", 1, "key"]]);
  expect(paths({ traits: [{ key: "height", weight: 1, better: { target: Number.NaN } }] })).toEqual([
    ["traits", 0, "better", "target"],
  ]);
  expect(paths({ keep: 0 })).toEqual([["keep"]]);
  expect(paths({ keep: 13 })).toEqual([["keep"]]);
});
