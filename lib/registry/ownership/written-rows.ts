import type { TableName } from "../change-set/records";
import type { Noted } from "../change-set/writer";
import type { Row } from "./rows-at-hand";

/** What a change set did to one record, all its notes together. */
export interface Written {
  readonly table: TableName;
  readonly id: string;
  /** added: it did not stand before; removed: it stands no more; both stand apart from changed */
  readonly how: "added" | "changed" | "removed";
  readonly before: Row | null;
  readonly after: Row | null;
}

/** The records of a change set, each once, from what it was before the first note to what it is after the last. */
export function writtenRows(notes: readonly Noted[]): Written[] {
  const records = new Map<string, { table: TableName; id: string; before: Row | null; after: Row | null }>();
  for (const { table, id, before, after } of notes) {
    const known = records.get(`${table} ${id}`);
    if (known) known.after = after;
    else records.set(`${table} ${id}`, { table, id, before, after });
  }
  return [...records.values()].flatMap((record): Written[] => {
    if (record.before === null && record.after === null) return [];
    const how = record.before === null ? "added" : record.after === null ? "removed" : "changed";
    return [{ ...record, how }];
  });
}
