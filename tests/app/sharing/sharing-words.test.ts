import { describe, expect, it } from "vitest";
import { heldRow } from "@/app/sharing/_list/held-rows";
import { handOf } from "@/app/sharing/_list/transfer-rows";
import { amountInWords } from "@/app/sharing/_words/transfer-words";
import { slipWords } from "@/app/sharing/[id]/slip/slip-words";
import { metricUnits } from "@/lib/display/units";
import type { TestOfLot } from "@/lib/registry/germination-tests/tests-of-lot";
import type { HeldVariety } from "@/lib/registry/transfers/read-sharing";
import type { TransferRead } from "@/lib/registry/transfers/read-transfer";

const read = (more: object = {}, lot: object = {}) =>
  ({
    transfer: { amount: 20, unit: "g", told: "that it crosses\nno promise", toWords: "Rin from the mill, 4 Low Lane" },
    lot: {
      number: "Ham 3",
      code: "ABCDEFGHX",
      year: "2024",
      kind: "harvest",
      thousandSeedGrams: 500,
      treatment: null,
      ...lot,
    },
    ...{ newNumber: "Ham 3 r", newCode: "23456789Y", from: "Oda Fenlight", fromKind: null, fromPlace: "Low Harrow" },
    ...{ to: "Rin Olderwick", promises: [{ words: "grows 30", due: "2028" }] },
    ...more,
  }) as unknown as TransferRead;

const test = (on: string, normal: number, counted = true) =>
  ({
    on,
    totals: { counted, sown: 20, sums: { normal } },
    germination: { share: normal / 20, low: 0.6, high: 0.9 },
  }) as TestOfLot;

describe("the slip", () => {
  it("says number, code, seeds, how it came up and what was told", () => {
    const words = slipWords(read(), [test("2025-02", 18), test("2026-02", 16), test("2026-11", 0, false)]);
    // 20 g at 500 g a thousand seeds
    expect(words).toMatchObject({ number: "Ham 3 r", was: "Ham 3", code: "234 567 89Y", harvest: "2024", seeds: 40 });
    expect(words.test).toMatchObject({ normal: 16, sown: 20, on: "2026-02" });
    expect(words.told).toEqual(["that it crosses", "no promise"]);
    expect(words.promised).toEqual(["grows 30 (2028)"]);
  });

  it("names no person and nobody's address", () => {
    const text = JSON.stringify(slipWords(read(), []));
    for (const secret of ["Oda", "Fenlight", "Rin", "Olderwick", "Low Lane"]) expect(text).not.toContain(secret);
    expect(slipWords(read(), []).from).toBe("a steward, Low Harrow; harvested from a grow-out on record");
    const library = { from: "Gale Reading Room", fromKind: "library" };
    expect(slipWords(read(library, { kind: "split" }), []).from).toBe("Gale Reading Room, Low Harrow");
  });

  it("says in large what is or may be treated, and what was never tested or dated", () => {
    expect(slipWords(read({}, { treatment: "chemical" }), []).caution).toBe("TREATED SEED: NOT FOOD, NOT FEED");
    expect(slipWords(read({}, { treatment: "unknown" }), []).caution).toBe("PERHAPS TREATED: NOT FOOD, NOT FEED");
    const bare = slipWords(
      read({ newNumber: null, newCode: null, promises: [] }, { year: null, thousandSeedGrams: null }),
      [],
    );
    expect(bare).toMatchObject({
      number: "Ham 3",
      was: null,
      harvest: "year unknown",
      seeds: null,
      test: null,
      caution: null,
    });
  });
});

describe("the list of who holds what", () => {
  const held = (places: number): HeldVariety =>
    ({
      variety: { id: "v", name: "Hamble Long", crop: { key: "bean-broad" }, seedCoat: null },
      holders: [
        { stewardId: "s2", confirmed: false, lots: [{}], places: 1, why: "nothing heard", last: null },
        { stewardId: "s1", confirmed: true, lots: [{}, {}], places: 1, why: null, last: null },
      ],
      ...{ places, confirmed: 1, last: null },
    }) as unknown as HeldVariety;
  const names = new Map([["s1", "Oda"]]);

  it("marks a sole copy, names those who count first, and keeps an erased name as a steward", () => {
    const { cells } = heldRow(held(1), names);
    expect(cells.places).toEqual({ kind: "waits", words: "1, a sole copy", sort: 1 });
    expect(cells.who).toBe("Oda and a steward (?)");
    expect([cells.lots, cells.last]).toEqual([3, null]);
    expect(heldRow(held(0), names).cells.places).toMatchObject({ words: "none" });
    expect(heldRow(held(2), names).cells.places).toEqual({ kind: "count", words: "2", sort: 2 });
  });
});

describe("a hand and an amount", () => {
  it("are told as they are on record, and unknown where they are not", () => {
    expect(handOf("s1", null, new Map([["s1", "Oda"]]))).toBe("Oda");
    expect(handOf("gone", "a reader", new Map())).toBe("a steward");
    expect(handOf(null, "a reader", new Map())).toBe("a reader");
    expect(handOf(null, null, new Map())).toBeNull();
    expect(amountInWords(null, "g", metricUnits)).toBe("unknown");
    expect(amountInWords(1, "ears", metricUnits)).toBe("1 ear");
    expect(amountInWords(30, "seeds", metricUnits).replace("\u00a0", " ")).toBe("30 seeds");
  });
});
