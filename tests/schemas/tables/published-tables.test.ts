import { describe, expect, it } from "vitest";
import { ownValuesInWords } from "@/lib/display/own-values";
import { calculationNamed } from "@/lib/schemas/calculations";
import { publishedTable, publishedTables, rowsOfCrop } from "@/lib/schemas/tables/published-tables";
import cropList from "@/lib/science/crops/crops.json";
import { germinationConditions } from "@/lib/science/germination/germination-conditions";
import { vegetableMinimum } from "@/lib/science/germination/vegetable-minimum";
import { pollenModelOf } from "@/lib/science/isolation/pollen-models";

const own = (table: string, row: string, field: string, value: number | string) => ({
  table,
  row,
  field,
  value,
  reason: "a cold house",
  source: null,
});

describe("the published tables", () => {
  it.each(publishedTables.map((table) => [table.key, table] as const))(
    "%s: each row once, each value within its range",
    (_key, table) => {
      expect(new Set(table.rows.map(({ key }) => key)).size).toBe(table.rows.length);
      expect(table.method === null || calculationNamed(table.method)).toBeTruthy();
      for (const row of table.rows) {
        expect(row.source).not.toBe("");
        for (const { key, kind, least, most, notBelow, written } of table.fields) {
          const value = row.values[key];
          if (value == null) continue;
          if (kind === "words") expect(written?.as.test(String(value)), `${row.key} ${key}`).not.toBe(false);
          else {
            expect(value, `${row.key} ${key}`).toBeGreaterThanOrEqual(least ?? Number.NEGATIVE_INFINITY);
            expect(value).toBeLessThanOrEqual(most ?? Number.POSITIVE_INFINITY);
            if (notBelow)
              expect(value).toBeGreaterThanOrEqual(Number(row.values[notBelow] ?? Number.NEGATIVE_INFINITY));
          }
        }
      }
    },
  );

  it("names crops that are in the crop list", () => {
    const known = new Set(cropList.map(({ key }) => key));
    const named = publishedTables.flatMap(({ rows }) => rows.flatMap(({ crops }) => crops ?? []));
    expect(named.filter((key) => !known.has(key))).toEqual([]);
  });

  it("finds the rows of a crop by its key, or by genus and species", () => {
    const names = (table: string, key: string, latinName: string | null) =>
      rowsOfCrop(publishedTable(table) as never, { key, latinName }).map((row) => row.name);
    expect(names("vegetable-minima", "pea", "Pisum sativum")).toEqual(["Pea"]);
    expect(names("viability-constants", "maize-pop", "Zea mays subsp. mays (everta types)")).toEqual(["Maize"]);
    expect(names("oil-content", "kale", "Brassica oleracea (Acephala group)")).toEqual(["Cabbage group"]);
    expect(names("oil-content", "own-thing", null)).toEqual([]);
  });

  it("keeps no constants that were not checked in their source", () => {
    const rows = publishedTable("viability-constants")?.rows ?? [];
    expect(rows).toHaveLength(12);
    expect(rows.every(({ mark }) => mark === "verified")).toBe(true);
  });
});

describe("a steward's own value", () => {
  it("stands in the table's place, and is told with what it stands for", () => {
    expect(vegetableMinimum("beet")).toMatchObject({ minimum: 0.65, own: [] });
    const minimum = vegetableMinimum("beet", [own("vegetable-minima", "Beet", "minimumPercent", 60)]);
    expect(minimum?.minimum).toBe(0.6);
    expect(ownValuesInWords(minimum?.own ?? [])).toEqual([
      "Least germination is your own value, 60 % in place of 65 %: a cold house.",
    ]);
  });

  it("moves only its own row and field", () => {
    const values = [
      own("vegetable-minima", "Pea", "minimumPercent", 10),
      own("germination-conditions", "Beet", "finalCountDay", 21),
    ];
    expect(vegetableMinimum("beet", values)?.minimum).toBe(0.65);
    const published = germinationConditions("beet");
    expect(germinationConditions("beet", values)).toMatchObject({
      finalCountDay: 21,
      firstCountDay: published?.firstCountDay,
      temperatureC: published?.temperatureC,
    });
  });

  it("goes into the kernel and into the curve of a crop's pollen", () => {
    const kernel = pollenModelOf("maize-sweet", [own("pollen-models", "maize-2dt", "a", 2)]);
    expect(kernel).toMatchObject({ kernel: { model: "2dt", a: 2, b: 1.45 }, beyondMetres: 150 });
    const curve = pollenModelOf("bean-broad", [own("pollen-models", "faba-bean-line", "beyondMetres", 300)]);
    expect(curve).toMatchObject({ curve: { a: 0.1628, b: -0.6067, cap: 0.5 }, fromMetres: 0.9, beyondMetres: 300 });
  });
});
