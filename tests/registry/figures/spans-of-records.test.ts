import { describe, expect, it } from "vitest";
import { figuresOfRecords } from "@/lib/registry/figures/figures-of-records";
import { lineageOfRecords } from "@/lib/registry/figures/lineage-of-records";
import type { FigureRecords, GrowOutRecord, KinshipRecord, LotRecord } from "@/lib/registry/figures/records";

const crosser = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };
const selfer = { matingSystem: "selfing", selfIncompatible: "no", outcrossingPctMin: 0, outcrossingPctMax: 20 };
const varieties = [
  { id: "crosser", name: "Crosser", profile: crosser, clonal: false },
  { id: "selfer", name: "Selfer", profile: selfer, clonal: false },
  { id: "tuber", name: "Tuber", profile: { ...crosser, matingSystem: "clonal" }, clonal: true },
];

const lot = (id: string, rest: Partial<LotRecord> = {}): LotRecord => ({
  ...{ id, number: id, varietyId: "crosser", holder: null, kind: "founder", growOutId: null },
  ...{ parents: [], inbreeding: 0, thousandSeedGrams: null },
  ...rest,
});
const harvest = (id: string, growOutId: string, rest: Partial<LotRecord> = {}) =>
  lot(id, { kind: "harvest", growOutId, ...rest });
const mix = (id: string, ...parents: LotRecord["parents"]) => lot(id, { kind: "blend", parents });

/** Ten plants of lot A, all alive to flowering, seed of four alike. */
const growOut = (id: string, rest: Partial<GrowOutRecord> = {}): GrowOutRecord => ({
  ...{ id, name: `grown ${id}`, varietyId: "crosser", parents: [{ id: "A", share: 1 }] },
  ...{ plantsStanding: 10, malesStanding: null, roguedBeforePollen: 0, seedParents: 4 },
  ...{ seedShares: "equal", selfingRate: 0, foreignPollen: 0 },
  ...rest,
});

function spansOf(lots: LotRecord[], growOuts: GrowOutRecord[] = [], kinships: KinshipRecord[] = []) {
  const records: FigureRecords = { varieties, lots, growOuts, kinships };
  const outcome = lineageOfRecords(records);
  if (!outcome.ok) throw new Error(outcome.refusals.map(({ sentence }) => sentence).join("\n"));
  return (id: string) => outcome.value.spanOf(id);
}
const near = (ends: { low: number; high: number | null } | undefined | null, low: number, high: number) => {
  expect(ends?.low).toBeCloseTo(low, 10);
  expect(ends?.high).toBeCloseTo(high, 10);
};

describe("a lot whose line is not known throughout", () => {
  it("shows what its plants may have been: from the 4 seed parents alone to the 40 that came up", () => {
    // κ of 4 of 4: ¼, θ = ⅛; of 4 of 40: ¼(¼ + 3/40) = 0.08125, θ = 0.040625
    const span = spansOf(
      [lot("A"), harvest("B", "G")],
      [growOut("G", { plantsStanding: null, mostStanding: 40 })],
    )("B");
    near(span?.diversityRetained, 0.875, 0.959375);
    near(span?.effectiveSize, 4, 1 / 0.08125);
    expect(span?.since).toEqual([]);
  });

  it("says which record would narrow it most, and to what", () => {
    const span = spansOf(
      [lot("A"), harvest("B", "G")],
      [growOut("G", { plantsStanding: null, mostStanding: 40 })],
    )("B");
    expect(span?.narrows?.missing).toBe("pollenParents");
    expect(span?.narrows?.record).toEqual({ kind: "grow-out", id: "G", name: "grown G" });
    near(span?.narrows?.atWorst, 0.875, 0.875);
    near(span?.narrows?.atBest, 0.959375, 0.959375);
  });

  it("where nobody wrote who gave the seed of 10: one plant of them, or all alike", () => {
    // one: ¼(1 + 2/10 + 1/10) = 0.325, θ = 0.1625; all: κ 0.1, θ 0.05
    const span = spansOf([lot("A"), harvest("B", "G")], [growOut("G", { seedParents: null, seedShares: null })])("B");
    near(span?.diversityRetained, 0.8375, 0.95);
    expect(span?.assumed.some((text) => text.startsWith("the seed came from one plant nearly alone"))).toBe(true);
  });

  it("where nobody wrote what went into a blend: either lot alone, or the best mix of both", () => {
    // harvests of two founders: θ 0.06875 each, unrelated; half of each at the best
    const lots = [lot("A"), lot("C"), harvest("B", "G"), harvest("D", "H")];
    const grown = [growOut("G"), growOut("H", { parents: [{ id: "C", share: 1 }] })];
    const blend = mix("E", { id: "B", share: null }, { id: "D", share: null });
    const span = spansOf([...lots, blend], grown)("E");
    near(span?.coancestry, 0.06875 / 2, 0.06875);
    expect(span?.narrows?.record).toMatchObject({ kind: "lot", id: "E" });
  });

  it("hands its span down, and lots beside it have none", () => {
    const grown = [
      growOut("G", { plantsStanding: null, mostStanding: 40 }),
      growOut("H", { parents: [{ id: "B", share: 1 }] }),
    ];
    const of = spansOf([lot("A"), harvest("B", "G"), harvest("C", "H"), lot("X")], grown);
    expect(of("C")?.diversityRetained.low).toBeLessThan(0.875);
    expect(of("A")).toBeNull();
    expect(of("X")).toBeNull();
  });

  it.each<[string, Partial<GrowOutRecord>]>([
    ["nothing was counted", { plantsStanding: null, seedParents: null, seedShares: null }],
    ["the counts cannot be", { seedParents: 40 }],
    ["what was sown is not on record", { parents: [] }],
  ])("begins the measure anew where %s", (_, rest) => {
    const next = growOut("H", { parents: [{ id: "B", share: 1 }] });
    const of = spansOf([lot("A"), harvest("B", "G"), harvest("C", "H")], [growOut("G", rest), next]);
    expect(of("B")?.since).toEqual([{ growOutId: "G", name: "grown G" }]);
    near(of("C")?.diversityRetained, 0.93125, 0.93125);
    expect(of("C")?.since).toEqual([{ growOutId: "G", name: "grown G" }]);
    expect(of("C")?.narrows).toBeNull();
  });

  it("has none where the crop is kept by division", () => {
    const grown = growOut("G", { varietyId: "tuber", plantsStanding: null });
    const of = spansOf([lot("A", { varietyId: "tuber" }), harvest("B", "G", { varietyId: "tuber" })], [grown]);
    expect(of("B")).toBeNull();
  });
});

describe("founders", () => {
  const one = (id: string) => lot(id, { varietyId: "selfer", founderLines: "one", inbreeding: 1 });
  const blend = { ...mix("C", { id: "A", share: 0.5 }, { id: "B", share: 0.5 }), varietyId: "selfer" };
  const kin = (kind: string, coancestry: number | null = null) => [{ firstId: "A", secondId: "B", kind, coancestry }];

  it("of one line each are anything from unrelated (θ = 2·¼) to the same line (θ = 1), until somebody writes it", () => {
    const span = spansOf([one("A"), one("B"), blend])("C");
    near(span?.coancestry, 0.5, 1);
    expect(span?.narrows?.missing).toBe("kinship");
    near(spansOf([one("A"), one("B"), blend], [], kin("unrelated"))("C")?.coancestry, 0.5, 0.5);
    near(spansOf([one("A"), one("B"), blend], [], kin("same source"))("C")?.coancestry, 1, 1);
  });

  it("that share a tenth hold at least a tenth each: half of both has θ = 2·¼·0.1 + ½·0.1", () => {
    const many = [lot("A"), lot("B"), mix("C", { id: "A", share: 0.5 }, { id: "B", share: 0.5 })];
    near(spansOf(many, [], kin("coancestry", 0.1))("C")?.coancestry, 0.1, 0.1);
    expect(spansOf(many)("C")).toBeNull();
  });

  it("that share more than seeds of unrelated parents can are as inbred as that takes: θ 0.8 needs F 0.6", () => {
    const many = [lot("A"), lot("B"), mix("C", { id: "A", share: 0.5 }, { id: "B", share: 0.5 })];
    const of = spansOf(many, [], kin("coancestry", 0.8));
    near(of("C")?.coancestry, 0.8, 0.8);
    near(of("A")?.inbreeding, 0.6, 0.6);
  });
});

describe("the lines that the figures print", () => {
  it("hold points alone; the span stands beside them", () => {
    const records = {
      ...{
        varieties,
        lots: [lot("A"), harvest("B", "G")],
        growOuts: [growOut("G", { plantsStanding: null, mostStanding: 40 })],
      },
      ...{ ledger: new Map(), tests: new Map() },
    };
    const outcome = figuresOfRecords(records);
    const figure = outcome.ok ? outcome.value.find((each) => each.lot === "B") : undefined;
    expect(JSON.parse(JSON.stringify(figure))).not.toHaveProperty("span");
    expect(JSON.parse(JSON.stringify(figure))).toMatchObject({ diversityRetained: null });
    near(figure?.span?.diversityRetained, 0.875, 0.959375);
  });
});
