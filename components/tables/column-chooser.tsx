import { useId } from "react";
import type { Column } from "./cells";
import styles from "./tools.module.css";

/** Which columns are shown: a list of ticks over the page. The first column always stands. */
export function ColumnChooser({
  columns,
  shown,
  choose,
}: {
  columns: readonly Column[];
  shown: readonly string[];
  choose: (keys: readonly string[] | null) => void;
}) {
  const id = useId();
  function toggle(key: string) {
    const next = shown.includes(key) ? shown.filter((each) => each !== key) : [...shown, key];
    choose(columns.map((column) => column.key).filter((each) => next.includes(each)));
  }
  return (
    <span className={styles.chooser}>
      <button type="button" className={styles.tool} popoverTarget={id}>
        Columns
      </button>
      <fieldset className={styles.panel} id={id} popover="auto">
        <legend>Columns of this list</legend>
        {columns.map((column, place) => (
          <label key={column.key}>
            <input
              type="checkbox"
              checked={shown.includes(column.key)}
              disabled={place === 0}
              onChange={() => toggle(column.key)}
            />
            {column.name}
          </label>
        ))}
        <button type="button" className={styles.tool} onClick={() => choose(null)}>
          As at first
        </button>
      </fieldset>
    </span>
  );
}
