import { cellText, type Edits } from "./edits";
import type { CellChange, GridColumn, GridRow, Place } from "./grid-types";

/** What a pasted cell would do. */
export interface PastedCell {
  /** the row it falls on; null where there is none */
  readonly row: string | null;
  /** the name by which a person knows the row */
  readonly rowName: string;
  readonly column: GridColumn | null;
  readonly typed: string;
  /** what stands there now */
  readonly from: string;
  /** what would stand there */
  readonly to: string;
  readonly state: "new" | "changed" | "same" | "empty" | "refused";
  /** why it is refused */
  readonly why: string | null;
}

export interface PastePlan {
  readonly cells: readonly (readonly PastedCell[])[];
  /** rows that would be added, by their keys */
  readonly added: readonly string[];
  /** the columns on which the pasted ones fall; null where there is none */
  readonly columns: readonly (GridColumn | null)[];
  /** true where the first row named the columns */
  readonly headed: boolean;
  /** true where rows could be found by their name */
  readonly named: boolean;
}

export interface PasteGround {
  readonly rows: readonly GridRow[];
  readonly columns: readonly GridColumn[];
  readonly edits: Edits;
  /** the column by which a person knows a row: a plant's tag */
  readonly nameColumn: string;
  /** the first cell that is pasted into */
  readonly at: Place;
  /** true: rows are found by their name; false: one after the other from `at` on */
  readonly byName: boolean;
  /** gives a key to a row that is added */
  readonly newKey: (number: number) => string;
}

/**
 * What pasting a table would do, cell by cell. A first row of column names says on which columns the others fall; else they follow one
 * another from the chosen cell. An empty cell says nothing and leaves what stands. Rows that are not there are added where the paste
 * brings their name, and refused where it does not.
 */
export function planPaste(table: readonly (readonly string[])[], ground: PasteGround): PastePlan {
  const heads = headColumns(table[0] ?? [], ground.columns);
  const width = Math.max(0, ...table.map((row) => row.length));
  const columns =
    heads ?? Array.from({ length: width }, (_, place) => ground.columns[ground.at.column + place] ?? null);
  const body = heads ? table.slice(1) : table;
  const nameAt = columns.findIndex((column) => column?.key === ground.nameColumn);
  const finder = new RowFinder(ground, nameAt);
  return {
    cells: body.map((typed, place) => {
      const found = finder.find(typed, place);
      return columns.map((column, at) => pastedCell(typed[at] ?? "", column, found, ground.edits));
    }),
    added: finder.added,
    columns,
    headed: heads !== null,
    named: nameAt >= 0,
  };
}

/** The columns that a first row names; null where it is no row of names. */
function headColumns(first: readonly string[], columns: readonly GridColumn[]): (GridColumn | null)[] | null {
  const found = first.map((name) => columns.find((column) => folded(column.name) === folded(name)) ?? null);
  const named = found.filter((column) => column !== null);
  const wrote = first.filter((name) => name.trim() !== "").length;
  return named.length > 0 && named.length * 2 >= wrote && new Set(named).size === named.length ? found : null;
}

type Found =
  | { readonly row: GridRow; readonly name: string; readonly why: null }
  | { readonly row: null; readonly name: string; readonly why: string };

class RowFinder {
  readonly added: string[] = [];
  readonly #byName = new Map<string, GridRow[]>();
  readonly #addedByName = new Map<string, GridRow>();

  constructor(
    private readonly ground: PasteGround,
    private readonly nameAt: number,
  ) {
    for (const row of ground.rows) {
      const name = folded(cellText(ground.edits, row, ground.nameColumn));
      if (name !== "") this.#byName.set(name, [...(this.#byName.get(name) ?? []), row]);
    }
  }

  find(typed: readonly string[], place: number): Found {
    const { ground, nameAt } = this;
    const name = nameAt < 0 ? "" : (typed[nameAt] ?? "").trim();
    if (ground.byName && nameAt >= 0) return this.#named(name);
    const row = ground.rows[ground.at.row + place];
    if (row) return { row, name: name || cellText(ground.edits, row, ground.nameColumn), why: null };
    if (name !== "") return this.#make(name);
    return { row: null, name: "", why: "no plant stands in this row; paste its tag too, or add the plant first" };
  }

  #named(name: string): Found {
    if (name === "") return { row: null, name, why: "the row has no tag; write it, or paste row by row" };
    const there = this.#byName.get(folded(name)) ?? [];
    const [row] = there;
    if (row && there.length === 1) return { row, name, why: null };
    if (row) return { row: null, name, why: `${there.length} plants have the tag ${name}; paste row by row` };
    if (this.#addedByName.has(folded(name)))
      return { row: null, name, why: `the tag ${name} stands twice in what is pasted; paste row by row` };
    return this.#make(name);
  }

  #make(name: string): Found {
    const key = this.ground.newKey(this.added.length);
    const row: GridRow = { key, added: true, stored: {}, notes: {} };
    this.added.push(key);
    this.#addedByName.set(folded(name), row);
    return { row, name, why: null };
  }
}

function pastedCell(typed: string, column: GridColumn | null, { row, name, why }: Found, edits: Edits): PastedCell {
  const from = row && column ? cellText(edits, row, column.key) : "";
  const cell = { row: row?.key ?? null, rowName: name, column, typed, from, to: from };
  if (typed.trim() === "") return { ...cell, state: "empty", why: null };
  if (!column) return { ...cell, state: "refused", why: "no column stands here" };
  if (why !== null) return { ...cell, state: "refused", why };
  const read = column.read(typed);
  if (!read.ok) return { ...cell, state: "refused", why: read.refusals.map((each) => each.sentence).join(" ") };
  const to = read.value;
  return { ...cell, to, state: from === to ? "same" : from === "" ? "new" : "changed", why: null };
}

/** The cells that a plan fills. Refused and empty ones are left as they are. */
export function pastedChanges(plan: PastePlan): CellChange[] {
  return plan.cells.flat().flatMap(({ row, column, to, state }) => {
    if (row === null || column === null || (state !== "new" && state !== "changed")) return [];
    return [{ row, column: column.key, text: to }];
  });
}

function folded(text: string): string {
  return text.normalize("NFC").replace(/\s+/g, " ").trim().toLowerCase();
}
