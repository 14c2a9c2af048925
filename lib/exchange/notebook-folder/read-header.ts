import { type Column, notebookTables, scorePrefix, type TableName } from "@/lib/schemas/notebook/columns";
import type { Findings } from "./finding";
import { nearMiss } from "./near-miss";
import type { CsvRecord } from "./split-records";
import { type ColumnPlaces, columnPlaces, reportMissing, reportRepeated } from "./table-shape";

/** Reads the header row. Columns may stand in any order; unknown ones are kept, with a warning. */
export function readHeader(table: TableName, record: CsvRecord, findings: Findings): ColumnPlaces {
  const columns = columnsOf(table);
  const spot = { file: notebookTables[table].file, line: record.line };
  const places = columnPlaces(record);
  const absent = Object.keys(columns).filter((name) => !places.positions.has(name));
  const unknown = [...places.positions.keys()].filter((name) => !Object.hasOwn(columns, name) && !isScore(table, name));
  reportRepeated(places.repeated, spot, findings);
  const needed = absent.filter((name) => columns[name]?.needed);
  reportMissing(
    needed.map((name) => ({ name, meant: nearMiss(name, unknown) })),
    spot,
    findings,
  );
  for (const name of unknown) {
    const meant = nearMiss(name, absent);
    const sentence = `column "${name}" is not known here; it is kept and goes out again`;
    findings.warn(spot, "column-unknown", meant === null ? sentence : `${sentence}: did you mean ${meant}?`);
  }
  return places;
}

/** Whether a column of plants.csv holds scores. */
export function isScore(table: TableName, name: string): boolean {
  return table === "plants" && name.startsWith(scorePrefix) && name.length > scorePrefix.length;
}

export function columnsOf(table: TableName): Readonly<Record<string, Column<unknown>>> {
  return notebookTables[table].columns;
}
