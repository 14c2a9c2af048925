import { describe, expect, it } from "vitest";
import { groundOfMix } from "@/lib/science/blend/ground-of-mix";
import { mixFigures } from "@/lib/science/blend/mix-figures";
import type { LineageInput, LineageLot, LotLineage } from "@/lib/science/lineage/lots";
import { pedigree } from "@/lib/science/lineage/pedigree";
import { answered, expectAgreement, referenceCases } from "../agreement";

const groundOf = (lots: readonly LineageLot[], ids: readonly string[]) => groundOfMix(answered(pedigree(lots)), ids);

describe("every blend of the reference lineages, from its parts alone", () => {
  const cases = referenceCases<LineageInput>("lineage");
  const blends = cases.flatMap(({ input, expected }, place) =>
    input.lots.flatMap((lot, at) =>
      lot.kind === "blend" ? [{ place, input, lot, figures: (expected as { lots: LotLineage[] }).lots[at] }] : [],
    ),
  );

  it("there are many, with foreign pollen and without", () => {
    expect(blends.length).toBeGreaterThan(60);
    expect(blends.filter(({ figures }) => (figures?.foreignAncestry ?? 0) > 0.01).length).toBeGreaterThan(10);
  });

  it.each(blends.map((each) => [`${each.lot.id} of lineage ${each.place + 1}`, each] as const))(
    "%s has the figures that the whole-matrix recursion of the independent program gives it",
    (_, { input, lot, figures }) => {
      const { inbreeding, coancestry, diversityRetained, foreignAncestry, nativeDiversityRetained } =
        figures as LotLineage;
      const ground = groundOf(
        input.lots,
        lot.parents.map(({ id }) => id),
      );
      expectAgreement(
        mixFigures(
          ground,
          lot.parents.map(({ share }) => share),
        ),
        { inbreeding, coancestry, diversityRetained, foreignAncestry, nativeDiversityRetained },
      );
    },
  );
});

describe("lines and founders, worked by hand", () => {
  const grown = (id: string, ...parents: [string, number][]): LineageLot => ({
    ...{ id, kind: "grow-out", pollenParents: 20, seedParents: 20 },
    parents: parents.map(([parent, share]) => ({ id: parent, share })),
  });
  const lots: LineageLot[] = [
    { id: "A", kind: "founder" },
    { id: "B", kind: "founder" },
    grown("C", ["A", 1]),
    grown("D", ["C", 0.5], ["B", 0.5]),
    { ...grown("E", ["B", 1]), foreignPollen: 0.2 } as LineageLot,
    { id: "S", kind: "split", parents: [{ id: "D", share: 1 }] },
  ];

  it("a mix counts along its shortest and its longest line, and a split counts nothing", () => {
    const ground = groundOf(lots, ["A", "S", "E"]);
    // S: B to D is one grow-out, A to C to D are two
    expect(ground.lots.map(({ shortestLine, longestLine }) => [shortestLine, longestLine])).toEqual([
      [0, 0],
      [1, 2],
      [1, 1],
    ]);
    expect(mixFigures(ground, [1, 3, 0])).toMatchObject({ shortestLine: 0, longestLine: 2 });
    expect(mixFigures(ground, [0, 3, 1])).toMatchObject({ shortestLine: 1, longestLine: 2 });
  });

  it("founders' parts are those of the genes: 3 of S (half A, half B) and 1 of E (0.9 B, the rest foreign)", () => {
    const figures = mixFigures(groundOf(lots, ["A", "S", "E"]), [0, 3, 1]);
    expect(figures?.founders.map(({ id }) => id)).toEqual(["B", "A"]);
    expect(figures?.founders[0]?.part).toBeCloseTo(0.75 * 0.5 + 0.25 * 0.9, 12);
    expect(figures?.founders[1]?.part).toBeCloseTo(0.375, 12);
    expect(figures?.foreignAncestry).toBeCloseTo(0.025, 12);
  });

  it("without a share there is no mix", () => {
    expect(mixFigures(groundOf(lots, ["A", "C"]), [0, 0])).toBeNull();
  });
});
