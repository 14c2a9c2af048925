import { expect, test } from "vitest";
import { references, rowCounts } from "@/lib/db";
import { nounOf } from "@/lib/registry/change-set/name-of-record";
import type { TableName } from "@/lib/registry/change-set/records";
import { followsFromOthers } from "@/lib/registry/history/fields-changed";
import { pointsToRecord } from "@/lib/registry/history/names-of-ids";
import { withoutHistory } from "@/lib/registry/safe-keeping/verify/check-history";
import { emptyRegistry } from "@/tests/setup/registry";

async function tablesWithHistory(): Promise<string[]> {
  const tables = Object.keys(await rowCounts(await emptyRegistry()));
  return tables.filter((table) => !withoutHistory.has(table) && table !== "ChangeSet" && table !== "Change");
}

test("a row of every table is called in the history by a word that people use", async () => {
  const tables = await tablesWithHistory();
  expect(tables.length).toBeGreaterThan(40);
  const manyWords = tables.filter((table) => /[a-z][A-Z]/.test(table));
  expect(manyWords.filter((table) => nounOf(table as TableName) === table.toLowerCase())).toEqual([]);
});

test("a field that points to another record is told by that record's name, not by its id", async () => {
  const db = await emptyRegistry();
  const tables = new Set(await tablesWithHistory());
  const bare = (await references(db.read, db.engine)).filter(
    ({ table, column }) =>
      tables.has(table) && column !== "changeSetId" && !pointsToRecord(column) && !followsFromOthers(column, {}),
  );
  expect(bare).toEqual([]);
});
