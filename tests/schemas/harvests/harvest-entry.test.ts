import { describe, expect, it } from "vitest";
import { harvestCorrectionSchema, newHarvestSchema, notTaken } from "@/lib/schemas/harvests/harvest-entry";
import { parseForm } from "@/lib/schemas/lots/form-fields";

const typed = (more: object = {}) => ({
  told: "plants",
  each: "grams",
  bulked: "all together",
  on: "2026-09-20",
  parents: [],
  ...more,
});

const read = (more: object) => parseForm(newHarvestSchema("north"), typed(more));
const value = (more: object) => {
  const outcome = read(more);
  if (!outcome.ok) throw new Error(outcome.refusals.map(({ sentence }) => sentence).join("\n"));
  return outcome.value;
};

describe("a harvest as it is typed", () => {
  it("of plants: those not taken are none, a lost one says why, and a weight without a seed kept is told apart", () => {
    const parents = [
      { plant: "a", amount: "12,5", fate: "kept" },
      { plant: "b", amount: "", fate: "not taken" },
      { plant: "c", amount: "", fate: "lost: eaten" },
      { plant: "d", amount: "3", fate: "not taken" },
    ];
    const { parents: told, seedParents } = value({ parents, seedParents: "7" });
    expect(seedParents).toBeNull();
    expect(told).toEqual([
      { row: 0, plantId: "a", grams: 12.5, seeds: null, lost: null },
      { row: 2, plantId: "c", grams: null, seeds: null, lost: "eaten" },
      { row: 3, plantId: "d", grams: 3, seeds: null, lost: notTaken },
    ]);
  });

  it("of a count: bags that say nothing are none, and no bag has a plant", () => {
    const parents = [
      { amount: "40", fate: "kept" },
      { amount: "" },
      { plant: "x", amount: "", fate: "lost: rotted or mouldy" },
    ];
    const told = value({ told: "count", each: "seeds", seedParents: "2", parents, mouldyPercent: "4" });
    expect(told).toMatchObject({ seedParents: 2, mouldyShare: 0.04, holder: null, number: null });
    expect(told.parents).toEqual([
      { row: 0, plantId: null, grams: null, seeds: 40, lost: null },
      { row: 2, plantId: null, grams: null, seeds: null, lost: "rotted or mouldy" },
    ]);
  });

  it("keeps a reason of loss that an older record gives, and no other word", () => {
    const told = (fate: string) => read({ parents: [{ plant: "a", amount: "", fate }] });
    expect(
      told("lost: the mice had it").ok && value({ parents: [{ plant: "a", fate: "lost: the mice had it" }] }),
    ).toMatchObject({
      parents: [{ lost: "the mice had it" }],
    });
    for (const fate of ["lost: ", "gone"]) expect(told(fate).ok).toBe(false);
  });

  it("takes no amounts where nothing is known of each", () => {
    const parents = [{ plant: "a", amount: "5", fate: "kept" }];
    expect(value({ each: "nothing", parents }).parents).toMatchObject([{ plantId: "a", grams: null, seeds: null }]);
  });

  it("is refused field by field", () => {
    const wrong = read({
      on: "",
      bulked: "in a heap",
      seeds: "2.5",
      mouldyPercent: "120",
      detasselled: "-1",
      parents: [{ plant: "a", amount: "heavy", fate: "kept" }],
    });
    expect(wrong.ok ? [] : wrong.refusals.map(({ path }) => path.join("."))).toEqual([
      "on",
      "bulked",
      "parents.0.amount",
      "seeds",
      "detasselled",
      "mouldyPercent",
    ]);
  });

  it("put right needs to say what was wrong", () => {
    const outcome = parseForm(harvestCorrectionSchema("north"), typed({ told: "count", seedParents: "3" }));
    expect(outcome.ok ? [] : outcome.refusals.map(({ path }) => path.join("."))).toEqual(["reason"]);
  });
});
