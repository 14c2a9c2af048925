import type { Client } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import type { RowOf } from "../change-set/records";
import { type StoredTest, summedUp, type TestOfLot } from "../germination-tests/tests-of-lot";

interface TestSql extends RowOf<"GerminationTest"> {
  readonly replicateId: string;
  readonly replicateName: string;
  readonly sown: number;
  readonly countId: string | null;
  readonly day: number | null;
  readonly normal: number;
  readonly abnormal: number | null;
  readonly hard: number | null;
  readonly fresh: number | null;
  readonly dead: number | null;
  readonly replacesId: string | null;
  readonly takenBack: boolean | number;
  readonly countExtra: string | null;
}

/** The germination tests of a lot, summed up, in the order of their first possible day, then of entry. One statement. */
export async function readTests(db: Client, lotId: string): Promise<TestOfLot[]> {
  const rows = await db.$queryRaw<TestSql[]>`
    SELECT t.*, r."id" AS "replicateId", r."name" AS "replicateName", r."sown", c."id" AS "countId", c."day", c."normal", c."abnormal", c."hard",
      c."fresh", c."dead", c."replacesId", c."takenBack", c."extra" AS "countExtra"
    FROM "GerminationTest" t JOIN "TestReplicate" r ON r."testId" = t."id" LEFT JOIN "TestCount" c ON c."replicateId" = r."id"
    WHERE t."lotId" = ${lotId} ORDER BY t."onFirst", t."id", r."id", c."id"`;
  return [...grouped(rows, (row) => row.id).values()].flatMap(testOf);
}

function testOf(rows: readonly TestSql[]): TestOfLot[] {
  const [test] = rows;
  if (!test) return [];
  const replicates = [...grouped(rows, (row) => row.replicateId).values()].flatMap(replicateOf);
  return [summedUp({ ...test, replicates })];
}

function replicateOf(rows: readonly TestSql[]): StoredTest["replicates"] {
  const [first] = rows;
  if (!first) return [];
  const counts = rows.flatMap((row) => (row.countId === null ? [] : [countOf(row, row.countId)]));
  return [{ id: first.replicateId, testId: first.id, name: first.replicateName, sown: first.sown, counts }];
}

function countOf(row: TestSql, id: string): StoredTest["replicates"][number]["counts"][number] {
  const { replicateId, day, normal, abnormal, hard, fresh, dead, replacesId } = row;
  const counted = { id, replicateId, day, normal, abnormal, hard, fresh, dead, replacesId };
  return { ...counted, takenBack: Boolean(row.takenBack), extra: row.countExtra };
}
