import { type Database, joined, readRows, type Selection, sql } from "@/lib/db";
import { type TestRow, testRowColumns, testRowFields, testRowTables, testsOfRows } from "./test-rows";
import { summedUp, type TestOfLot } from "./tests-of-lot";

/** A test in a list, with the lot, variety and crop it belongs to. */
export interface ListedTest extends TestOfLot {
  readonly note: string | null;
  readonly lot: { readonly id: string; readonly number: string };
  readonly variety: { readonly id: string; readonly name: string; readonly seedCoat: string | null };
  readonly crop: { readonly key: string; readonly name: string };
}

interface ListedRow extends TestRow {
  /** a test stays with its record; the lot it is of is read as one */
  readonly leadingLotId: string;
  readonly lot: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly crop: string;
}

/** Tests with these ids, or all, summed up, with what they belong to; by id. One statement. */
export async function listedTests(db: Database, ids: readonly string[] | null): Promise<Map<string, ListedTest>> {
  if (ids?.length === 0) return new Map();
  const these = ids === null ? sql`` : sql`WHERE t."id" IN (${joined([...ids])})`;
  const selection: Selection<ListedRow> = {
    columns: {
      ...testRowColumns,
      leadingLotId: "text",
      lot: "text",
      varietyId: "text",
      variety: "text",
      seedCoat: "text",
      cropKey: "text",
      crop: "text",
    },
    rows: sql`
      SELECT ${testRowFields}, l."id" AS "leadingLotId", l."number" AS "lot", v."id" AS "varietyId", v."name" AS "variety", v."seedCoat", k."key" AS "cropKey",
        k."commonName" AS "crop"
      FROM ${testRowTables} JOIN "Lot" m ON m."id" = t."lotId"
        JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" k ON k."id" = v."cropId"
      ${these} ORDER BY t."id", r."id", c."id"`,
  };
  const listed = testsOfRows(await readRows(db, selection)).map(({ row, test }): [string, ListedTest] => [
    row.id,
    {
      ...summedUp(test),
      note: row.note,
      lot: { id: row.leadingLotId, number: row.lot },
      variety: { id: row.varietyId, name: row.variety, seedCoat: row.seedCoat },
      crop: { key: row.cropKey, name: row.crop },
    },
  ]);
  return new Map(listed);
}
