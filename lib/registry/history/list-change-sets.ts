import type { Database } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { nounOf } from "../change-set/name-of-record";
import type { TableName } from "../change-set/records";
import { foldWords } from "../search/fold-words";

/** What is looked for in the history. Days are civil days of the one who wrote. */
export interface HistoryFilter {
  readonly words?: string;
  readonly kind?: string;
  readonly from?: string;
  readonly to?: string;
}

/** How many records of one noun a change set made, changed or removed. */
export interface ChangeCount {
  readonly noun: string;
  readonly action: "create" | "update" | "remove";
  readonly count: number;
}

export interface ChangeSetInList {
  readonly id: string;
  readonly number: number;
  readonly at: string;
  /** the civil day and the time of the clock of the one who wrote */
  readonly day: string;
  readonly time: string;
  readonly kind: string;
  readonly title: string;
  readonly reason: string | null;
  readonly actor: string;
  /** number of the change set that took this one back, and of the one that this one takes back */
  readonly undoneBy: number | null;
  readonly undoes: number | null;
  readonly counts: readonly ChangeCount[];
}

export interface HistoryPage {
  readonly sets: readonly ChangeSetInList[];
  /** how many fit the filter */
  readonly total: number;
}

/** Change sets on one part of the history. */
export const historyPart = 50;

/** The change sets that fit, newest first, `page` by fifties from 0; all of them where page is null. */
export async function listChangeSets(
  db: Database,
  filter: HistoryFilter = {},
  page: number | null = 0,
): Promise<HistoryPage> {
  const rows = await db.read.changeSet.findMany({ orderBy: { number: "desc" } });
  const numbers = new Map(rows.map((row) => [row.id, row.number]));
  const undoneBy = new Map(rows.flatMap((row) => (row.undoesId === null ? [] : [[row.undoesId, row.number]])));
  const wanted = foldWords(filter.words ?? "");
  const fitting = rows
    .map((row) => ({ ...row, ...clockOf(row.at, row.atOffset) }))
    .filter((row) => !filter.kind || row.kind === filter.kind)
    .filter((row) => !filter.from || row.day >= filter.from)
    .filter((row) => !filter.to || row.day <= filter.to)
    .filter((row) => foldWords(`${row.title} ${row.reason ?? ""} ${row.actor}`).includes(wanted));
  const shown = page === null ? fitting : fitting.slice(page * historyPart, (page + 1) * historyPart);
  const counts = await countsOf(
    db,
    shown.map((row) => row.id),
  );
  return {
    total: fitting.length,
    sets: shown.map((row) => ({
      id: row.id,
      number: row.number,
      at: row.at,
      day: row.day,
      time: row.time,
      kind: row.kind,
      title: row.title,
      reason: row.reason,
      actor: row.actor,
      undoneBy: undoneBy.get(row.id) ?? null,
      undoes: row.undoesId === null ? null : (numbers.get(row.undoesId) ?? null),
      counts: counts.get(row.id) ?? [],
    })),
  };
}

/** The civil day and time of an instant on a clock that is `offsetMinutes` ahead of UTC. */
export function clockOf(at: string, offsetMinutes: number): { day: string; time: string } {
  const there = new Date(Date.parse(at) + offsetMinutes * 60_000).toISOString();
  return { day: there.slice(0, 10), time: there.slice(11, 16) };
}

/** What each change set made, changed and removed, counted by noun. One statement for each five hundred sets. */
export async function countsOf(db: Database, ids: readonly string[]): Promise<Map<string, ChangeCount[]>> {
  const counts = new Map<string, ChangeCount[]>();
  for (let start = 0; start < ids.length; start += 500) {
    const rows = await db.read.change.groupBy({
      by: ["changeSetId", "tableName", "action"],
      where: { changeSetId: { in: ids.slice(start, start + 500) } },
      _count: true,
    });
    for (const [id, own] of grouped(rows, (row) => row.changeSetId)) {
      counts.set(id, countedByNoun(own.map((row) => ({ ...row, count: row._count }))));
    }
  }
  return counts;
}

/** The records that a person looks for first stand first in a count. */
const first = ["variety", "lot", "grow-out", "germination test", "steward", "ledger entry"];

/** Tables that are one noun to a person (a steward and the name apart) are counted once. */
function countedByNoun(rows: readonly { tableName: string; action: string; count: number }[]): ChangeCount[] {
  const counts = new Map<string, ChangeCount>();
  for (const { tableName, action, count } of rows) {
    const noun = nounOf(tableName as TableName);
    const before = counts.get(`${action} ${noun}`)?.count ?? 0;
    counts.set(`${action} ${noun}`, { noun, action: action as ChangeCount["action"], count: Math.max(before, count) });
  }
  const place = (noun: string) => (first.includes(noun) ? first.indexOf(noun) : first.length);
  return [...counts.values()].sort(
    (a, b) =>
      place(a.noun) - place(b.noun) || (a.noun < b.noun ? -1 : a.noun > b.noun ? 1 : a.action < b.action ? -1 : 1),
  );
}
