import { expect, test } from "vitest";
import { heritabilityFound } from "@/lib/registry/traits/heritability-found";
import type { TraitRows } from "@/lib/registry/traits/read-trait-years";
import { noWording } from "@/lib/schemas/traits/trait";

const height = {
  ...{ id: "height", version: 1, name: "height", kind: "measure" as const, unit: "cm", direction: "higher" as const },
  ...{ target: null, scaleLow: null, scaleHigh: null, wording: noWording },
};

/** Plants of a year: of the variety one at mean − 4, and one at mean + 4 of which seed was kept; of the check one at 9 and one at 11. */
function year(at: number, mean: number): TraitRows["scores"] {
  const score = (varietyId: string, plant: string, value: number, kept: boolean) => ({
    ...{ plantId: `${varietyId} ${at} ${plant}`, traitId: "height", value, text: null, on: null, stewardId: null },
    ...{ kept, parent: 0, cell: "A", growOutId: `${varietyId} ${at}`, growOut: `${varietyId} ${at}` },
    ...{ sownFirst: `${at}-04-01`, varietyId, variety: varietyId },
  });
  return [
    ...[score("flint", "low", mean - 4, false), score("flint", "high", mean + 4, true)],
    ...[score("check", "one", 9, false), score("check", "two", 11, false)],
  ];
}

function rows(means: readonly number[]): TraitRows {
  const years = means.map((_mean, at) => 2001 + at);
  const bed = { plots: ["bed"], stewardId: null };
  return {
    varietyId: "flint",
    traits: [{ id: "height", scope: "crop" as const, newest: height, versions: [height] }],
    scores: means.flatMap((mean, at) => year(2001 + at, mean)),
    places: new Map(years.flatMap((each) => ["flint", "check"].map((of) => [`${of} ${each}`, bed] as const))),
    type: [],
    passes: [],
    seed: {
      from: years.slice(1).map((each) => ({ growOutId: `flint ${each}`, lotId: `lot ${each - 1}` })),
      lots: years.map((each) => ({ id: `lot ${each}`, growOutId: `flint ${each}`, parentLotId: null })),
    },
    mating: {
      ...{ matingSystem: "outcrossing", selfIncompatible: null, outcrossingPctMin: null, outcrossingPctMax: null },
    },
  };
}

test("what stayed over three cycles beside a check is what a choice is reckoned with", () => {
  // By hand: each year the kept stand 4 above their cell, half of it counts (pollen of all): S = 2, 4, 6. The plants move by 1 a year: R = 1, 2, 3.
  // h² = (2·1 + 4·2 + 6·3)/(4 + 16 + 36) = 28/56 = 0.5, and no point is off that line.
  const found = heritabilityFound(rows([20, 21, 22, 23])).get("height");
  expect(found?.low).toBeCloseTo(0.5, 12);
  expect(found?.high).toBeCloseTo(0.5, 12);
  expect(found?.from).toBe("3 cycles beside check");
});

test("nothing is told of fewer cycles, nor where the span leaves nothing of 0 to 1", () => {
  expect(heritabilityFound(rows([20, 21])).size).toBe(0);
  // R = −1, −2, −3: it moved against the choice, h² = −0.5 throughout.
  expect(heritabilityFound(rows([23, 22, 21, 20])).size).toBe(0);
});
