import { type Sql, sql } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import type { RowOf } from "../change-set/records";
import type { StoredTest } from "./tests-of-lot";

/** A count with the replicate and the test that it belongs to; a replicate that was not counted yet is one row without a count. */
export interface TestRow extends RowOf<"GerminationTest"> {
  readonly replicateId: string;
  readonly replicateName: string;
  readonly sown: number;
  readonly countId: string | null;
  readonly day: number | null;
  readonly normal: number | null;
  readonly abnormal: number | null;
  readonly hard: number | null;
  readonly fresh: number | null;
  readonly dead: number | null;
  readonly replacesId: string | null;
  readonly takenBack: boolean | null;
  readonly countExtra: string | null;
}

/** The columns of such rows, for a selection. */
export const testRowColumns = {
  id: "text",
  name: "text",
  nameKey: "text",
  lotId: "text",
  on: "text",
  onFirst: "text",
  onLast: "text",
  basis: "text",
  method: "text",
  temperature: "text",
  preTreatment: "text",
  finalCountDay: "number",
  note: "text",
  extra: "text",
  replicateId: "text",
  replicateName: "text",
  sown: "number",
  countId: "text",
  day: "number",
  normal: "number",
  abnormal: "number",
  hard: "number",
  fresh: "number",
  dead: "number",
  replacesId: "text",
  takenBack: "flag",
  countExtra: "text",
} as const;

/** What such rows select, of tests t with their replicates r and counts c. */
export const testRowFields: Sql = sql`
  t.*, r."id" AS "replicateId", r."name" AS "replicateName", r."sown", c."id" AS "countId", c."day", c."normal", c."abnormal", c."hard",
  c."fresh", c."dead", c."replacesId", c."takenBack", c."extra" AS "countExtra"`;

/** Where they come from; order them by test, replicate and count. */
export const testRowTables: Sql = sql`
  "GerminationTest" t JOIN "TestReplicate" r ON r."testId" = t."id" LEFT JOIN "TestCount" c ON c."replicateId" = r."id"`;

/** The tests of such rows, in their order. */
export function testsOfRows<R extends TestRow>(rows: readonly R[]): { row: R; test: StoredTest }[] {
  return [...grouped(rows, (row) => row.id).values()].flatMap((own) => {
    const [row] = own;
    return row ? [{ row, test: { ...row, replicates: replicatesOf(own) } }] : [];
  });
}

function replicatesOf(rows: readonly TestRow[]): StoredTest["replicates"] {
  return [...grouped(rows, (row) => row.replicateId).values()].flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const counts = own.flatMap((row) => (row.countId === null ? [] : [countOf(row, row.countId)]));
    return [{ id: first.replicateId, testId: first.id, name: first.replicateName, sown: first.sown, counts }];
  });
}

function countOf(row: TestRow, id: string): StoredTest["replicates"][number]["counts"][number] {
  const { replicateId, day, abnormal, hard, fresh, dead, replacesId, countExtra } = row;
  const taken = { normal: row.normal ?? 0, takenBack: row.takenBack ?? false };
  return { id, replicateId, day, abnormal, hard, fresh, dead, replacesId, extra: countExtra, ...taken };
}
