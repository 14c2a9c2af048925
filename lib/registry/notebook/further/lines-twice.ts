import { type Refusal, refusal } from "@/lib/science/outcome";
import { keyText } from "./difference-further";
import type { FurtherTable } from "./further-table";
import type { FurtherSpec } from "./spec";

/** Lines of one file that name a record which an earlier line named; the path is file, line and column. */
export function linesTwice(spec: FurtherSpec, { file, rows }: FurtherTable): Refusal[] {
  const columns = columnsAlone(spec);
  const [first] = spec.columns;
  if (columns === 0 || !first) return [];
  const seen = new Map<string, number>();
  return rows.flatMap((row) => {
    const key = keyText(spec, row, columns);
    const before = seen.get(key);
    if (before === undefined) {
      seen.set(key, row.line ?? 0);
      return [];
    }
    const given = row.cells[first.column] ?? "";
    const wrong = `is named so in line ${before} too`;
    return [
      refusal("name-twice", [file, row.line ?? 0, first.column], given, wrong, "write what is said of it in one line"),
    ];
  });
}

/** How many of the first columns may stand together once; 0 where lines may be the same. */
function columnsAlone({ identity, once }: FurtherSpec): number {
  if (once !== undefined) return once;
  return identity.by === "keyed" ? identity.columns : identity.by === "details" ? 1 : 0;
}
