import { type CellChange, type Edits, type GridRow, withCells, withRows } from "@/components/grid";

/** A line of a field sheet in the grid: a plant on record, or a row that is offered until something is written into it. */
export interface SheetPlace {
  /** the plant's id, or a key of its own, the same whenever the sheet is opened */
  readonly key: string;
  readonly onRecord: boolean;
  readonly tag: string | null;
  readonly cell: string | null;
}

const newRow = (key: string): GridRow => ({ key, added: true, stored: {}, notes: {} });

/** The grid's rows: the lines of the sheet as they lie on the paper, then the other plants, then whatever else was added. */
export function rowsInOrder(
  plants: readonly GridRow[],
  added: readonly string[],
  places: readonly SheetPlace[],
): readonly GridRow[] {
  const byKey = new Map(plants.map((row) => [row.key, row]));
  const known = new Set(added);
  const lines = places.flatMap((place) => {
    if (place.onRecord) return byKey.get(place.key) ?? [];
    return known.has(place.key) ? newRow(place.key) : offeredRow(place);
  });
  const onSheet = new Set(lines.map((row) => row.key));
  return [...lines, ...plants, ...added.map(newRow)].filter(
    (row, place) => place < lines.length || !onSheet.has(row.key),
  );
}

/** The rows that are offered: of what stands in them nothing is stored before something is written beside it. */
function offeredRow(place: SheetPlace): GridRow {
  const words = "Not on record yet; it is added with the first cell that is written into its row.";
  return {
    key: place.key,
    added: false,
    stored: storedOf(place),
    notes: place.tag === null ? {} : { tag: { words, open: false } },
  };
}

function storedOf({ tag, cell }: SheetPlace): Record<string, string> {
  return { ...(tag === null ? {} : { tag }), ...(cell === null ? {} : { cell }) };
}

/** The edits with some cells filled; a row that was only offered becomes a new plant with the tag and cell that the paper says. */
export function filledIn(
  edits: Edits,
  rows: ReadonlyMap<string, GridRow>,
  places: readonly SheetPlace[],
  changes: readonly CellChange[],
): Edits {
  const touched = new Set(changes.map((change) => change.row));
  const taken = places.filter(
    ({ key, onRecord }) => !onRecord && touched.has(key) && !edits.added.includes(key) && isNew(key, rows, changes),
  );
  if (taken.length === 0) return withCells(edits, rows, changes);
  const printed = taken.flatMap((place) =>
    Object.entries(storedOf(place)).map(([column, text]): CellChange => ({ row: place.key, column, text })),
  );
  const known = new Map([...rows, ...taken.map(({ key }) => [key, newRow(key)] as const)]);
  const grown = withRows(
    edits,
    taken.map(({ key }) => key),
  );
  return withCells(grown, known, [...printed, ...changes]);
}

/** Whether anything is written into an offered row that does not stand there already. */
function isNew(key: string, rows: ReadonlyMap<string, GridRow>, changes: readonly CellChange[]): boolean {
  return changes.some(({ row, column, text }) => row === key && text !== (rows.get(key)?.stored[column] ?? ""));
}
