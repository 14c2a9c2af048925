import { type Selection, sql } from "@/lib/db";
import { intervalOfCounts } from "../germination-tests/interval-of-counts";

/** A germination test of any lot of a variety, all its replicates and days together; exact 95 % interval. */
export interface TestOfVariety {
  readonly id: string;
  readonly name: string;
  readonly lotId: string;
  readonly lot: string;
  readonly on: string;
  readonly onFirst: string;
  readonly onLast: string;
  readonly sown: number;
  readonly normal: number;
  readonly germination: number;
  readonly low: number;
  readonly high: number;
}

type Row = Omit<TestOfVariety, "germination" | "low" | "high" | "sown" | "normal"> & {
  readonly sown: number | null;
  readonly normal: number | null;
};

/** The tests of a variety's lots in the order of their first possible day, with what counts in them. */
export function testsSelection(varietyId: string): Selection<Row> {
  // What was sown is summed by replicate, what came up by count: two sums that may not multiply each other.
  return {
    columns: {
      id: "text",
      name: "text",
      lotId: "text",
      lot: "text",
      on: "text",
      onFirst: "text",
      onLast: "text",
      sown: "number",
      normal: "number",
    },
    rows: sql`
      SELECT t."id", t."name", l."id" AS "lotId", l."number" AS "lot", t."on", t."onFirst", t."onLast",
             (SELECT SUM(r."sown") FROM "TestReplicate" r WHERE r."testId" = t."id" AND EXISTS (
                SELECT 1 FROM "TestCount" k WHERE k."replicateId" = r."id" AND NOT k."takenBack"
                  AND NOT EXISTS (SELECT 1 FROM "TestCount" n WHERE n."replacesId" = k."id"))) AS "sown",
             (SELECT SUM(c."normal") FROM "TestCount" c JOIN "TestReplicate" q ON q."id" = c."replicateId"
                WHERE q."testId" = t."id" AND NOT c."takenBack"
                  AND NOT EXISTS (SELECT 1 FROM "TestCount" m WHERE m."replacesId" = c."id")) AS "normal"
      FROM "GerminationTest" t JOIN "Lot" m ON m."id" = t."lotId" JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")
      WHERE l."varietyId" = ${varietyId}
      ORDER BY t."onFirst", t."id"`,
  };
}

/** Those of them that were counted, with what they say. */
export function testsOfVariety(rows: readonly Row[]): TestOfVariety[] {
  return rows.flatMap((row) => {
    const [sown, normal] = [row.sown ?? 0, row.normal ?? 0];
    if (sown === 0) return [];
    const { low, high } = intervalOfCounts(normal, sown);
    return [{ ...row, sown, normal, germination: normal / sown, low, high }];
  });
}
