import { useId } from "react";
import type { Column } from "./cells";
import type { TableAddress } from "./table-address";
import styles from "./tools.module.css";

/** Sorting on a phone, where the heads of the columns are not drawn. */
export function SortChoice({
  columns,
  sort,
  choose,
}: {
  columns: readonly Column[];
  sort: TableAddress["sort"];
  choose: (sort: TableAddress["sort"]) => void;
}) {
  const id = useId();
  const value = sort ? `${sort.down ? "-" : ""}${sort.key}` : "";
  return (
    <span className={styles.sortChoice}>
      <label htmlFor={id}>Sorted by</label>
      <select
        id={id}
        value={value}
        onChange={({ target }) => {
          const down = target.value.startsWith("-");
          choose(target.value === "" ? null : { key: target.value.slice(down ? 1 : 0), down });
        }}
      >
        <option value="">the usual order</option>
        {columns
          .filter((column) => column.sortable !== false)
          .flatMap((column) => [
            <option key={column.key} value={column.key}>
              {column.name}, upwards
            </option>,
            <option key={`-${column.key}`} value={`-${column.key}`}>
              {column.name}, downwards
            </option>,
          ])}
      </select>
    </span>
  );
}
