import type { FurtherSpec } from "@/lib/registry/notebook/further/spec";
import type { Findings } from "./finding";
import { nearMiss } from "./near-miss";
import type { CsvRecord } from "./split-records";
import { type ColumnPlaces, columnPlaces, reportMissing, reportRepeated } from "./table-shape";

/** Reads the header of a further file; a column that nobody here reads gets a warning. */
export function readFurtherHeader({ file, columns }: FurtherSpec, record: CsvRecord, findings: Findings): ColumnPlaces {
  const spot = { file, line: record.line };
  const places = columnPlaces(record);
  const known = columns.map(({ column }) => column);
  const absent = known.filter((name) => !places.positions.has(name));
  const unknown = [...places.positions.keys()].filter((name) => !known.includes(name));
  reportRepeated(places.repeated, spot, findings);
  const needed = absent.filter((name) => columns.some(({ column, needed: must }) => must && column === name));
  reportMissing(
    needed.map((name) => ({ name, meant: nearMiss(name, unknown) })),
    spot,
    findings,
  );
  for (const name of unknown) {
    const meant = nearMiss(name, absent);
    const sentence = `column "${name}" is not known here; it was not read`;
    findings.warn(spot, "column-unknown", meant === null ? sentence : `${sentence}: did you mean ${meant}?`);
  }
  return places;
}
