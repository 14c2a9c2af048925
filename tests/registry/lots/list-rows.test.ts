import { expect, test } from "vitest";
import { filterRows } from "@/lib/registry/lots/filter-rows";
import { findRows, namedFirst } from "@/lib/registry/lots/find-rows";
import type { LotRow } from "@/lib/registry/lots/lot-row";
import { sortRows } from "@/lib/registry/lots/sort-rows";
import { LotListQuerySchema } from "@/lib/schemas/lots/list-query";

const row = (number: string, more: Partial<LotRow> = {}): LotRow => ({
  id: number,
  number,
  code: "",
  kind: "founder",
  varietyId: "v",
  variety: "Hamble Long",
  otherNames: [],
  otherNumbers: [],
  otherCodes: [],
  seedCoat: null,
  cropKey: "bean-broad",
  crop: "Bean, broad",
  holderId: null,
  holder: null,
  year: null,
  yearFirst: null,
  yearLast: null,
  status: null,
  treatment: null,
  notes: null,
  places: [],
  grams: null,
  thousandSeedGrams: null,
  live: null,
  lastTest: null,
  usualLifeYears: null,
  diversityRetained: null,
  diversitySpan: null,
  generations: null,
  standing: "counted",
  ...more,
});

const tested = (germination: number) => ({
  testId: "t",
  test: "T",
  date: "2026",
  germination,
  low: 0,
  high: 1,
  sown: 50,
  normal: germination * 50,
});

const numbers = (rows: readonly LotRow[]) => rows.map((each) => each.number);
const ask = (query: Record<string, string>) => LotListQuerySchema.parse(query);
const lines = { renewalPlan: 0.7, renewalUrgent: 0.5 };

test("words of a search are found begun and in any order, in names, numbers, holders and notes", () => {
  const rows = [
    row("Q 1", { variety: "Purple Long Podder" }),
    row("Q 2", { otherNames: ["Podded Purple"] }),
    row("Q 3", { notes: "purple pods, from Ansel" }),
    row("Q 4", { variety: "Purple Dell" }),
    row("Q 5", { holder: "Zoë Märkel" }),
  ];
  expect(numbers(findRows(rows, "purp pod").rows)).toEqual(["Q 1", "Q 2", "Q 3"]);
  expect(numbers(findRows(rows, " q 4").rows)).toEqual(["Q 4"]);
  expect(numbers(findRows(rows, "zoe markel").rows)).toEqual(["Q 5"]);
  expect(findRows(rows, "  ").rows).toHaveLength(5);
});

test("a running number begins a word, and the lot of which the whole number was typed stands first", () => {
  const rows = [
    row("Kettle 10", { code: "9X9H29T49" }),
    row("Kettle 90", { holder: "Osk", grams: 20 }),
    row("Kettle 9", { grams: 0 }),
    row("Kettle 19"),
  ];
  const found = findRows(rows, "kettle 9").rows;
  expect(numbers(found)).toEqual(["Kettle 10", "Kettle 90", "Kettle 9"]);
  expect(numbers(namedFirst(sortRows(found, null), "Kettle 9"))).toEqual(["Kettle 9", "Kettle 10", "Kettle 90"]);
  expect(numbers(namedFirst(found, null))).toEqual(numbers(found));
});

test("a slip is forgiven only where nothing is written just so, and said", () => {
  const rows = [row("Q 1", { variety: "Purple Dell" }), row("Q 2", { variety: "Amber Dell" })];
  expect(findRows(rows, "purlpe")).toMatchObject({ near: true, rows: [{ number: "Q 1" }] });
  expect(findRows(rows, "dell")).toMatchObject({ near: false });
  expect(findRows(rows, "xq")).toEqual({ near: false, rows: [] });
});

test("filters join; what is not known can be asked for", () => {
  const rows = [
    row("1", { status: "hold", grams: 0, lastTest: tested(0.4), places: ["Loft"] }),
    row("2", { status: "usable", grams: 20, lastTest: tested(0.6), holderId: "s" }),
    row("3", { grams: 20, lastTest: tested(0.7) }),
    row("4"),
  ];
  const found = (query: Record<string, string>) => numbers(filterRows(rows, ask(query), lines));
  expect(found({ seed: "some" })).toEqual(["2", "3"]);
  expect(found({ seed: "none" })).toEqual(["1"]);
  expect(found({ seed: "unknown" })).toEqual(["4"]);
  expect(found({ test: "below" })).toEqual(["1", "2"]);
  expect(found({ test: "urgent" })).toEqual(["1"]);
  expect(found({ test: "above" })).toEqual(["3"]);
  expect(found({ test: "never" })).toEqual(["4"]);
  expect(found({ status: "unknown" })).toEqual(["3", "4"]);
  expect(found({ holder: "s", seed: "some" })).toEqual(["2"]);
  expect(found({ holder: "unknown", place: "unknown" })).toEqual(["3", "4"]);
});

test("what is not known stands last, up or down", () => {
  const rows = [row("a", { grams: 3 }), row("b"), row("c", { grams: 20 })];
  expect(numbers(sortRows(rows, { key: "grams", down: false }))).toEqual(["a", "c", "b"]);
  expect(numbers(sortRows(rows, { key: "grams", down: true }))).toEqual(["c", "a", "b"]);
});

test("where no order is asked for, what is in the jars stands first, and lots with nothing left last", () => {
  const rows = [
    row("1", { variety: "Amber Dell", grams: 0 }),
    row("2", { variety: "Purple Dell", grams: 5 }),
    row("3", { variety: "Amber Dell", grams: 2 }),
    row("4", { variety: "Amber Dell" }),
    row("5", { variety: "Purple Dell", grams: 0 }),
  ];
  expect(numbers(sortRows(rows, null))).toEqual(["3", "4", "2", "1", "5"]);
  expect(numbers(sortRows(rows, { key: "variety", down: false }))).toEqual(["1", "3", "4", "2", "5"]);
});

test("lot numbers stand in code-point order, a year that is a span at its middle", () => {
  const rows = [
    row("b 2", { year: "198X", yearFirst: "1980-01-01", yearLast: "1989-12-31" }),
    row("B 10", { year: "1984", yearFirst: "1984-01-01", yearLast: "1984-12-31" }),
    row("a", { year: "1986", yearFirst: "1986-01-01", yearLast: "1986-12-31" }),
  ];
  expect(numbers(sortRows(rows, { key: "number", down: false }))).toEqual(["B 10", "a", "b 2"]);
  expect(numbers(sortRows(rows, { key: "year", down: false }))).toEqual(["B 10", "b 2", "a"]);
});
