import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { lotsCsv, lotsTableSchema } from "@/app/lots/export/lots-csv";
import type { LotRow } from "@/lib/registry/lots/lot-row";

const row = (more: Partial<LotRow> = {}): LotRow => ({
  id: "id",
  number: "007",
  code: "7KQ2M9XA4",
  kind: "founder",
  varietyId: "v",
  variety: "MAR1",
  otherNames: [],
  otherNumbers: [],
  otherCodes: [],
  seedCoat: null,
  cropKey: "pea",
  crop: "Pea",
  holderId: null,
  holder: null,
  year: "1991~",
  yearFirst: "1991-01-01",
  yearLast: "1991-12-31",
  status: null,
  treatment: null,
  notes: null,
  places: ["Loft", "Cellar"],
  grams: null,
  thousandSeedGrams: null,
  live: null,
  lastTest: null,
  usualLifeYears: null,
  diversityRetained: 0.9,
  diversitySpan: null,
  generations: 3,
  standing: "lines not known",
  ...more,
});

const read = (text: string) => parse(text, { columns: true }) as Record<string, string>[];

test("units stand in the heads, numbers are plain, and what is not known is empty", () => {
  const [line] = read(lotsCsv([row({ grams: 1234.5 }), row()], ["number", "grams", "year"]));
  expect(line).toEqual({ lot: "007", on_hand_g: "1234.5", harvest_year: "1991~" });
  expect(read(lotsCsv([row()], ["grams"]))[0]).toEqual({ on_hand_g: "" });
});

test("text stays text: numbers that look like dates or sums come back as written", () => {
  for (const number of ["007", "3-4", "1E5", "MAR1", "a, b", 'he said "no"']) {
    expect(read(lotsCsv([row({ number })], ["number"]))[0]?.lot).toBe(number);
  }
  expect(lotsCsv([row({ notes: "=SUM(A1)" })], ["notes"])).toContain("'=SUM(A1)");
});

test("a share of diversity that says nothing is left out, and why stands beside it", () => {
  expect(read(lotsCsv([row()], ["diversity"]))[0]).toEqual({
    ...{ diversity_kept_share: "", diversity_kept_low_share: "", diversity_kept_high_share: "" },
    lineage: "lines not known",
  });
  const span = row({ standing: "plants not known", diversityRetained: null, diversitySpan: { low: 0.48, high: 0.95 } });
  expect(read(lotsCsv([span], ["diversity"]))[0]).toEqual({
    ...{ diversity_kept_share: "", diversity_kept_low_share: "0.48", diversity_kept_high_share: "0.95" },
    lineage: "plants not known",
  });
  expect(read(lotsCsv([row({ standing: "counted" })], ["diversity"]))[0]?.diversity_kept_share).toBe("0.9");
});

test("lines end as RFC 4180 says", () => {
  expect(lotsCsv([row()], ["number"])).toBe("lot\r\n007\r\n");
});

test("the schema file names every column of the file in its order", () => {
  const chosen = ["number", "live", "test"] as const;
  const [head = ""] = lotsCsv([], chosen).split("\r\n");
  expect(lotsTableSchema(chosen).fields.map((field) => field.name)).toEqual(head.split(","));
});
