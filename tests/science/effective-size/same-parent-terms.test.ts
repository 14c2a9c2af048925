import { describe, expect, it } from "vitest";
import { normalised, sumOfSquares } from "@/lib/science/effective-size/normalised";
import { pollenWithoutSelfing } from "@/lib/science/effective-size/pollen-without-selfing";
import { sameParentProbability } from "@/lib/science/effective-size/same-parent-probability";
import { sameParentTerms } from "@/lib/science/effective-size/same-parent-terms";

describe("chances of one parent in common", () => {
  it("10 seed parents of 40 plants: 1/10, 1/40, 1/40; without selfing 1/10, 38.1/39², 0.9/39 (by hand)", () => {
    const plants = { pollenParents: 40, seedParents: 10 };
    expect(sameParentTerms(plants)).toEqual({ seedParentTerm: 0.1, pollenParentTerm: 1 / 40, crossTerm: 1 / 40 });
    const without = sameParentTerms({ ...plants, selfIncompatible: true });
    expect(without.pollenParentTerm).toBeCloseTo(38.1 / 39 ** 2, 12);
    expect(without.crossTerm).toBeCloseTo(0.9 / 39, 12);
  });

  it("equal shares told one by one are the same as equal", () => {
    const plants = { pollenParents: 7, seedParents: 3, selfIncompatible: true };
    const told = sameParentTerms({ ...plants, seedShares: [2, 2, 2], pollenShares: [5, 5, 5, 5, 5, 5, 5] });
    const equal = sameParentTerms({ ...plants, seedShares: { cv: 0 } });
    expect(told.pollenParentTerm).toBeCloseTo(equal.pollenParentTerm, 14);
    expect(told.crossTerm).toBeCloseTo(equal.crossTerm, 14);
  });

  it("a spread of 1 among 20 seed parents doubles their term; the cross is 1 over the pollen parents", () => {
    const terms = sameParentTerms({
      pollenParents: 50,
      seedParents: 20,
      seedShares: { cv: 1 },
      selfIncompatible: true,
    });
    expect(terms).toEqual({ seedParentTerm: 0.1, pollenParentTerm: 0.02, crossTerm: 0.02 });
  });

  it("males and females have no plant in common", () => {
    expect(sameParentTerms({ pollenParents: 2, seedParents: 8, sexes: "separate" }).crossTerm).toBe(0);
  });
});

describe("the parts of it", () => {
  it("every seed finds a father that is not its mother: p* of three plants, q ½ ½ 0, p ¼ ¼ ½ (by hand)", () => {
    const fathers = pollenWithoutSelfing([0.5, 0.5, 0], [0.25, 0.25, 0.5]);
    [1 / 6, 1 / 6, 2 / 3].forEach((share, plant) => {
      expect(fathers[plant]).toBeCloseTo(share, 14);
    });
  });

  it("a lone pollen parent fathers all the seed of the others", () => {
    expect(pollenWithoutSelfing([0, 1], [1, 0])).toEqual([1, 0]);
  });

  it("shares of any unit are scaled to 1, the largest of all too", () => {
    expect(normalised([1, 3])).toEqual([0.25, 0.75]);
    expect(normalised([1e308, 1e308])).toEqual([0.5, 0.5]);
    expect(sumOfSquares([0.5, 0.3, 0.2])).toBeCloseTo(0.38, 15);
  });

  it("complete selfing hangs on the seed parents alone", () => {
    const terms = { seedParentTerm: 0.1, pollenParentTerm: 0.7, crossTerm: 0.4 };
    expect(sameParentProbability(terms, 1)).toBeCloseTo(0.1, 15);
    expect(sameParentProbability(terms, 0)).toBeCloseTo((0.1 + 0.8 + 0.7) / 4, 15);
  });
});
