import { expect, test } from "vitest";
import { columns, lotCells } from "@/app/lots/_list/lot-cells";
import { seedsInWords, seedsSpan } from "@/app/lots/_words/seeds-in-words";
import { metricUnits } from "@/lib/display/units";
import type { LotRow } from "@/lib/registry/lots/lot-row";
import { lotColumns, usualColumns } from "@/lib/schemas/lots/list-query";

const row = (more: Partial<LotRow> = {}): LotRow => ({
  id: "id",
  number: "Ham 3",
  code: "7KQ2M9XA4",
  kind: "founder",
  varietyId: "v",
  variety: "Hamble Long",
  otherNames: [],
  otherNumbers: [],
  otherCodes: [],
  seedCoat: null,
  cropKey: "bean-broad",
  crop: "Broad bean",
  holderId: null,
  holder: null,
  year: null,
  yearFirst: null,
  yearLast: null,
  status: null,
  treatment: null,
  notes: null,
  places: [],
  grams: 200,
  thousandSeedGrams: 500,
  live: { value: 360, low: 273.2, high: 395.1, grade: "counted" },
  lastTest: { testId: "t", test: "T", date: "2020", germination: 0.9, low: 0.683, high: 0.988, sown: 20, normal: 18 },
  usualLifeYears: 4,
  diversityRetained: null,
  diversitySpan: null,
  generations: null,
  standing: "plants not known",
  ...more,
});

const reading = { renewal: 0.7, units: metricUnits, today: "2022-06-01" };

test("every column of the list has its cell", () => {
  expect(columns.map((column) => column.key)).toEqual([...lotColumns]);
  expect(columns.filter((column) => !column.apart).map((column) => column.key)).toEqual([...usualColumns]);
  expect(Object.keys(lotCells(row(), reading).cells)).toEqual([...lotColumns]);
});

test("living seeds are counted while the test is fresh, and assumed once it is older than the seed usually lives", () => {
  expect(lotCells(row(), reading).cells.live).toMatchObject({ words: "273–396", grade: "counted" });
  expect(lotCells(row(), { ...reading, today: "2026-06-01" }).cells.live).toMatchObject({ grade: "assumed" });
});

test("a share just below the line is not rounded onto it", () => {
  const lastTest = {
    testId: "t",
    test: "T",
    date: "2020",
    germination: 0.697,
    low: 0,
    high: 1,
    sown: 330,
    normal: 230,
  };
  expect(lotCells(row({ lastTest }), reading).cells.test).toMatchObject({ figure: "69.7\u00a0%" });
});

test("what nobody knows is unknown; what has no such figure says nothing", () => {
  const { cells } = lotCells(row({ grams: null, live: null, lastTest: null }), reading);
  expect([cells.grams, cells.live, cells.test, cells.diversity, cells.holder]).toEqual([null, null, null, null, null]);
  expect(lotCells(row({ standing: "clonal" }), reading).cells.diversity).toBe("");
  expect(lotCells(row({ standing: "uniform" }), reading).cells.diversity).toBe("uniform");
});

test("seeds are named with both ends, and an empty jar as such", () => {
  const words = (count: Parameters<typeof seedsInWords>[0]) => seedsInWords(count).replaceAll("\u00a0", " ");
  expect(words({ value: 360, low: 273.2, high: 395.1, grade: "counted" })).toBe("about 360 seeds, 273–396");
  expect(words({ value: 400, low: 400, high: 400, grade: "counted" })).toBe("about 400 seeds");
  expect(words({ value: null, low: 100, high: 400, grade: "assumed" })).toBe("100–400 seeds");
  expect(seedsInWords({ value: 0, low: 0, high: 0, grade: "counted" })).toBe("no seed");
  expect(seedsInWords(null)).toBe("unknown");
  expect(seedsSpan({ value: 0, low: 0, high: 0, grade: "counted" })).toBe("0");
});
