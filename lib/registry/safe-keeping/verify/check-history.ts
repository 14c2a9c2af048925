import { type Database, placeholders } from "@/lib/db";
import { grouped } from "../../change-set/grouped";
import { delegateOf, type TableName } from "../../change-set/records";
import { erasedMark } from "../../stewards/without-name";
import { type Finding, fault } from "./finding";

/** Tables that others than the registry's operations write; they have no history. */
export const withoutHistory: ReadonlySet<string> = new Set([
  "User",
  "Session",
  "Account",
  "Verification",
  "Passkey",
  "RateLimit",
]);

const changesAtOnce = 3000;

interface LastChange {
  readonly recordId: string;
  readonly tableName: string;
  readonly action: string;
  readonly after: string | null;
}

/**
 * History: change sets follow each other without a gap, none lost one of its changes, and every record is as its last change left it. So half a change,
 * or one that went round the history, shows.
 */
export async function checkHistory(db: Database): Promise<{ looked: number; findings: Finding[] }> {
  const findings = [...(await setFindings(db))];
  let looked = 0;
  let after = "";
  for (;;) {
    const page = await changesAfter(db, after);
    if (page.length === 0) return { looked, findings };
    findings.push(...(await recordFindings(db, lastOfEach(page))));
    looked += page.length;
    after = page.at(-1)?.recordId ?? after;
  }
}

async function setFindings(db: Database): Promise<Finding[]> {
  const sets = await db.read.$queryRawUnsafe<
    { number: number | bigint; title: string; n: number | bigint; last: number | bigint | null }[]
  >(
    `SELECT s."number", s."title", COUNT(c."id") AS n, MAX(c."position") AS last FROM "ChangeSet" s LEFT JOIN "Change" c ON c."changeSetId" = s."id"
     GROUP BY s."id", s."number", s."title" ORDER BY s."number"`,
  );
  return sets.flatMap((set, place) => {
    const before = Number(sets[place - 1]?.number ?? 0);
    const number = Number(set.number);
    const gap =
      number === before + 1 ? [] : [fault("history", `Between change ${before} and ${number} the history has a gap.`)];
    const whole = Number(set.n) > 0 && Number(set.n) === Number(set.last) + 1;
    return whole ? gap : [...gap, fault("history", `Change ${number} ("${set.title}") lost a part of what it noted.`)];
  });
}

/** Changes of whole records, in the order of the records' ids, from the first after `after`. */
async function changesAfter(db: Database, after: string): Promise<LastChange[]> {
  const select = `SELECT c."recordId", c."tableName", c."action", c."after" FROM "Change" c JOIN "ChangeSet" s ON s."id" = c."changeSetId"`;
  const order = `ORDER BY c."recordId", s."number", c."position"`;
  const [mark] = placeholders(db.engine, 1).split(", ");
  const page = await db.read.$queryRawUnsafe<LastChange[]>(
    `${select} WHERE c."recordId" > ${mark} ${order} LIMIT ${changesAtOnce}`,
    after,
  );
  if (page.length < changesAtOnce) return page;
  // The last record may have more changes than came: it goes onto the next page, unless the page is all its own.
  const last = page.at(-1)?.recordId;
  const whole = page.filter((change) => change.recordId !== last);
  return whole.length > 0
    ? whole
    : db.read.$queryRawUnsafe<LastChange[]>(`${select} WHERE c."recordId" = ${mark} ${order}`, last);
}

function lastOfEach(changes: readonly LastChange[]): LastChange[] {
  return [...new Map(changes.map((change) => [`${change.tableName} ${change.recordId}`, change])).values()];
}

async function recordFindings(db: Database, changes: readonly LastChange[]): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const [table, own] of grouped(changes, (change) => change.tableName)) {
    const rows = new Map<string, Record<string, unknown>>();
    for (let start = 0; start < own.length; start += 500) {
      const ids = own.slice(start, start + 500).map((change) => change.recordId);
      const found = await delegateOf(db.read, table as TableName).findMany({ where: { id: { in: ids } } });
      for (const row of found) rows.set(row.id, row);
    }
    for (const change of own) findings.push(...recordFinding(change, rows.get(change.recordId)));
  }
  return findings;
}

function recordFinding(
  { tableName, recordId, action, after }: LastChange,
  row: Record<string, unknown> | undefined,
): Finding[] {
  const record = `${tableName} ${recordId}`;
  if (action === "remove")
    return row ? [fault("history", `${record} was removed by the history, but stands in its table.`)] : [];
  if (!row) return [fault("history", `${record} stands in the history, but not in its table.`)];
  const noted = notedIn(after);
  if (noted === null) return [fault("history", `${record}: what its last change noted cannot be read any more.`)];
  // A column that this release no longer has cannot be compared, nor a text out of which the history forgot a name; the figures' revision goes
  // on without a change of the record.
  const other = Object.keys(noted).filter(
    (field) =>
      field !== "revision" &&
      field in row &&
      (row[field] ?? null) !== (noted[field] ?? null) &&
      !String(noted[field] ?? "").includes(erasedMark),
  );
  return other.length === 0
    ? []
    : [
        fault(
          "history",
          `${record}: ${other.join(", ")} ${other.length === 1 ? "is" : "are"} not as the last change left ${other.length === 1 ? "it" : "them"}.`,
        ),
      ];
}

/** A note of the history; null where its bytes changed since. */
function notedIn(text: string | null): Record<string, unknown> | null {
  try {
    return JSON.parse(text ?? "{}") as Record<string, unknown>;
  } catch {
    return null;
  }
}

/** Records that stand in their table without the history knowing them. */
export async function checkUnrecorded(db: Database, tables: readonly string[]): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const table of tables) {
    if (withoutHistory.has(table) || table === "ChangeSet" || table === "Change") continue;
    const [row] = await db.read.$queryRawUnsafe<{ n: number | bigint }[]>(
      `SELECT COUNT(*) AS n FROM "${table}" t WHERE NOT EXISTS (SELECT 1 FROM "Change" c WHERE c."recordId" = t."id" AND c."tableName" = '${table}')`,
    );
    const count = Number(row?.n ?? 0);
    if (count > 0)
      findings.push(fault("history", `${count} of ${table} stand in their table, but not in the history.`));
  }
  return findings;
}
