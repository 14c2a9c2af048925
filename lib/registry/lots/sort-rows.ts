import type { LotColumn, LotListQuery } from "@/lib/schemas/lots/list-query";
import { compareCodePoints } from "@/lib/science/code-point-order";
import { dayNumber } from "@/lib/science/dates/civil-day";
import { seedOf } from "./filter-rows";
import type { LotRow } from "./lot-row";

type Key = string | number | null;

/**
 * The rows by one column; where none is asked for, lots that hold seed or may hold some by variety, then those with nothing left, by variety
 * too. What is not known stands last, up or down. Texts are in code-point order, so that both databases and the
 * browser agree; a year that is a span stands at its middle. Equal rows stand by their numbers.
 */
export function sortRows(rows: readonly LotRow[], by: LotListQuery["sort"]): LotRow[] {
  const keyOf = keys[by?.key ?? "variety"];
  const down = by?.down ?? false;
  return rows
    .map((row) => ({ row, key: keyOf(row), finished: by === null && seedOf(row) === "none" }))
    .sort(
      (a, b) =>
        Number(a.finished) - Number(b.finished) ||
        byKey(a.key, b.key, down) ||
        compareCodePoints(a.row.number, b.row.number),
    )
    .map(({ row }) => row);
}

const keys: Record<LotColumn, (row: LotRow) => Key> = {
  number: (row) => row.number,
  variety: (row) => row.variety.toLowerCase(),
  crop: (row) => row.crop.toLowerCase(),
  holder: (row) => row.holder?.toLowerCase() ?? null,
  year: (row) => middleDay(row.yearFirst, row.yearLast),
  grams: (row) => row.grams,
  live: (row) => (row.live === null ? null : (row.live.value ?? (row.live.low + row.live.high) / 2)),
  test: (row) => row.lastTest?.germination ?? null,
  diversity: (row) => row.diversitySpan?.low ?? (row.standing === "counted" ? row.diversityRetained : null),
  generations: (row) => row.generations,
  status: (row) => row.status,
  places: (row) => row.places[0]?.toLowerCase() ?? null,
  kind: (row) => row.kind,
  code: (row) => row.code,
  notes: (row) => row.notes?.toLowerCase() ?? null,
};

function middleDay(first: string | null, last: string | null): number | null {
  return first === null || last === null ? null : (dayNumber(first) + dayNumber(last)) / 2;
}

function byKey(left: Key, right: Key, down: boolean): number {
  if (left === null || right === null) return left === right ? 0 : left === null ? 1 : -1;
  const order =
    typeof left === "string" && typeof right === "string"
      ? compareCodePoints(left, right)
      : Number(left) - Number(right);
  return down ? -order : order;
}
