import { describe, expect, it } from "vitest";
import { type LotFigures, lineageOfRecords } from "@/lib/registry/figures/lineage-of-records";
import type { FigureRecords, GrowOutRecord, LotRecord, VarietyRecord } from "@/lib/registry/figures/records";

const crosser = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };
const kinds: Readonly<Record<string, VarietyRecord>> = {
  crosser: { id: "crosser", name: "Crosser", profile: crosser, clonal: false },
  loner: { id: "loner", name: "Loner", profile: { ...crosser, selfIncompatible: "yes" }, clonal: false },
  selfer: {
    id: "selfer",
    name: "Selfer",
    profile: { matingSystem: "selfing", selfIncompatible: "no", outcrossingPctMin: 0, outcrossingPctMax: 20 },
    clonal: false,
  },
  sexes: { id: "sexes", name: "Sexes", profile: { ...crosser, matingSystem: "dioecious" }, clonal: false },
  tuber: { id: "tuber", name: "Tuber", profile: { ...crosser, matingSystem: "clonal" }, clonal: true },
};

const lot = (id: string, rest: Partial<LotRecord> = {}): LotRecord => ({
  id,
  number: id,
  varietyId: "crosser",
  holder: null,
  kind: "founder",
  growOutId: null,
  parents: [],
  inbreeding: null,
  thousandSeedGrams: null,
  ...rest,
});

const harvest = (id: string, growOutId: string, rest: Partial<LotRecord> = {}) =>
  lot(id, { kind: "harvest", growOutId, ...rest });

/** Ten plants of lot A, all alive to flowering, seed of four. */
const growOut = (id: string, rest: Partial<GrowOutRecord> = {}): GrowOutRecord => ({
  id,
  name: id,
  varietyId: "crosser",
  parents: [{ id: "A", share: 1 }],
  plantsStanding: 10,
  malesStanding: null,
  roguedBeforePollen: 0,
  seedParents: 4,
  seedShares: "equal",
  selfingRate: 0,
  foreignPollen: 0,
  ...rest,
});

function followed(lots: LotRecord[], growOuts: GrowOutRecord[] = []) {
  const records: FigureRecords = { varieties: Object.values(kinds), lots, growOuts };
  const outcome = lineageOfRecords(records);
  if (!outcome.ok) throw new Error(outcome.refusals.map(({ sentence }) => sentence).join("\n"));
  const figure = (id: string) => outcome.value.figures.get(id) as LotFigures;
  return { ...outcome.value, figure };
}

describe("a harvest", () => {
  it("has the figures of its grow-out", () => {
    // By hand: no selfing, unrelated parents, S = ½; P_MM = ¼, P_MF = P_FF = 1/10:
    // θ = ¼·½·(0.25 + 2·0.1 + 0.1) = 0.06875 and κ = ¼(0.25 + 2·0.1 + 0.1) = 0.1375, Ne = 1/κ.
    const { figure } = followed([lot("A"), harvest("B", "G")], [growOut("G")]);
    expect(figure("B").coancestry).toBeCloseTo(0.06875, 14);
    expect(figure("B").diversityRetained).toBeCloseTo(0.93125, 14);
    expect(figure("B").effectiveSize).toBeCloseTo(1 / 0.1375, 12);
    expect(figure("B").generations).toBe(1);
    expect(figure("A")).toMatchObject({ effectiveSize: null, coancestry: 0, inbreeding: 0, generations: 0 });
  });

  it("of a grow-out of which nobody wrote what was sown has no figures, and the others keep theirs", () => {
    const { figure, assumedFor } = followed(
      [lot("A"), harvest("B", "G"), harvest("C", "H")],
      [growOut("G", { parents: [] }), growOut("H")],
    );
    expect(figure("B")).toMatchObject({
      effectiveSize: null,
      coancestry: null,
      diversityRetained: null,
      inbreeding: null,
    });
    expect(figure("C").coancestry).toBeCloseTo(0.06875, 14);
    expect(assumedFor("B").map(({ code }) => code)).toContain("parents-not-known");
  });

  it("leaves rogues that were pulled before pollen shed out of the pollen parents", () => {
    // 12 standing less 2: the same ten.
    const { figure } = followed(
      [lot("A"), harvest("B", "G")],
      [growOut("G", { plantsStanding: 12, roguedBeforePollen: 2 })],
    );
    expect(figure("B").coancestry).toBeCloseTo(0.06875, 14);
  });

  it("of separate sexes counts males as pollen parents, whatever stood in all", () => {
    // 4 females, 8 males: κ = ¼(1/4 + 1/8), Ne = 4·4·8/(4 + 8) = 10.667 (Wright 1931).
    const sexes = growOut("G", { varietyId: "sexes", plantsStanding: null, malesStanding: 8, selfingRate: null });
    const { figure } = followed([lot("A", { varietyId: "sexes" }), harvest("B", "G", { varietyId: "sexes" })], [sexes]);
    expect(figure("B").effectiveSize).toBeCloseTo(128 / 12, 12);
  });

  it("is one pool with every other of the same grow-out", () => {
    const blend = lot("D", {
      kind: "blend",
      parents: [
        { id: "B", share: 0.3 },
        { id: "C", share: 0.7 },
      ],
    });
    const { figure } = followed([lot("A"), harvest("B", "G"), harvest("C", "G"), blend], [growOut("G")]);
    expect(figure("C")).toEqual(figure("B"));
    expect(figure("D").coancestry).toBeCloseTo(0.06875, 14);
    expect(figure("D").effectiveSize).toBeNull();
  });
});

describe("what the crop's profile fills in", () => {
  it("is the selfing rate, and a founder's inbreeding at its balance", () => {
    // s = 1 − (0 + 20)/200 = 0.9; F = s/(2 − s) = 0.9/1.1.
    const self = growOut("G", { varietyId: "selfer", selfingRate: null });
    const stated = growOut("H", { varietyId: "selfer", selfingRate: 0.9 });
    const own = { varietyId: "selfer" };
    const lots = [lot("A", own), harvest("B", "G", own), harvest("C", "H", own)];
    const { figure, assumedFor } = followed(lots, [self, stated]);
    expect(figure("A").inbreeding).toBeCloseTo(0.9 / 1.1, 14);
    expect(figure("B")).toEqual(figure("C"));
    expect(assumedFor("B").map(({ code }) => code)).toEqual(
      expect.arrayContaining(["selfing-rate-of-crop", "founder-inbreeding-of-crop", "pollen-shares-equal"]),
    );
    expect(assumedFor("C").map(({ code }) => code)).not.toContain("selfing-rate-of-crop");
  });

  it("is that no plant can father its own seed", () => {
    // 10 plants, seed of all ten, self-incompatible: no chance selfing, so F of the offspring is 0.
    const lone = growOut("G", { varietyId: "loner", seedParents: 10, selfingRate: null });
    const { figure } = followed([lot("A", { varietyId: "loner" }), harvest("B", "G", { varietyId: "loner" })], [lone]);
    expect(figure("B").inbreeding).toBe(0);
  });

  it("is not taken where it was stated", () => {
    const own = { varietyId: "selfer" };
    const { figure, assumedFor } = followed([lot("A", { ...own, inbreeding: 0.25 })]);
    expect(figure("A").inbreeding).toBe(0.25);
    expect(assumedFor("A").map(({ code }) => code)).not.toContain("founder-inbreeding-of-crop");
  });

  it("says of what nobody wrote down that it is computed as nothing", () => {
    const open = growOut("G", { foreignPollen: null, roguedBeforePollen: null });
    const { figure, assumedFor } = followed([lot("A"), harvest("B", "G")], [open]);
    expect(figure("B").coancestry).toBeCloseTo(0.06875, 14);
    expect(assumedFor("B").map(({ code }) => code)).toEqual(
      expect.arrayContaining(["foreign-pollen-not-assessed", "rogues-not-recorded"]),
    );
  });

  it("is that two founders are unrelated", () => {
    const blend = lot("C", {
      kind: "blend",
      parents: [
        { id: "A", share: 0.5 },
        { id: "B", share: 0.5 },
      ],
    });
    const { foundersOf, assumedFor } = followed([lot("A"), lot("B"), blend]);
    expect(foundersOf("C")).toEqual(["A", "B"]);
    expect(assumedFor("C").at(-1)).toEqual({
      code: "founders-unrelated",
      text: "founder lots were unrelated to each other: A, B",
    });
  });
});

describe("what is not known", () => {
  const nothing = {
    effectiveSize: null,
    inbreeding: null,
    coancestry: null,
    diversityRetained: null,
    nativeDiversityRetained: null,
  };

  it.each(["plantsStanding", "seedParents", "seedShares"] as const)(
    "of %s leaves what drift moves unknown for all that descends, and the rest given",
    (field) => {
      const lots = [
        lot("A"),
        harvest("B", "G"),
        harvest("C", "H"),
        lot("D", { kind: "split", parents: [{ id: "C", share: 1 }] }),
      ];
      const growOuts = [
        growOut("G", { [field]: null, foreignPollen: 0.2 }),
        growOut("H", { parents: [{ id: "B", share: 1 }] }),
      ];
      const { figure, assumedFor } = followed(lots, growOuts);
      // Half of the genes came with pollen, a fifth of it foreign.
      expect(figure("B")).toEqual({ ...nothing, foreignAncestry: expect.closeTo(0.1, 14), generations: 1 });
      expect(figure("D")).toEqual({ ...nothing, foreignAncestry: expect.closeTo(0.1, 14), generations: 2 });
      expect(figure("A").coancestry).toBe(0);
      expect(assumedFor("D").some(({ text }) => text.endsWith(": G"))).toBe(true);
    },
  );

  it("of the shares of several parents leaves all unknown but the founders", () => {
    const parents = [
      { id: "A", share: null },
      { id: "B", share: null },
    ];
    const { figure, foundersOf } = followed([lot("A"), lot("B"), lot("C", { kind: "blend", parents })]);
    expect(figure("C")).toEqual({ ...nothing, foreignAncestry: null, generations: null });
    expect(foundersOf("C")).toEqual(["A", "B"]);
  });

  it("of the share of a single parent is all of it", () => {
    const { figure } = followed([lot("A"), harvest("B", "G")], [growOut("G", { parents: [{ id: "A", share: null }] })]);
    expect(figure("B").coancestry).toBeCloseTo(0.06875, 14);
  });

  it("is all of a crop that is kept by division", () => {
    const { figure } = followed([lot("A", { varietyId: "tuber" })]);
    expect(figure("A")).toEqual({ ...nothing, foreignAncestry: null, generations: null });
  });

  it("of where a harvest came from makes it a founder", () => {
    const { figure, foundersOf } = followed([lot("A", { kind: "harvest" })]);
    expect(figure("A").generations).toBe(0);
    expect(foundersOf("A")).toEqual(["A"]);
  });
});

describe("what cannot be", () => {
  it("in the counts of one grow-out is named, and only what descends from it has no figures", () => {
    const growOuts = [growOut("G", { seedParents: 11 }), growOut("H")];
    const { figure, impossible } = followed([lot("A"), harvest("B", "G"), harvest("C", "H")], growOuts);
    expect(impossible).toMatchObject([{ path: ["growOuts", "G", "seedParents"], given: 11 }]);
    expect(figure("B").coancestry).toBeNull();
    expect(figure("C").coancestry).toBeCloseTo(0.06875, 14);
  });

  it("is refused where a lot is its own ancestor", () => {
    const lots = [
      lot("B", { kind: "split", parents: [{ id: "C", share: 1 }] }),
      lot("C", { kind: "split", parents: [{ id: "B", share: 1 }] }),
    ];
    const outcome = lineageOfRecords({ varieties: Object.values(kinds), lots, growOuts: [] });
    expect(outcome.ok ? [] : outcome.refusals[0]?.path).toEqual(["lots"]);
  });

  it("is refused at its lot where shares do not come to one or a parent is missing", () => {
    const parents = [
      { id: "A", share: 0.5 },
      { id: "B", share: 0.4 },
    ];
    const uneven = lineageOfRecords({
      varieties: Object.values(kinds),
      lots: [lot("A"), lot("B"), lot("C", { kind: "blend", parents })],
      growOuts: [],
    });
    expect(uneven.ok ? [] : uneven.refusals[0]?.path).toEqual(["lots", "C", "parents"]);
    const orphan = lineageOfRecords({ varieties: Object.values(kinds), lots: [harvest("B", "nowhere")], growOuts: [] });
    expect(orphan.ok ? [] : orphan.refusals[0]?.path.slice(0, 2)).toEqual(["lots", "B"]);
  });
});

describe("a long line of lots", () => {
  it("is followed from end to end", () => {
    const lots = Array.from({ length: 20_000 }, (_, place) =>
      place === 0 ? lot("L0") : lot(`L${place}`, { kind: "split", parents: [{ id: `L${place - 1}`, share: 1 }] }),
    );
    const { figure, foundersOf } = followed(lots);
    expect(figure("L19999").coancestry).toBe(0);
    expect(foundersOf("L19999")).toEqual(["L0"]);
  });

  it("names of what was assumed many times over the nearest, its own grow-out first", () => {
    const years = Array.from({ length: 12 }, (_, place) => place);
    const growOuts = years.map((year) =>
      growOut(`G${year}`, { parents: [{ id: `L${year}`, share: 1 }], roguedBeforePollen: null }),
    );
    const { assumedFor } = followed([lot("L0"), ...years.map((year) => harvest(`L${year + 1}`, `G${year}`))], growOuts);
    const rogues = (id: string) => assumedFor(id).find(({ code }) => code === "rogues-not-recorded")?.text ?? "";
    expect(rogues("L3")).toMatch(/: G0, G1, G2$/);
    expect(rogues("L12")).toMatch(/: G11, G10, G9, G8, G7, G6, G5, G4 and 4 before them$/);
  });
});
