import { type Column, notebookTables, tableNames } from "@/lib/schemas/notebook/columns";
import styles from "./bring-in.module.css";

/** The files and columns that are read, straight from the shapes that read them; those that every row needs are marked. */
export function FileColumns() {
  return (
    <dl className={styles.files}>
      {tableNames.map((name) => {
        const table = notebookTables[name];
        return (
          <div key={name}>
            <dt className="counts">{table.file}</dt>
            <dd>
              {Object.entries<Column<unknown>>(table.columns).map(([column, { needed }], index) => (
                <span key={column}>
                  {index > 0 ? ", " : ""}
                  {needed ? <strong>{column}</strong> : column}
                </span>
              ))}
              {name === "plants" ? ", score:TRAIT (one column a trait)" : ""}
            </dd>
          </div>
        );
      })}
      <div>
        <dt>In all of them</dt>
        <dd>
          The columns in bold stand in every row; an empty cell means not known. Dates may be as fuzzy as you know them:
          1987, 1987-05, 1991~ (about), 198X, [1987..1991]. Columns of your own are kept and go out again.
        </dd>
      </div>
    </dl>
  );
}
