import { uuidv7 } from "uuidv7";
import type { Engine } from "@/lib/db";
import { insertRows, type Prisma, type Reference, references, type Transaction } from "@/lib/db";
import type { Outcome } from "@/lib/science/outcome";
import { delegateOf, type NewRowOf, type PatchOf, type TableName } from "./records";

/** What was done to one row: what it was and what it is. */
export interface Noted {
  readonly table: TableName;
  readonly id: string;
  readonly action: "create" | "update" | "remove";
  readonly before: Record<string, unknown> | null;
  readonly after: Record<string, unknown> | null;
}

const changesAtOnce = 2000;

/** Fields that are stored and never noted: the history of a registry tells no secret. */
const neverNoted: Readonly<Partial<Record<string, readonly string[]>>> = { Invitation: ["codeHash"] };

/** Where it is written whose a thing is. */
const handOf: Readonly<Partial<Record<TableName, string>>> = {
  ...{ Lot: "holderId", GrowOut: "stewardId", Plot: "stewardId", Place: "stewardId" },
};

/**
 * Writes rows of one operation and notes for each what was and what is. The notes go into the change set when the operation ends.
 */
export class ChangeWriter {
  private readonly notes: Noted[] = [];
  private readonly touched = new Set<string>();
  private ownReferences: readonly Reference[] | null = null;
  private touchedAll = false;
  private touchedNothing = false;
  private parts = 0;
  private without: (json: string) => string | null = () => null;

  constructor(
    readonly tx: Transaction,
    readonly engine: Engine,
    readonly changeSetId: string,
    readonly revision: number,
    /** the steward whose new lots, grow-outs, plots and stores are where nobody is named; null: they stay without */
    private readonly hand: string | null = null,
  ) {}

  /** the title of the change set, where only the work knows it */
  title: string | null = null;
  /** told how many records were written so far, for the progress of a long operation */
  onWritten: (records: number) => void = () => {};

  /** How many records were written so far. */
  get size(): number {
    return this.notes.length;
  }

  /** What was written so far, in its order. */
  get written(): readonly Noted[] {
    return this.notes;
  }

  /** Does a part of the work, or nothing of it where it is refused or throws: what it had written till then does not stand. */
  async attempt<T>(work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
    const [size, touched] = [this.notes.length, [...this.touched]];
    this.parts += 1;
    const name = `"part ${this.parts}"`;
    const undo = async () => {
      await this.tx.$executeRawUnsafe(`ROLLBACK TO SAVEPOINT ${name}`);
      this.notes.length = size;
      this.touched.clear();
      for (const id of touched) this.touched.add(id);
    };
    await this.tx.$executeRawUnsafe(`SAVEPOINT ${name}`);
    try {
      const outcome = await work();
      if (!outcome.ok) await undo();
      await this.tx.$executeRawUnsafe(`RELEASE SAVEPOINT ${name}`);
      return outcome;
    } catch (error) {
      await undo();
      await this.tx.$executeRawUnsafe(`RELEASE SAVEPOINT ${name}`);
      throw error;
    }
  }

  /** Says that a variety's figures may have changed. An operation that touches none is taken to touch all. */
  touch(...varietyIds: (string | null | undefined)[]): void {
    for (const id of varietyIds) if (id) this.touched.add(id);
  }

  touchAll(): void {
    this.touchedAll = true;
  }

  /** Says that no figure can have changed: what is written is about people, not seed. */
  touchNothing(): void {
    this.touchedNothing = true;
  }

  /** Says what the notes of this change set may not hold: a text that has it is noted as what `without` makes of it (null: as it is). */
  forget(without: (json: string) => string | null): void {
    this.without = without;
  }

  async create<T extends TableName>(table: T, ...rows: NewRowOf<T>[]): Promise<void> {
    await this.createAll(table, rows);
  }

  /** As create, for rows in any number. */
  async createAll<T extends TableName>(table: T, rows: readonly NewRowOf<T>[]): Promise<void> {
    const plain = this.inHand(table, rows as readonly ({ id: string } & Record<string, unknown>)[]);
    await insertRows(this.tx, this.engine, table, plain, (inserted) => this.onWritten(this.size + inserted));
    for (const row of plain) this.notes.push({ table, id: row.id, action: "create", before: null, after: row });
  }

  /** Changes fields of a row. A patch that changes nothing is not noted. */
  async update<T extends TableName>(table: T, id: string, patch: PatchOf<T>): Promise<boolean> {
    return (await this.updateMany(table, [{ id, patch }])) > 0;
  }

  async updateMany<T extends TableName>(
    table: T,
    patches: readonly { id: string; patch: PatchOf<T> }[],
  ): Promise<number> {
    const rows = await this.rowsOf(
      table,
      patches.map((each) => each.id),
    );
    let changed = 0;
    for (const { id, patch } of patches) {
      const before = rows.get(id);
      if (!before) throw new Error(`no ${table} ${id} to change`);
      const different = Object.entries(patch).filter(([key, value]) => value !== undefined && before[key] !== value);
      if (different.length === 0) continue;
      const data = Object.fromEntries(different);
      await delegateOf(this.tx, table).update({ where: { id }, data });
      this.notes.push({ table, id, action: "update", before, after: { ...before, ...data } });
      changed += 1;
    }
    return changed;
  }

  /** Removes rows; what they were stays in the change set. */
  async remove(table: TableName, ids: readonly string[]): Promise<void> {
    if (ids.length === 0) return;
    const rows = await this.rowsOf(table, ids);
    for (const going of await this.childrenFirst(table, ids, rows))
      for (let start = 0; start < going.length; start += 500)
        await delegateOf(this.tx, table).deleteMany({ where: { id: { in: going.slice(start, start + 500) } } });
    for (const id of ids) {
      const before = rows.get(id);
      if (before) this.notes.push({ table, id, action: "remove", before, after: null });
    }
  }

  /** Stores the change set with its changes and marks the varieties that it touched. */
  async finish(changeSet: Prisma.ChangeSetUncheckedCreateInput): Promise<void> {
    await this.tx.changeSet.create({ data: changeSet });
    // In pieces, so that the texts of a large import do not all stand in memory at once.
    for (let start = 0; start < this.notes.length; start += changesAtOnce) {
      const rows = this.notes.slice(start, start + changesAtOnce).map((note, place) => ({
        id: uuidv7(),
        changeSetId: this.changeSetId,
        position: start + place,
        tableName: note.table,
        recordId: note.id,
        action: note.action,
        before: note.before && this.told(noted(note.table, note.before)),
        after: note.after && this.told(noted(note.table, note.after)),
      }));
      await insertRows(this.tx, this.engine, "Change", rows);
    }
    if (this.touchedNothing && this.touched.size === 0 && !this.touchedAll) return;
    const where = this.touchedAll || this.touched.size === 0 ? {} : { id: { in: [...this.touched] } };
    await this.tx.variety.updateMany({ where, data: { revision: this.revision } });
  }

  /** Rows that go together, in turns: a row of a table that points to another of the same table goes before that one. */
  private async childrenFirst(
    table: TableName,
    ids: readonly string[],
    rows: ReadonlyMap<string, Record<string, unknown>>,
  ): Promise<readonly (readonly string[])[]> {
    if (ids.length < 2) return [ids];
    this.ownReferences ??= (await references(this.tx, this.engine)).filter((each) => each.table === each.to);
    const columns = this.ownReferences.filter((each) => each.table === table).map((each) => each.column);
    if (columns.length === 0) return [ids];
    const turns: string[][] = [];
    let left = new Set(ids);
    while (left.size > 0) {
      const pointedTo = new Set([...left].flatMap((id) => columns.map((column) => rows.get(id)?.[column])));
      const free = [...left].filter((id) => !pointedTo.has(id));
      // Rows that point to each other in a ring cannot be parted: the database says so.
      turns.push(free.length > 0 ? free : [...left]);
      left = free.length > 0 ? new Set([...left].filter((id) => pointedTo.has(id))) : new Set();
    }
    return turns;
  }

  private inHand<R extends Record<string, unknown>>(table: TableName, rows: readonly R[]): readonly R[] {
    const column = handOf[table];
    if (this.hand === null || column === undefined) return rows;
    return rows.map((row) => (row[column] == null ? { ...row, [column]: this.hand } : row));
  }

  private told(json: string): string {
    return this.without(json) ?? json;
  }

  private async rowsOf(table: TableName, ids: readonly string[]): Promise<Map<string, Record<string, unknown>>> {
    const found = new Map<string, Record<string, unknown>>();
    for (let start = 0; start < ids.length; start += 500) {
      for (const row of await delegateOf(this.tx, table).findMany({
        where: { id: { in: ids.slice(start, start + 500) } },
      })) {
        found.set(row.id, row);
      }
    }
    return found;
  }
}

function noted(table: string, row: Record<string, unknown>): string {
  const hidden = neverNoted[table];
  if (!hidden) return JSON.stringify(row);
  return JSON.stringify(Object.fromEntries(Object.entries(row).filter(([field]) => !hidden.includes(field))));
}
