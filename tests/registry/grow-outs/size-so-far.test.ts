import { describe, expect, it } from "vitest";
import type { CountOnRecord, PassOnRecord } from "@/lib/registry/grow-outs/field-records";
import { type SizeGround, sizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import type { Stage } from "@/lib/schemas/grow-outs/field-kinds";

const day = (on: string | null) => ({ on, onFirst: on, onLast: on });
const rest = { note: null, stewardId: null, replacesId: null };
const count = (stage: Stage, plants: number, on: string): CountOnRecord => ({
  id: `${stage}${on}`,
  stage,
  plants,
  males: null,
  thinnedBy: null,
  ...day(on),
  ...rest,
});
const pass = (pulled: number, on: string, left: number | null = null): PassOnRecord => ({
  id: `pass${on}`,
  pulled,
  timing: "before",
  stage: null,
  looked: null,
  reason: null,
  left,
  ...day(on),
  ...rest,
});

const crosser = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 95, outcrossingPctMax: 100 };
const dioecious = { ...crosser, matingSystem: "dioecious" };

function ground(record: Partial<SizeGround["record"]> = {}, more: Partial<SizeGround> = {}): SizeGround {
  return {
    counts: [],
    passes: [],
    record: {
      id: "g",
      name: "G",
      varietyId: "v",
      seedsSown: null,
      plantsStanding: null,
      malesStanding: null,
      roguedBeforePollen: null,
      roguedAfterPollen: null,
      seedParents: null,
      seedShares: null,
      selfingRate: null,
      foreignPollen: null,
      ...record,
    },
    profile: crosser,
    clonal: false,
    inbreeding: 0,
    seedParentsMeant: null,
    over: false,
    clusters: false,
    seedTaken: false,
    floor: 100,
    ...more,
  };
}

// Expected sizes are worked by hand from 4·Nf·Nm/(Nm + 3·Nf), and 4·Nf·Nm/(Nf + Nm) where the sexes are separate.

describe("before any seed is taken", () => {
  it("says what it would count as: from one seed parent to all that stand and were not rogued, and from those planned", () => {
    const size = sizeSoFar(ground({ plantsStanding: 66, roguedBeforePollen: 4 }, { seedParentsMeant: 40 }));
    // 62 shed pollen: 248/65, 62, and 4·40·62/(62 + 120) = 9920/182
    expect(size).toMatchObject({ state: "before-seed", all: 62, narrows: [] });
    if (size.state !== "before-seed") return;
    expect(size.low).toBeCloseTo(248 / 65, 9);
    expect(size.high).toBeCloseTo(62, 9);
    expect(size.meant?.size).toBeCloseTo(9920 / 182, 9);
  });

  it("takes the count before as a bound where nobody counted what stands, and says to count it", () => {
    const counts = [count("up", 120, "2026-05-20"), count("thinned", 80, "2026-06-01")];
    const size = sizeSoFar(ground({}, { counts, passes: [pass(5, "2026-06-20"), pass(9, "2026-05-25")] }));
    // 80 after thinning less 5 pulled since
    expect(size).toMatchObject({ state: "before-seed", all: 75, narrows: [{ missing: "pollenParents" }] });
    if (size.state === "before-seed") expect(size.high).toBeCloseTo(75, 9);
  });

  it("takes what was left after a pass as a bound", () => {
    const size = sizeSoFar(ground({ seedsSown: 300 }, { passes: [pass(5, "2026-06-20", 41)] }));
    expect(size).toMatchObject({ state: "before-seed", all: 41 });
  });

  it("gives no figure where nothing was counted, and none of seed balls sown", () => {
    expect(sizeSoFar(ground()).state).toBe("nothing-counted");
    expect(sizeSoFar(ground({ seedsSown: 100 }, { clusters: true })).state).toBe("nothing-counted");
  });
});

describe("once seed is taken", () => {
  const taken = { seedTaken: true };

  it("is one figure where all is known, as the lot has it", () => {
    const size = sizeSoFar(ground({ plantsStanding: 50, seedParents: 40, seedShares: "equal" }, taken));
    expect(size).toMatchObject({ state: "known" });
    if (size.state === "known") expect(size.size).toBeCloseTo(8000 / 170, 9);
  });

  it("is a span where the plants standing were not counted, up to the count before", () => {
    const counts = [count("thinned", 60, "2026-06-01")];
    const size = sizeSoFar(ground({ seedParents: 10, seedShares: "equal" }, { ...taken, counts }));
    expect(size).toMatchObject({ state: "span", narrows: [{ missing: "pollenParents" }] });
    if (size.state !== "span") return;
    expect(size.low).toBeCloseTo(10, 9);
    expect(size.high).toBeCloseTo(80 / 3, 9);
  });

  it("is bounded by four times the seed parents where no plant was counted at all", () => {
    const size = sizeSoFar(ground({ seedParents: 10, seedShares: "equal" }, taken));
    expect(size).toMatchObject({ state: "span" });
    if (size.state === "span") expect(size.high).toBeCloseTo(40, 9);
  });

  it("is a span down to one plant's seed where the shares were not written", () => {
    const size = sizeSoFar(ground({ plantsStanding: 60, seedParents: 10 }, taken));
    expect(size).toMatchObject({ state: "span", narrows: [{ missing: "seedShares" }] });
    if (size.state === "span") expect(size.low).toBeCloseTo(240 / 63, 9);
  });

  it("of separate sexes without the males counted goes from a lone father to all that gave no seed", () => {
    const record = { plantsStanding: 40, seedParents: 20, seedShares: "equal" as const };
    const size = sizeSoFar(ground(record, { ...taken, profile: dioecious }));
    expect(size).toMatchObject({ state: "span" });
    if (size.state !== "span") return;
    // 4·20·1/21 and 4·20·20/40
    expect(size.low).toBeCloseTo(80 / 21, 9);
    expect(size.high).toBeCloseTo(40, 9);
  });

  it("where tassels were taken holds both cases: the seed parents among those that shed, or not", () => {
    const record = { plantsStanding: 60, seedParents: 20, detasselled: 20 };
    const size = sizeSoFar(ground(record, taken));
    expect(size).toMatchObject({ state: "span" });
    if (size.state !== "span") return;
    // 40 shed: one plant's seed 160/43; 20 and 40 apart 4·20·40/60
    expect(size.low).toBeCloseTo(160 / 43, 9);
    expect(size.high).toBeCloseTo(3200 / 60, 9);
  });

  it("where fewer plants kept their tassels than gave seed, those may all be seed parents", () => {
    const record = { plantsStanding: 12, seedParents: 10, detasselled: 9, seedShares: "equal" as const };
    const size = sizeSoFar(
      ground({ ...record, plantsStanding: null }, { ...taken, counts: [count("up", 12, "2026-05-20")] }),
    );
    expect(size).toMatchObject({ state: "span" });
    if (size.state !== "span") return;
    // by hand: one plant sheds and is one of the ten: c = ½(0.1 + 1) once, 0.05 nine times, Σc² = 0.325
    expect(size.low).toBeCloseTo(1 / 0.325, 9);
    const known = sizeSoFar(ground({ ...record, seedShares: null }, taken));
    expect(known).toMatchObject({ state: "span" });
    expect(sizeSoFar(ground({ ...record, seedParents: 13, seedShares: null }, taken)).state).toBe("impossible");
  });

  it("says what cannot be together", () => {
    const size = sizeSoFar(ground({ plantsStanding: 30, seedParents: 40, seedShares: "equal" }, taken));
    expect(size).toMatchObject({ state: "impossible", refusals: [{ code: "more-seed-than-pollen-parents" }] });
  });

  it("names the inbreeding that is not known", () => {
    const record = { plantsStanding: 50, seedParents: 40, seedShares: "equal" as const };
    const size = sizeSoFar(ground(record, { ...taken, inbreeding: null }));
    if (size.state === "known") expect(size.assumed.map(({ code }) => code)).toContain("parents-not-inbred");
    expect(size.state).toBe("known");
  });
});

it("says where no seed came, and gives no size to a crop kept by division", () => {
  expect(sizeSoFar(ground({ plantsStanding: 50 }, { over: true })).state).toBe("no-seed");
  expect(sizeSoFar(ground({ plantsStanding: 50 }, { clonal: true })).state).toBe("clonal");
});
