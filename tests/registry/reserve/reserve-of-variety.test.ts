import { expect, test } from "vitest";
import type { Holding } from "@/lib/registry/reserve/read-holdings";
import { type ReserveQuestion, reserveOfVariety } from "@/lib/registry/reserve/reserve-of-variety";

const today = "2026-11-24";

const holding = (number: string, more: Partial<Holding> = {}): Holding => ({
  id: number,
  number,
  holderId: "me",
  holder: "Oda Fenlight",
  kind: "founder",
  founderLines: null,
  status: null,
  gramsOnHand: 200,
  thousandSeedGrams: 500,
  year: "2024",
  yearFirst: "2024-01-01",
  yearLast: "2024-12-31",
  treatment: null,
  lastTest: tested(20, 18),
  lastInHand: "2026-02-01",
  buildings: [],
  containers: [],
  ...more,
});

function tested(sown: number, normal: number): Holding["lastTest"] {
  return {
    testId: "t",
    test: "T",
    date: "2026-02",
    sown,
    normal,
    germination: normal / sown,
    low: normal / sown,
    high: normal / sown,
  };
}

const ask = (holdings: readonly Holding[], more: Partial<ReserveQuestion> = {}) =>
  reserveOfVariety({
    holderId: "me",
    holdings,
    words: [],
    varietyPlantsWanted: 20,
    cropPlantsMin: 12,
    seedsPerGram: { min: 1, max: 4 },
    usualLifeYears: 4,
    settings: { renewalUrgent: 0.5, confirmedYears: 3 },
    today,
    ...more,
  });

// 20 plants with confidence 0.9 from 18 of 20 and an emergence of 0.8 want 34 seeds, from 90 of 100 they want 33
// (seed-testing reference, table of sowing numbers, computed by a second program).

test("one grow-out, two tests, a sowing for another place and the archive make the reserve", () => {
  const kept = ask([holding("a")]);
  expect(kept.sowing?.sowing.seeds).toBe(34);
  expect(kept.reserve?.parts).toEqual({ growOuts: 34, tests: 100, duplicates: 34, archive: 50 });
  expect(kept.reserve?.seeds).toBe(218);
  expect(kept.onHand).toEqual({ value: 400, low: 400, high: 400, grade: "counted" });
});

test("two other confirmed places make a sowing for another place needless", () => {
  const elsewhere = ["b", "c"].map((id) => holding(id, { holderId: id, holder: id }));
  expect(ask([holding("a"), ...elsewhere.slice(0, 1)]).reserve?.seeds).toBe(218);
  const kept = ask([holding("a"), ...elsewhere]);
  expect([kept.placesElsewhere, kept.reserve?.seeds]).toEqual([2, 184]);
});

test("a holder not heard of for longer than the setting says is no confirmed place", () => {
  const old = { lastInHand: "2023-11-23" };
  const elsewhere = ["b", "c"].map((id) => holding(id, { holderId: id, ...old }));
  expect(ask([holding("a"), ...elsewhere]).placesElsewhere).toBe(0);
  const patient = { renewalUrgent: 0.5, confirmedYears: 4 };
  expect(ask([holding("a"), ...elsewhere], { settings: patient }).placesElsewhere).toBe(2);
});

test("all good lots of the holder count together, and the one that needs most seed sets the sowing", () => {
  const kept = ask([holding("a", { lastTest: tested(100, 90) }), holding("b"), holding("c", { holderId: "other" })]);
  expect(kept.good.map(({ lot }) => lot.number)).toEqual(["a", "b"]);
  expect(kept.sowing?.of.lot.number).toBe("b");
  expect(kept.onHand.value).toBe(800);
});

test("a lot set aside, never tested, tested too low or empty is not counted on, and said why", () => {
  const kept = ask([
    holding("a", { status: "hold" }),
    holding("b", { lastTest: null }),
    holding("c", { lastTest: tested(20, 9) }),
    holding("d", { gramsOnHand: 0 }),
    holding("e", { status: "dead" }),
  ]);
  expect(kept.good).toEqual([]);
  expect(kept.leftOut.map(({ lot, why }) => [lot.number, why])).toEqual([
    ["a", "set aside"],
    ["b", "never tested"],
    ["c", "tests too low"],
    ["d", "no seed left"],
    ["e", "no seed left"],
  ]);
  expect(kept.reserve).toBeNull();
});

test("the crop's fewest plants stand in for the variety's own number; without either nothing is worked out", () => {
  expect(ask([holding("a")], { varietyPlantsWanted: null }).wanted).toEqual({ plants: 12, from: "crop" });
  expect(ask([holding("a")], { varietyPlantsWanted: null, cropPlantsMin: null }).reserve).toBeNull();
});

test("a lot without its own seed weight counts as a span, one without any as uncounted", () => {
  const kept = ask([holding("a", { thousandSeedGrams: null }), holding("b", { gramsOnHand: null })]);
  expect(kept.onHand).toEqual({ value: null, low: 200, high: 800, grade: "assumed" });
  expect(kept.uncounted).toBe(1);
});
