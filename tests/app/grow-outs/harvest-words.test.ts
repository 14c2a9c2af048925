import { describe, expect, it } from "vitest";
import { evennessSentence, sizeOfHarvestExplanation } from "@/app/grow-outs/_harvest/evenness-words";
import { inOrder } from "@/app/grow-outs/_harvest/harvest-start";
import { lostWords } from "@/app/grow-outs/_harvest/harvest-words";
import { liveHarvest, parentsOfTexts } from "@/app/grow-outs/_harvest/typed-harvest";
import { metricUnits } from "@/lib/display/units";
import { evennessOf } from "@/lib/registry/harvests/evenness-of-harvest";
import type { PlotOfHarvest } from "@/lib/registry/harvests/size-of-harvest";

const ounces = { ...metricUnits, weight: "oz" as const };

describe("what stands in the form of a harvest", () => {
  const typed = {
    told: "plants",
    each: "grams",
    "plants.0.plant": "a",
    "plants.0.amount": "12,5",
    "plants.0.fate": "kept",
    "plants.1.plant": "b",
    "plants.1.amount": "",
    "plants.1.fate": "kept",
    "plants.2.plant": "c",
    "plants.2.amount": "9",
    "plants.2.fate": "not taken",
    "bags.0.amount": "7",
    "bags.1.amount": "x",
    "plants.9999.amount": "1",
    seedParents: "5",
  };

  it("is read by the rows that it is about, in their order", () => {
    expect(parentsOfTexts(typed, "plants")).toEqual([
      { plant: "a", amount: "12,5", fate: "kept" },
      { plant: "b", amount: "", fate: "kept" },
      { plant: "c", amount: "9", fate: "not taken" },
    ]);
    expect(parentsOfTexts(typed, "bags")).toEqual([{ amount: "7" }, { amount: "x" }]);
  });

  it("tells while it is typed how many gave seed, and what of it is measured", () => {
    expect(liveHarvest(typed, metricUnits)).toEqual({
      seedParents: 2,
      amounts: [{ row: 0, amount: 12.5 }],
      unit: "g",
    });
    expect(liveHarvest({ ...typed, told: "count" }, metricUnits)).toMatchObject({
      seedParents: 5,
      amounts: [{ row: 0, amount: 7 }],
    });
    // an avoirdupois ounce is 28.349523125 g by definition
    expect(liveHarvest({ ...typed, told: "count" }, ounces).amounts).toEqual([{ row: 0, amount: 7 * 28.349523125 }]);
    expect(liveHarvest({ ...typed, told: "count", each: "seeds" }, ounces).amounts).toEqual([{ row: 0, amount: 7 }]);
    expect(liveHarvest({ ...typed, each: "nothing" }, metricUnits).amounts).toEqual([]);
  });

  it("offers plants marked to keep first, and those to pull last", () => {
    const plant = (id: string, intent: string | null, kept: boolean | null = null) => ({
      ...{ id, name: id, cell: null, tag: null },
      intent,
      kept,
    });
    const plants = [
      plant("a", "pull"),
      plant("b", null),
      plant("c", "watch"),
      plant("d", "keep"),
      plant("e", null, true),
    ];
    expect(inOrder(plants).map(({ id }) => id)).toEqual(["d", "e", "c", "b", "a"]);
  });
});

it("what is not in the lot is told by its reason", () => {
  const parent = (plant: string | null, lost: string | null) => ({
    ...{ id: `${plant}`, plantId: plant, plant, grams: null, seeds: null, share: null },
    lost,
  });
  const parents = [parent("4", "eaten"), parent("5", null), parent("7", "eaten"), parent(null, "rotted or mouldy")];
  expect(lostWords({ parents })).toBe("Not in it: plant 4 and plant 7 (eaten); bag 4 (rotted or mouldy).");
  expect(lostWords({ parents: [parent("5", null)] })).toBeNull();
});

describe("the greedy mother in words", () => {
  const mating = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };
  const plot: PlotOfHarvest = {
    ...{ plantsStanding: 60, malesStanding: null, roguedBeforePollen: 0, detasselled: null, selfingRate: 0 },
    ...{ mating, inbreeding: 0 },
  };
  // 75.1 %, 15.05 and 32.94: tests/registry/harvests/expected-sizes.py
  const heavy = [92, 61, 40, 12, 9, 8, 7, 6, 6, 5, 4, 3, 2, 2];
  const sentence = (amounts: readonly number[], done: boolean, more: Partial<PlotOfHarvest> = {}) => {
    const even = evennessOf(amounts, { ...plot, ...more });
    return even ? evennessSentence(even, done) : null;
  };

  it("says what three plants gave and what equal shares would keep", () => {
    expect(sentence(heavy, false)).toBe(
      "The three heaviest gave 75 % of the seed. In equal shares the seed of the same 14 plants would count as 33 instead of 15.".replaceAll(
        "75 %",
        "75\u00a0%",
      ),
    );
    expect(sentence(heavy, true)).toContain("would have counted as 33 instead of 15");
  });

  it("counts seed parents alone where nobody counted the plants that shed pollen", () => {
    // 257² / 14253 = 4.63
    expect(sentence(heavy, false, { plantsStanding: null })).toContain("count as 4.6 seed parents of equal shares");
  });

  it("is content where all gave alike", () => {
    expect(sentence([5, 5, 5, 6], false)).toContain("equal shares gain nothing");
  });

  it("opens to what it was worked out from, with a line that gives the number again", () => {
    const rows = evennessOf([40, 30, 20, 10], { ...plot, plantsStanding: 10, detasselled: 3 }, 2)?.asGiven;
    if (!rows) throw new Error("no size");
    const explanation = sizeOfHarvestExplanation("lot A", rows, "as each gave", 0);
    // 6.22: tests/registry/harvests/expected-sizes.py, "heaviest kept theirs"
    expect(explanation.answer).toBe("6.2");
    expect(explanation.inputs.map(({ name, value }) => `${name} ${value}`)).toContain("pollen parents 7");
    expect(explanation.inputs.map(({ name, value }) => `${name} ${value}`)).toContain(
      "seed parents without their tassels 2",
    );
    expect(explanation.calc).toContain('"pollenShares":[1,1,0,0,1,1,1,1,1]');
  });
});
