import { type Database, readRows, type Selection, sql } from "@/lib/db";
import {
  type TestRow,
  testRowColumns,
  testRowFields,
  testRowTables,
  testsOfRows,
} from "../germination-tests/test-rows";
import { summedUp, type TestOfLot } from "../germination-tests/tests-of-lot";
import { recordsOfLot } from "./same-lot";

/** The germination tests of a lot, in the order of their first possible day, then of entry. */
export function testsOfLot(lotId: string): Selection<TestRow> {
  return {
    columns: testRowColumns,
    rows: sql`
      SELECT ${testRowFields} FROM ${testRowTables}
      WHERE t."lotId" IN ${recordsOfLot(lotId)} ORDER BY t."onFirst", t."id", r."id", c."id"`,
  };
}

/** Tests summed up. */
export function testsSummedUp(rows: readonly TestRow[]): TestOfLot[] {
  return testsOfRows(rows).map(({ test }) => summedUp(test));
}

/** The germination tests of a lot, summed up. One statement. */
export async function readTests(db: Database, lotId: string): Promise<TestOfLot[]> {
  return testsSummedUp(await readRows(db, testsOfLot(lotId)));
}
