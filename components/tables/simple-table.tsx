import type { ReactNode } from "react";
import styles from "./simple-table.module.css";

/** A column of a small table. */
export interface SimpleColumn {
  readonly key: string;
  readonly name: ReactNode;
  readonly kind?: "words" | "count";
}

/**
 * A small table that stands still: parts of a reserve, the counts of a test. `caption` is shown above it; the first column is
 * the head of its row. `foot` is a last row (a sum).
 */
export function SimpleTable({
  caption,
  columns,
  rows,
  foot,
}: {
  caption?: ReactNode;
  columns: readonly SimpleColumn[];
  rows: readonly { readonly id: string; readonly cells: Readonly<Record<string, ReactNode>> }[];
  foot?: Readonly<Record<string, ReactNode>>;
}) {
  return (
    <div className={styles.frame}>
      <table className={styles.table}>
        {caption ? <caption>{caption}</caption> : null}
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" data-kind={column.kind}>
                {column.name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <SimpleRow key={row.id} columns={columns} cells={row.cells} />
          ))}
        </tbody>
        {foot ? (
          <tfoot>
            <SimpleRow columns={columns} cells={foot} />
          </tfoot>
        ) : null}
      </table>
    </div>
  );
}

function SimpleRow({
  columns,
  cells,
}: {
  columns: readonly SimpleColumn[];
  cells: Readonly<Record<string, ReactNode>>;
}) {
  return (
    <tr>
      {columns.map((column, place) =>
        place === 0 ? (
          <th key={column.key} scope="row" data-kind={column.kind}>
            {cells[column.key]}
          </th>
        ) : (
          <td key={column.key} data-kind={column.kind}>
            {cells[column.key] ?? null}
          </td>
        ),
      )}
    </tr>
  );
}
