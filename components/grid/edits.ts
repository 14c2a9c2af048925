import { type CellChange, type GridRow, storedText } from "./grid-types";

/** What was typed and is not stored yet: by row and column, and the rows that were added. */
export interface Edits {
  readonly cells: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly added: readonly string[];
}

/** The edits with what they were before, step by step, and what was undone. */
export interface EditHistory {
  readonly now: Edits;
  readonly past: readonly Edits[];
  readonly future: readonly Edits[];
}

const steps = 200;

export const noEdits: Edits = { cells: {}, added: [] };
export const noHistory: EditHistory = { now: noEdits, past: [], future: [] };

/** What stands in a cell: what was typed, else what is stored. */
export function cellText(edits: Edits, row: GridRow, column: string): string {
  return edits.cells[row.key]?.[column] ?? storedText(row, column);
}

/** The edits with some cells filled. A cell that is again as it is stored is no edit. */
export function withCells(edits: Edits, rows: ReadonlyMap<string, GridRow>, changes: readonly CellChange[]): Edits {
  const cells: Record<string, Readonly<Record<string, string>>> = { ...edits.cells };
  for (const { row, column, text } of changes) {
    const before = rows.get(row);
    const { [column]: _old, ...others } = cells[row] ?? {};
    const stored = before ? storedText(before, column) : "";
    const now = text === stored ? others : { ...others, [column]: text };
    if (Object.keys(now).length === 0) delete cells[row];
    else cells[row] = now;
  }
  return { ...edits, cells };
}

/** The edits with rows added at the end. */
export function withRows(edits: Edits, keys: readonly string[]): Edits {
  return { ...edits, added: [...edits.added, ...keys.filter((key) => !edits.added.includes(key))] };
}

/** The edits without a row that was added. */
export function withoutRow(edits: Edits, key: string): Edits {
  const { [key]: _gone, ...cells } = edits.cells;
  return { cells, added: edits.added.filter((each) => each !== key) };
}

/** How many cells are edited. */
export function countEdits(edits: Edits): number {
  return Object.values(edits.cells).reduce((sum, cells) => sum + Object.keys(cells).length, 0);
}

export function isEmpty(edits: Edits): boolean {
  return countEdits(edits) === 0 && edits.added.length === 0;
}

/** One step further; what had been undone is gone. Nothing changes where the edits are the same. */
export function stepped(history: EditHistory, next: Edits): EditHistory {
  if (sameEdits(history.now, next)) return history;
  return { now: next, past: [...history.past, history.now].slice(-steps), future: [] };
}

function sameEdits(one: Edits, other: Edits): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}

export function undone({ now, past, future }: EditHistory): EditHistory {
  const before = past.at(-1);
  return before ? { now: before, past: past.slice(0, -1), future: [now, ...future] } : { now, past, future };
}

export function redone({ now, past, future }: EditHistory): EditHistory {
  const [next, ...later] = future;
  return next ? { now: next, past: [...past, now], future: later } : { now, past, future };
}

/** Reads edits that were kept on the device; null where they are none. */
export function readEdits(stored: unknown): Edits | null {
  if (typeof stored !== "object" || stored === null) return null;
  const { cells, added } = stored as Partial<Record<keyof Edits, unknown>>;
  if (typeof cells !== "object" || cells === null || !Array.isArray(added)) return null;
  const rows = Object.entries(cells).flatMap(([row, texts]) => {
    if (typeof texts !== "object" || texts === null) return [];
    const own = Object.entries(texts).filter((each): each is [string, string] => typeof each[1] === "string");
    return own.length === 0 ? [] : [[row, Object.fromEntries(own)] as const];
  });
  return { cells: Object.fromEntries(rows), added: added.filter((key) => typeof key === "string") };
}
