import { type ReactNode, useId } from "react";
import { cellRole, groupRole, headRole, rowHeadRole, rowRole, tableRole } from "./roles";
import { ScrollFrame } from "./scroll-frame";
import styles from "./simple-table.module.css";

/** A column of a small table. */
export interface SimpleColumn {
  readonly key: string;
  readonly name: ReactNode;
  readonly kind?: "words" | "count";
}

/**
 * A small table that stands still: parts of a reserve, the counts of a test. `caption` is shown above it; the first column is
 * the head of its row. `foot` is a last row (a sum). `entries`: where there is little room each row is laid out as an entry, its cells under
 * one another with their column's name, and nothing is moved sideways.
 */
export function SimpleTable({
  caption,
  columns,
  rows,
  foot,
  entries,
}: {
  caption?: ReactNode;
  columns: readonly SimpleColumn[];
  rows: readonly { readonly id: string; readonly cells: Readonly<Record<string, ReactNode>> }[];
  foot?: Readonly<Record<string, ReactNode>>;
  entries?: boolean;
}) {
  const captionId = useId();
  return (
    <ScrollFrame
      className={styles.frame}
      entries={entries}
      label={caption ? undefined : nameByHeads(columns)}
      labelledBy={caption ? captionId : undefined}
    >
      <table className={styles.table} {...tableRole}>
        {caption ? <caption id={captionId}>{caption}</caption> : null}
        <thead {...groupRole}>
          <tr {...rowRole}>
            {columns.map((column) => (
              <th key={column.key} scope="col" data-kind={column.kind} {...headRole}>
                {column.name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...groupRole}>
          {rows.map((row) => (
            <SimpleRow key={row.id} columns={columns} cells={row.cells} />
          ))}
        </tbody>
        {foot ? (
          <tfoot {...groupRole}>
            <SimpleRow columns={columns} cells={foot} />
          </tfoot>
        ) : null}
      </table>
    </ScrollFrame>
  );
}

/** What a table without a caption is called: by the heads of its columns. */
function nameByHeads(columns: readonly SimpleColumn[]): string {
  const heads = columns.map(({ name }) => name).filter((name) => typeof name === "string" && name !== "");
  return heads.length === 0 ? "Table" : `Table of ${heads.join(", ")}`;
}

function SimpleRow({
  columns,
  cells,
}: {
  columns: readonly SimpleColumn[];
  cells: Readonly<Record<string, ReactNode>>;
}) {
  return (
    <tr {...rowRole}>
      {columns.map((column, place) =>
        place === 0 ? (
          <th key={column.key} scope="row" data-kind={column.kind} {...rowHeadRole}>
            {cells[column.key]}
          </th>
        ) : (
          <td
            key={column.key}
            data-kind={column.kind}
            data-name={typeof column.name === "string" && column.name !== "" ? column.name : undefined}
            {...cellRole}
          >
            {cells[column.key] ?? null}
          </td>
        ),
      )}
    </tr>
  );
}
