"use client";

import { memo } from "react";
import { type AfterEdit, CellEditor } from "./cell-editor";
import styles from "./grid.module.css";
import { type CellState, GridCell } from "./grid-cell";
import { type GridColumn, type GridRow, storedText } from "./grid-types";
import { rowPart } from "./roles";

/** Why a typed text cannot be kept; null where it can. An empty cell can always be. */
export function refusalOf(column: GridColumn, text: string): string | null {
  if (text.trim() === "") return null;
  const read = column.read(text);
  return read.ok ? null : read.refusals.map((each) => each.sentence).join(" ");
}

/** The key of a refusal by row and column. */
export const refusalKey = (row: string, column: string) => `${row} ${column}`;

/** The cell that is being edited, with what is typed so far. */
export interface EditedCell {
  readonly column: number;
  readonly text: string;
  readonly over: boolean;
}

/** What a cell that is being edited asks for. The same object as long as the grid stands. */
export interface EditorDeeds {
  readonly type: (text: string) => void;
  readonly commit: (after: AfterEdit) => void;
  readonly cancel: () => void;
}

/** A row of the grid. Drawn anew only where something in it has changed: moving from cell to cell touches two rows. */
export const GridLine = memo(function GridLine({
  row,
  index,
  columns,
  template,
  start,
  typed,
  refusals,
  focus,
  chosen,
  editing,
  deeds,
}: {
  row: GridRow;
  index: number;
  columns: readonly GridColumn[];
  template: string;
  /** how far below the head it stands; null where rows follow one another */
  start: number | null;
  /** what was typed into its cells */
  typed: Readonly<Record<string, string>> | undefined;
  refusals: ReadonlyMap<string, string>;
  /** the column in focus; null where the focus is in another row */
  focus: number | null;
  /** the columns that are chosen, as "first last"; empty where none is */
  chosen: string;
  editing: EditedCell | null;
  deeds: EditorDeeds;
}) {
  const [first, last] = chosen === "" ? [1, 0] : chosen.split(" ").map(Number);
  const textOf = (column: GridColumn) => typed?.[column.key] ?? storedText(row, column.key);
  const [name] = columns;
  const stateOf = (column: GridColumn): CellState => {
    const text = textOf(column);
    const edited = typed?.[column.key] !== undefined || row.added;
    const note = row.notes[column.key];
    return {
      text,
      edited: edited && text !== "",
      refusal: (edited ? refusalOf(column, text) : null) ?? refusals.get(refusalKey(row.key, column.key)) ?? null,
      note: note?.open ? note.words : null,
    };
  };
  return (
    <div
      {...rowPart(index)}
      className={styles.row}
      style={{
        gridTemplateColumns: template,
        ...(start === null ? {} : { position: "absolute", insetBlockStart: start }),
      }}
    >
      {columns.map((column, place) => (
        <GridCell
          key={column.key}
          column={column}
          place={place}
          rowIndex={index}
          state={stateOf(column)}
          focused={focus === place}
          chosen={place >= (first ?? 1) && place <= (last ?? 0)}
        >
          {editing?.column === place ? (
            <CellEditor
              text={editing.text}
              over={editing.over}
              label={`${column.name}, ${name ? `${name.name} ${textOf(name)}` : ""}`}
              inputMode={column.inputMode}
              onText={deeds.type}
              commit={deeds.commit}
              cancel={deeds.cancel}
            />
          ) : undefined}
        </GridCell>
      ))}
    </div>
  );
});
