import { describe, expect, it } from "vitest";
import { countsInStep, numbersOfEvents, type StepNumbers, spokenOf } from "@/lib/registry/grow-outs/counts-in-step";
import type { CountOnRecord, PassOnRecord } from "@/lib/registry/grow-outs/field-records";
import type { Stage } from "@/lib/schemas/grow-outs/field-kinds";

const day = (on: string | null) => ({ on, onFirst: on, onLast: on });
const rest = { note: null, stewardId: null, replacesId: null };
const count = (id: string, stage: Stage, plants: number, on: string | null, males: number | null = null) =>
  ({ id, stage, plants, males, thinnedBy: null, ...day(on), ...rest }) satisfies CountOnRecord;
const pass = (id: string, pulled: number, on: string, timing: "before" | "after" | null) =>
  ({
    id,
    pulled,
    timing,
    stage: null,
    looked: null,
    reason: null,
    left: null,
    ...day(on),
    ...rest,
  }) satisfies PassOnRecord;

const unknown: StepNumbers = {
  seedsSown: null,
  plantsStanding: null,
  malesStanding: null,
  roguedBeforePollen: null,
  roguedAfterPollen: null,
};

// Sums worked by hand.
describe("the numbers that events give", () => {
  it("are unknown where nothing speaks of them: up, thinned and lifted say nothing of what stands", () => {
    const counts = [count("1", "up", 90, "2026-05-20"), count("2", "thinned", 60, "2026-06-01")];
    expect(numbersOfEvents({ counts, passes: [] })).toEqual(unknown);
  });

  it("add what was pulled before a later count, so that standing less rogued is what shed pollen", () => {
    const counts = [count("1", "standing", 60, "2026-06-10"), count("2", "flowering", 50, "2026-07-20")];
    const passes = [
      pass("1", 3, "2026-06-20", "before"),
      pass("2", 4, "2026-07-10", "before"),
      pass("3", 2, "2026-08-10", "after"),
    ];
    const numbers = numbersOfEvents({ counts, passes });
    // 50 came to flower and 7 were pulled before: 57 less 7 shed pollen.
    expect(numbers).toMatchObject({ plantsStanding: 57, roguedBeforePollen: 7, roguedAfterPollen: 2 });
  });

  it("take a count of the day of a pass as before it, and one without a date as before all", () => {
    const passes = [pass("1", 5, "2026-06-10", "before")];
    expect(numbersOfEvents({ counts: [count("1", "standing", 60, "2026-06-10")], passes }).plantsStanding).toBe(60);
    expect(numbersOfEvents({ counts: [count("1", "standing", 60, null)], passes }).plantsStanding).toBe(60);
  });

  it("take males from the last count that counts them", () => {
    const counts = [count("1", "standing", 60, "2026-06-10", 31), count("2", "flowering", 55, "2026-07-10")];
    expect(numbersOfEvents({ counts, passes: [] }).malesStanding).toBe(31);
  });

  it("leave out a pass of which nobody said when, and count 0 where one walked and found none", () => {
    const passes = [pass("1", 5, "2026-06-10", null), pass("2", 0, "2026-06-11", "before")];
    expect(numbersOfEvents({ counts: [], passes })).toMatchObject({ roguedBeforePollen: 0, roguedAfterPollen: null });
  });
});

describe("the grow-out's numbers", () => {
  const none = { counts: [], passes: [] };
  const standing = { counts: [count("1", "standing", 60, "2026-06-10")], passes: [] };

  it("follow an entry that speaks of them, whatever stood there", () => {
    expect(countsInStep({ ...unknown, plantsStanding: 70 }, none, standing, spokenOf(standing))).toEqual({
      plantsStanding: 60,
    });
  });

  it("stay as a folder wrote them where an entry speaks of something else", () => {
    const noted = { ...unknown, roguedBeforePollen: 12, plantsStanding: 66 };
    const is = { ...standing, passes: [pass("1", 2, "2026-08-01", "after")] };
    expect(countsInStep(noted, standing, is, spokenOf({ passes: is.passes }))).toEqual({ roguedAfterPollen: 2 });
  });

  it("become again what was written without events when the last one goes", () => {
    const now = { ...unknown, plantsStanding: 60 };
    expect(countsInStep(now, standing, none, new Set(), { plantsStanding: 44 })).toEqual({ plantsStanding: 44 });
    expect(countsInStep(now, standing, none)).toEqual({ plantsStanding: null });
  });

  it("keep a number put right by hand when its event goes", () => {
    expect(countsInStep({ ...unknown, plantsStanding: 58 }, standing, none)).toEqual({});
  });

  it("fill in the seeds sown only where nobody wrote them, and follow their own correction", () => {
    const sown = { counts: [count("1", "sown", 200, "2026-05-01")], passes: [] };
    const more = { counts: [count("2", "sown", 220, "2026-05-01")], passes: [] };
    expect(countsInStep(unknown, none, sown)).toEqual({ seedsSown: 200 });
    expect(countsInStep({ ...unknown, seedsSown: 150 }, none, sown)).toEqual({});
    expect(countsInStep({ ...unknown, seedsSown: 200 }, sown, more)).toEqual({ seedsSown: 220 });
  });
});
