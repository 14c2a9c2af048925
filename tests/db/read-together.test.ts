import { uuidv7 } from "uuidv7";
import { expect, it } from "vitest";
import {
  type Database,
  type Gathered,
  insertRows,
  joined,
  readRows,
  readTogether,
  type Selection,
  sql,
} from "@/lib/db";
import { onEveryEngine } from "@/tests/setup/engines";

interface Kept {
  readonly id: string;
  readonly name: string;
  readonly note: string | null;
  readonly taste: number | null;
  readonly clonal: boolean | null;
}

/** Values that are easily lost on the way: the last digit, the sign of what is small, quotes, line ends, letters outside the first plane. */
const decimals = [0.1 + 0.2, 1 / 3, -1e-9, 5e-324, 1.7976931348623157e308, 123456.789, 400, 0];
const texts = ['she said "no" \\ 1', "line\nand\ttab", "Erbse – žluťoučký", "🌽 豆 \u0001", "", "null", "{}"];

const kept = (rows: readonly Kept[]): Selection<Kept> => ({
  columns: { id: "text", name: "text", note: "text", taste: "number", clonal: "flag" },
  rows: joined(
    rows.map(
      (row) =>
        sql`SELECT CAST(${row.id} AS TEXT) AS "id", CAST(${row.name} AS TEXT) AS "name", CAST(${row.note} AS TEXT) AS "note",
          CAST(${row.taste} AS DOUBLE PRECISION) AS "taste", CAST(${row.clonal} AS BOOLEAN) AS "clonal"`,
    ),
    " UNION ALL ",
  ),
});

async function withStewards(db: Database, count: number): Promise<string[]> {
  const ids = Array.from({ length: count }, () => uuidv7());
  await insertRows(
    db.write,
    db.engine,
    "Steward",
    ids.map((id, place) => ({ id, place: `Row ${place}`, kind: "grower" })),
  );
  return ids;
}

const stewards = (from: string | null): Selection<{ id: string; place: string | null }> => ({
  columns: { id: "text", place: "text" },
  rows: sql`SELECT s."id", s."place" FROM "Steward" s WHERE s."id" > ${from ?? ""} ORDER BY s."id" DESC`,
});

onEveryEngine(
  "SELECTs sent together",
  (fresh) => {
    it("give back decimals to the last digit, every letter, flags and what is unknown", async () => {
      const rows = [
        ...decimals.map((taste) => ({ id: "d", name: "a", note: null, taste, clonal: true })),
        ...texts.map((note) => ({ id: "t", name: note, note, taste: null, clonal: false })),
        { id: "n", name: "b", note: null, taste: null, clonal: null },
      ];
      expect(await readRows(await fresh(), kept(rows))).toEqual(rows);
    });

    it("keep the order that each asks for, and its own arguments, over thousands of rows", async () => {
      const db = await fresh();
      const ids = await withStewards(db, 3000);
      const middle = ids[1499] as string;
      const found = await readTogether(db, { all: stewards(null), later: stewards(middle), none: stewards("zzz") });
      expect(found.all.map((row) => row.id)).toEqual([...ids].reverse());
      expect(found.later.map((row) => row.id)).toEqual(ids.slice(1500).reverse());
      expect(found.all[0]).toEqual({ id: ids[2999], place: "Row 2999" });
      expect(found.none).toEqual([]);
    });

    it("come under the value that they share, those of one in order, and none under none", async () => {
      const db = await fresh();
      const rows = [
        ["b", 'the "second"', 2],
        ["a", "the only", 1],
        ["b", "the first", 1],
      ] as const;
      const under = (
        given: readonly (readonly [string, string, number])[],
      ): Gathered<{ name: string; place: number }> => ({
        columns: { name: "text", place: "number" },
        under: "letter",
        by: "place",
        rows: sql`SELECT * FROM (${joined(
          given.map(
            ([letter, name, place]) =>
              sql`SELECT CAST(${letter} AS TEXT) AS "letter", CAST(${name} AS TEXT) AS "name", CAST(${place} AS INTEGER) AS "place"`,
          ),
          " UNION ALL ",
        )}) given WHERE "place" < 9`,
      });
      const { all, none } = await readTogether(db, { all: under(rows), none: under([["c", "left out", 9]]) });
      expect(all.get("a")).toEqual([{ name: "the only", place: 1 }]);
      expect(all.get("b")).toEqual([
        { name: "the first", place: 1 },
        { name: 'the "second"', place: 2 },
      ]);
      expect([all.size, none.size]).toEqual([2, 0]);
    });

    it("count and sum in plain numbers, and read a stored flag as one", async () => {
      const db = await fresh();
      await withStewards(db, 7);
      const sums: Selection<{ many: number; sum: number | null }> = {
        columns: { many: "number", sum: "number" },
        rows: sql`SELECT COUNT(*) AS "many", SUM(CASE WHEN s."place" IS NULL THEN 1 ELSE 2 END) AS "sum" FROM "Steward" s`,
      };
      const crops: Selection<{ key: string; clonal: boolean; plantsMin: number | null }> = {
        columns: { key: "text", clonal: "flag", plantsMin: "number" },
        rows: sql`SELECT c."key", c."clonal", c."plantsMin" FROM "Crop" c ORDER BY c."key"`,
      };
      const found = await readTogether(db, { sums, crops });
      expect(found.sums).toEqual([{ many: 7, sum: 14 }]);
      const stored = await db.read.crop.findMany({ select: { key: true, clonal: true, plantsMin: true } });
      expect(found.crops).toEqual(stored.sort((a, b) => (a.key < b.key ? -1 : 1)));
      expect(found.crops.some((crop) => crop.clonal)).toBe(true);
    });

    it("are refused by the database where a column is not there", async () => {
      const db = await fresh();
      const lost: Selection<{ nowhere: string }> = {
        columns: { nowhere: "text" },
        rows: sql`SELECT s."id" FROM "Steward" s`,
      };
      await expect(readRows(db, lost)).rejects.toThrow();
    });
  },
  { everyServer: true },
);
