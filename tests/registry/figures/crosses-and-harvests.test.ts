import { describe, expect, it } from "vitest";
import { type LotFigures, lineageOfRecords } from "@/lib/registry/figures/lineage-of-records";
import { plantByPlant } from "@/lib/registry/figures/own-harvests";
import type { FigureRecords, GrowOutRecord, LotRecord, VarietyRecord } from "@/lib/registry/figures/records";

const crosser: VarietyRecord = {
  id: "crosser",
  name: "Crosser",
  profile: { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 100, outcrossingPctMax: 100 },
  clonal: false,
};

const lot = (id: string, rest: Partial<LotRecord> = {}): LotRecord => ({
  ...{ id, number: id, varietyId: "crosser", holder: null, kind: "founder", growOutId: null, parents: [] },
  ...{ inbreeding: 0, thousandSeedGrams: null },
  ...rest,
});

const growOut = (id: string, rest: Partial<GrowOutRecord> = {}): GrowOutRecord => ({
  ...{ id, name: id, varietyId: "crosser", parents: [{ id: "A", share: 1 }], plantsStanding: 10, malesStanding: null },
  ...{ roguedBeforePollen: 0, seedParents: 4, seedShares: "equal", selfingRate: null, foreignPollen: 0 },
  ...rest,
});

function followed(lots: LotRecord[], growOuts: GrowOutRecord[]) {
  const records: FigureRecords = { varieties: [crosser], lots, growOuts };
  const outcome = lineageOfRecords(records);
  if (!outcome.ok) throw new Error(outcome.refusals.map(({ sentence }) => sentence).join("\n"));
  const figure = (id: string) => outcome.value.figures.get(id) as LotFigures;
  return { ...outcome.value, figure };
}

const founders = [lot("A"), lot("B"), lot("C")];
const sides = (seed: number | null, pollen: number | null): GrowOutRecord["parents"] => [
  { id: "A", share: seed, role: "seed parent" },
  { id: "B", share: pollen, role: "pollen parent" },
];

describe("a cross", () => {
  // By hand: 9 plants, 5 of A without their tassels and 4 of B; seed of 5. θ = ½(¼/5 + ¼/4) = 0.05625, Ne = 4·5·4/9.
  const crossed = (rest: Partial<GrowOutRecord> = {}) =>
    followed(
      [...founders, lot("X", { kind: "harvest", growOutId: "K" })],
      [growOut("K", { plantsStanding: 9, seedParents: 5, parents: sides(5 / 9, 4 / 9), ...rest })],
    );

  it("has pollen of the one lot and seed of the other", () => {
    for (const each of [crossed({ detasselled: 5 }), crossed()]) {
      expect(each.figure("X").coancestry).toBeCloseTo(0.05625, 12);
      expect(each.figure("X").inbreeding).toBe(0);
      expect(each.figure("X").effectiveSize).toBeCloseTo(80 / 9, 10);
      expect(each.foundersOf("X")).toEqual(["A", "B"]);
    }
    expect(
      crossed()
        .assumedFor("X")
        .map(({ code }) => code),
    ).toContain("seed-side-by-share");
  });

  it("takes several lots on a side as a mix of them: a quarter each of the genes", () => {
    const parents: GrowOutRecord["parents"] = [
      { id: "A", share: 0.3, role: "seed parent" },
      { id: "C", share: 0.3, role: "seed parent" },
      { id: "B", share: 0.4, role: "pollen parent" },
    ];
    const { figure, foundersOf } = crossed({ parents, detasselled: 5 });
    expect(figure("X").coancestry).toBeCloseTo(0.05625, 12);
    expect(foundersOf("X")).toEqual(["A", "B", "C"]);
  });

  it("stands in a span where neither tassels nor shares were written", () => {
    const { figure, spanOf } = crossed({ parents: sides(null, null) });
    expect(figure("X").coancestry).toBeNull();
    // 5 seed parents; pollen parents between 1 and 9: ½(¼/5 + ¼/1) and ½(¼/5 + ¼/9)
    expect(spanOf("X")?.coancestry.high).toBeCloseTo(0.15, 12);
    expect(spanOf("X")?.coancestry.low).toBeCloseTo(0.025 + 1 / 72, 12);
  });

  it("has no figure where only some lots have a role, or seed is said to be of own pollen", () => {
    const parents: GrowOutRecord["parents"] = [
      { id: "A", share: 0.5, role: "seed parent" },
      { id: "B", share: 0.5 },
    ];
    expect(crossed({ parents }).figure("X").coancestry).toBeNull();
    const selfed = crossed({ selfingRate: 0.2 });
    expect(selfed.figure("X").generations).toBeNull();
    expect(selfed.impossible.map(({ path }) => path)).toEqual([["growOuts", "K", "selfingRate"]]);
  });
});

describe("harvests of the same plants", () => {
  // By hand: 10 plants; early seed of plants 1 and 2, late of 2 and 3, half each: θ 0.1 each; sown together half and half 0.084375
  // (see tests/science/lineage/crosses-and-harvests.test.ts). Pooled, with q ¼, ½, ¼, each lot would stand at 0.084375 for itself.
  const lots = [
    lot("A"),
    lot("early", { kind: "harvest", growOutId: "K" }),
    lot("late", { kind: "harvest", growOutId: "K" }),
    lot("mix", {
      kind: "blend",
      parents: [
        { id: "early", share: 0.5 },
        { id: "late", share: 0.5 },
      ],
    }),
  ];
  const pooled = growOut("K", { seedParents: 3, seedShares: [0.25, 0.5, 0.25] });
  const harvests = [
    { lotId: "early", seedShares: [0.5, 0.5, 0] },
    { lotId: "late", seedShares: [0, 0.5, 0.5] },
  ];

  it("stand each with its own shares, and as near as the plants that they share", () => {
    const { figure } = followed(lots, [{ ...pooled, harvests }]);
    expect(figure("early").coancestry).toBeCloseTo(0.1, 12);
    expect(figure("late").coancestry).toBeCloseTo(0.1, 12);
    expect(figure("mix").coancestry).toBeCloseTo(0.084375, 12);
    expect(figure("early").effectiveSize).toBeCloseTo(5, 12);
    expect(figure("early").generations).toBe(1);
  });

  it("are one pool where not every lot of the grow-out is told so", () => {
    const { figure } = followed(lots, [{ ...pooled, harvests: harvests.slice(0, 1) }]);
    expect(figure("early").coancestry).toBeCloseTo(0.084375, 12);
    expect(figure("mix").coancestry).toBeCloseTo(0.084375, 12);
  });
});

describe("what each plant gave to each harvest", () => {
  const none = { grams: null, seeds: null, share: null, lost: null };
  const plain = { bulked: null, detasselled: null, grams: null, seeds: null };
  const plant = (plantId: string | null, grams: number | null) => ({ ...none, plantId, grams });

  it("stands in one order of the plants, a lost bag left out", () => {
    const told = plantByPlant([
      {
        ...plain,
        id: "1",
        lotId: "early",
        seedParents: 2,
        parents: [plant("p", 30), plant("q", 10), { ...plant("r", 9), lost: "eaten" }],
      },
      { ...plain, id: "2", lotId: "late", seedParents: 2, parents: [plant("q", 20), plant("r", 20)] },
    ]);
    // q gave 0.25 + 0.5, p 0.75, r 0.5
    expect(told).toEqual([
      { lotId: "early", seedShares: [0.75, 0.25, 0] },
      { lotId: "late", seedShares: [0, 0.5, 0.5] },
    ]);
  });

  it("reads plants that were only counted as the ones that gave most in the others", () => {
    const bags = [plant(null, 10), plant(null, 30)];
    const told = plantByPlant([
      { ...plain, id: "1", lotId: "early", seedParents: 2, parents: bags },
      { ...plain, id: "2", lotId: "late", seedParents: 3, bulked: "equal seeds", parents: [] },
    ]);
    expect(told?.[0]?.seedShares).toEqual([0.75, 0.25, 0]);
    expect(told?.[1]?.seedShares).toEqual([1 / 3, 1 / 3, 1 / 3]);
  });

  it("is not known where shares are not, where two went into one lot, or where tassels were taken of nobody knows which", () => {
    const early = { ...plain, id: "1", lotId: "early", seedParents: 2, bulked: "equal seeds", parents: [] };
    const late = { ...early, id: "2", lotId: "late" };
    expect(plantByPlant([early, late])).not.toBeNull();
    expect(plantByPlant([early, { ...late, bulked: "all together" }])).toBeNull();
    expect(plantByPlant([early, { ...late, lotId: "early" }])).toBeNull();
    expect(plantByPlant([early, { ...late, detasselled: 1 }])).toBeNull();
    expect(plantByPlant([early])).toBeNull();
  });
});
