import type { Transaction } from "@/lib/db";
import { delegateOf, type TableName } from "../change-set/records";
import { ownership } from "./rules";

export type Row = Readonly<Record<string, unknown>>;

/** The rows that ownership is asked of: those of a change set, and what they hang on, read a table at a time. */
export class RowsAtHand {
  private readonly rows = new Map<string, Row | null>();

  constructor(private readonly tx: Transaction) {}

  know(table: TableName, id: string, row: Row): void {
    this.rows.set(`${table} ${id}`, row);
  }

  get(table: TableName, id: string): Row | null {
    return this.rows.get(`${table} ${id}`) ?? null;
  }

  /** Reads what rows hang on, link by link, as far as ownership goes. */
  async follow(from: readonly { readonly table: TableName; readonly row: Row }[]): Promise<void> {
    let asked = from;
    while (asked.length > 0) {
      const missing = new Map<TableName, Set<string>>();
      const want = (table: TableName, id: unknown) => {
        if (typeof id !== "string" || this.rows.has(`${table} ${id}`)) return;
        missing.set(table, (missing.get(table) ?? new Set()).add(id));
      };
      for (const { table, row } of asked) {
        for (const [column, to] of Object.entries(ownership[table].through ?? {})) want(to, row[column]);
        if (table === "LedgerEntry") want("Transfer", row.transferId);
        if (table === "LotParent") want("Lot", row.parentLotId);
      }
      const found: { table: TableName; row: Row }[] = [];
      for (const [table, ids] of missing) {
        for (const id of ids) this.rows.set(`${table} ${id}`, null);
        for (const row of await this.read(table, [...ids])) {
          this.rows.set(`${table} ${row.id}`, row);
          found.push({ table, row });
        }
      }
      asked = found;
    }
  }

  private async read(table: TableName, ids: readonly string[]): Promise<(Row & { id: string })[]> {
    const rows: (Row & { id: string })[] = [];
    for (let start = 0; start < ids.length; start += 500)
      rows.push(
        ...(await delegateOf(this.tx, table).findMany({ where: { id: { in: ids.slice(start, start + 500) } } })),
      );
    return rows;
  }
}
