import { accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { type Fields, readCell } from "./cells";
import type { FurtherRow } from "./further-table";
import type { NameBook } from "./names";
import type { FurtherSpec } from "./spec";

/** Reads a row of a further file into the fields of its record. Refused with file, line and column for each cell that is wrong. */
export function fieldsOf(spec: FurtherSpec, row: FurtherRow, names: NameBook): Outcome<Fields> {
  const fields: Fields = {};
  const refusals: Refusal[] = [];
  for (const column of spec.columns) {
    const outcome = readCell(column, row.cells, names);
    if (outcome.ok) Object.assign(fields, outcome.value);
    else
      refusals.push(...outcome.refusals.map((each) => ({ ...each, path: [spec.file, row.line ?? 0, column.column] })));
  }
  const whole = refusals.length === 0 ? spec.refuses?.(fields) : null;
  if (whole) refusals.push({ ...whole, path: [spec.file, row.line ?? 0, ...whole.path] });
  return refusals.length > 0 ? refused(...refusals) : accepted(fields);
}
