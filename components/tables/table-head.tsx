import Link from "next/link";
import { type Column, phonePlace } from "./cells";
import { groupRole, headRole, rowRole } from "./roles";
import styles from "./table.module.css";
import { nextSort, type TableAddress } from "./table-address";

type Sort = NonNullable<TableAddress["sort"]>;

/** The heads of the columns. Each that sorts is a link to the list so sorted, which the browser follows without a new page. */
export function TableHead({
  columns,
  sort,
  href,
  choose,
}: {
  columns: readonly Column[];
  sort: TableAddress["sort"];
  href: (sort: Sort) => string;
  choose: (sort: Sort) => void;
}) {
  return (
    <thead {...groupRole}>
      <tr {...rowRole} aria-rowindex={1}>
        {columns.map((column, place) => {
          const sorted = sort?.key === column.key ? sort : null;
          const next = nextSort(sort, column.key);
          return (
            <th
              key={column.key}
              scope="col"
              {...headRole}
              data-kind={column.kind}
              data-phone={phonePlace(column, place)}
              aria-sort={sorted ? (sorted.down ? "descending" : "ascending") : undefined}
            >
              {column.sortable === false ? (
                column.name
              ) : (
                <Link
                  href={href(next)}
                  prefetch={false}
                  replace
                  scroll={false}
                  className={styles.sorter}
                  onNavigate={(event) => {
                    event.preventDefault();
                    choose(next);
                  }}
                >
                  {column.name}
                  <span aria-hidden="true" className={styles.arrow}>
                    {sorted ? (sorted.down ? "↓" : "↑") : ""}
                  </span>
                </Link>
              )}
            </th>
          );
        })}
      </tr>
    </thead>
  );
}
