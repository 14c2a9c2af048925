import { compareValues, matching, type Row, sortValue } from "./cells";
import type { TableAddress } from "./table-address";

/** The rows that an address asks for, in its order: what the browser would make of them, made here. Unknowns stand last either way. */
export function rowsAsked(
  rows: readonly Row[],
  { sort, filter }: Pick<TableAddress, "sort" | "filter">,
): readonly Row[] {
  const found = matching(rows, filter);
  if (sort === null) return found;
  const way = sort.down ? -1 : 1;
  return [...found].sort((a, b) => {
    const [one, other] = [sortValue(a.cells[sort.key]), sortValue(b.cells[sort.key])];
    if (one === undefined || other === undefined) return one === other ? 0 : one === undefined ? 1 : -1;
    return way * compareValues(one, other);
  });
}
