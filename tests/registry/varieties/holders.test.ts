import { describe, expect, it } from "vitest";
import { type HeldLot, holdersOf, type WordOfHolder } from "@/lib/registry/varieties/holders";

const rule = { today: "2026-03-10", confirmedYears: 3, usualLifeYears: 5 };
const lot = (patch: Partial<HeldLot> = {}): HeldLot => ({
  id: "l1",
  number: "Quern 1",
  holderId: "s1",
  status: null,
  gramsOnHand: 10,
  yearFirst: "2024-01-01",
  yearLast: "2024-12-31",
  lastInHand: null,
  buildings: [],
  ...patch,
});
const word = (onFirst: string, still = "yes", patch: Partial<WordOfHolder> = {}): WordOfHolder => ({
  id: "w1",
  stewardId: "s1",
  lotId: null,
  on: onFirst,
  onFirst,
  still,
  ...patch,
});
const only = (lots: HeldLot[], words: WordOfHolder[] = [], patch = {}) =>
  holdersOf(lots, words, { ...rule, ...patch })[0];

describe("a holder", () => {
  it("counts as confirmed for three years from the day of the word, and no day longer", () => {
    expect(only([lot()], [word("2023-03-10")])?.confirmed).toBe(true);
    expect(only([lot()], [word("2023-03-09")])).toMatchObject({ confirmed: false, why: "heard too long ago" });
  });

  it("is confirmed by seed that was weighed, tested or given within those years", () => {
    expect(only([lot({ lastInHand: "2024-05-01" })])).toMatchObject({ confirmed: true, last: { how: "seed in hand" } });
  });

  it("is not confirmed by nothing", () => {
    expect(only([lot()])).toMatchObject({ confirmed: false, why: "nothing heard", last: null });
  });

  it("does not count with seed past its usual life alone", () => {
    const old = lot({ yearFirst: "2020-01-01", yearLast: "2020-12-31" });
    expect(only([old], [word("2025-01-01")])?.why).toBe("seed past its usual life");
    expect(only([old, lot({ id: "l2" })], [word("2025-01-01")])?.confirmed).toBe(true);
  });

  it("does not count where the age of the seed is unknown, unless no usual life is known to hold it against", () => {
    const undated = lot({ yearFirst: null, yearLast: null });
    expect(only([undated], [word("2025-01-01")])?.why).toBe("age not known");
    expect(only([undated], [word("2025-01-01")], { usualLifeYears: null })?.confirmed).toBe(true);
    expect(only([], [word("2025-01-01")])?.why).toBe("age not known");
  });

  it("who said no is not confirmed by what was seen earlier, but by what came later", () => {
    expect(only([lot({ lastInHand: "2025-01-01" })], [word("2025-06-01", "no")])?.why).toBe("said no");
    expect(only([lot({ lastInHand: "2025-09-01" })], [word("2025-06-01", "no")])?.confirmed).toBe(true);
  });

  it("is known by the newest word; of one day, by the one written last", () => {
    expect(only([lot()], [word("2025-06-01"), word("2024-06-01", "no")])?.confirmed).toBe(true);
    expect(only([lot()], [word("2025-06-01"), word("2025-06-01", "unknown", { id: "w2" })])?.why).toBe("does not know");
  });

  it("who gave all away and never said a word is none any more", () => {
    expect(only([lot({ gramsOnHand: 0 })])).toBeUndefined();
    expect(only([lot({ status: "discarded" })])).toBeUndefined();
  });

  it("is one place with containers in one building, two in two", () => {
    expect(only([lot({ buildings: ["house", "house"] })])?.places).toBe(1);
    expect(only([lot({ buildings: ["house", "barn"] })])?.places).toBe(2);
    expect(only([lot()])?.places).toBe(1);
  });

  it("of lots without a holder is the keeper of this registry", () => {
    expect(only([lot({ holderId: null, lastInHand: "2026-01-01" })])).toMatchObject({
      stewardId: null,
      confirmed: true,
    });
  });
});

it("holders come in the order in which they were written down, whatever the order of their lots", () => {
  const lots = [lot({ holderId: "s2" }), lot({ id: "l2", holderId: "s1" }), lot({ id: "l3", holderId: null })];
  const order = (own: HeldLot[]) => holdersOf(own, [], rule).map(({ stewardId }) => stewardId);
  expect(order(lots)).toEqual([null, "s1", "s2"]);
  expect(order(lots.toReversed())).toEqual([null, "s1", "s2"]);
});
