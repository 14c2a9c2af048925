import type { GridRow } from "@/components/grid";
import { traitOfColumn } from "@/lib/schemas/plants/save-plants";
import type { GridData } from "./grid-data";

/**
 * The rows as a person fills them in: in the cells of traits stand that person's own scores and nobody else's, so that each that is written counts as
 * theirs, be it another's equal or not; the others are in the words below the grid. Where nobody said who fills them in, as they are.
 */
export function rowsOfScorer(
  { rows, people, own }: Pick<GridData, "rows" | "people" | "own">,
  steward: string,
): readonly GridRow[] {
  const place = people.findIndex(({ value }) => value === steward);
  if (place < 0) return rows;
  return rows.map((row) => {
    const others = Object.entries(row.stored).filter(([column]) => traitOfColumn(column) === null);
    const scores = Object.entries(own[row.key] ?? {}).flatMap(([column, given]) => {
      const text = given.findLast(([by]) => by === place)?.[1];
      return text === undefined ? [] : [[column, text] as const];
    });
    return { ...row, stored: Object.fromEntries([...others, ...scores]) };
  });
}
