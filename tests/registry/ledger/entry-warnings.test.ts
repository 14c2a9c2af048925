import { expect, it } from "vitest";
import { balanceOf } from "@/lib/registry/ledger/balance";
import { entryWarnings } from "@/lib/registry/ledger/entry-warnings";

type Other = { other?: string; otherStewardId?: string; otherLotId?: string };

const lot = { year: "2020", yearFirst: "2020-01-01" };
const warned = (kind: string, others: readonly Other[]) => {
  const entries = others.map((other, place) => ({
    id: `${place}`,
    kind,
    amount: 48,
    unit: "g",
    onFirst: "2025-03-16",
    onLast: "2025-03-16",
    replacesId: null,
    takenBack: false,
    other: null,
    ...other,
  }));
  const warnings = entryWarnings(balanceOf(entries, null), lot, "2026-01-01");
  return [...warnings].flatMap(([id, all]) => (all.some(({ code }) => code === "twice") ? [id] : []));
};

it("as much of two lots blended in on one day, or given to two people, is not one entry written twice", () => {
  expect(warned("blended-in", [{ otherLotId: "a" }, { otherLotId: "b" }])).toEqual([]);
  expect(warned("received", [{ otherStewardId: "p" }, { otherStewardId: "q" }, { other: "a neighbour" }])).toEqual([]);
});

it("as much from the same hand, or where one of the two does not say from whom, is asked about", () => {
  expect(warned("blended-in", [{ otherLotId: "a" }, { otherLotId: "b" }, { otherLotId: "a" }])).toEqual(["2"]);
  expect(warned("received", [{}, {}])).toEqual(["1"]);
  expect(warned("received", [{ otherStewardId: "p" }, {}])).toEqual(["1"]);
  expect(warned("received", [{}, { otherStewardId: "p" }])).toEqual(["1"]);
});
