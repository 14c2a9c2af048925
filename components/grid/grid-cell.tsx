import type { ReactNode } from "react";
import styles from "./grid.module.css";
import type { GridColumn } from "./grid-types";
import { cellPart } from "./roles";

/** What a cell shows: its text, and whether it waits to be stored or cannot be. */
export interface CellState {
  readonly text: string;
  readonly edited: boolean;
  readonly refusal: string | null;
  readonly note: string | null;
}

/** A cell of the grid; the first of a row names it. Only the cell in focus is reached by Tab. */
export function GridCell({
  column,
  place,
  rowIndex,
  state: { text, edited, refusal, note },
  focused,
  chosen,
  children,
}: {
  column: GridColumn;
  /** the column's place, from 0 */
  place: number;
  rowIndex: number;
  state: CellState;
  focused: boolean;
  chosen: boolean;
  children?: ReactNode;
}) {
  return (
    <div
      {...cellPart(place, chosen, refusal !== null)}
      tabIndex={focused ? 0 : -1}
      className={styles.cell}
      data-kind={column.kind}
      data-first={place === 0 || undefined}
      data-chosen={chosen || undefined}
      data-edited={edited || undefined}
      data-refused={refusal !== null || undefined}
      data-row={rowIndex}
      data-column={place}
    >
      {children ?? (
        <>
          <span className={styles.text}>{text}</span>
          {note ? (
            <span className={styles.beside} aria-hidden="true">
              ·
            </span>
          ) : null}
          {edited || refusal !== null || note ? (
            <span className="heard">
              {[refusal ?? (edited ? "not stored yet" : ""), note].filter(Boolean).join(". ")}
            </span>
          ) : null}
        </>
      )}
    </div>
  );
}
