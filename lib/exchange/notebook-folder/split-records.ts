import { type CsvError, parse } from "csv-parse/sync";

/** One record that is not empty, with its line as a spreadsheet counts rows. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface SplitText {
  readonly records: readonly CsvRecord[];
  /** lines whose quotes do not close where a cell ends: their cells, and what they swallowed, are lost */
  readonly broken: readonly number[];
}

export type Delimiter = "," | ";" | "\t";

/**
 * Splits CSV text (RFC 4180, any of the three line ends) into its records. A record with nothing in it is left out but
 * counted; a line break inside quotes is not counted as a row. A quote mark inside a cell that is not quoted is read
 * as it stands (`5" pot`).
 */
export function splitRecords(text: string, delimiter: Delimiter): SplitText {
  const records: CsvRecord[] = [];
  const broken: number[] = [];
  const sound = soundRecord(delimiter);
  let line = 0;
  const take = (parsed: unknown): null => {
    const { record, raw } = parsed as { record: string[]; raw: string };
    line += 1;
    if (raw.includes('"') && !sound.test(raw)) {
      broken.push(line);
      // The rows that an open quote swallowed are still rows of the sheet.
      line += raw.replace(/[\r\n]+$/, "").split(/\r\n|\n|\r/).length - 1;
    } else if (record.some((cell) => cell.trim() !== "")) {
      records.push({ line, cells: record });
    }
    return null;
  };
  try {
    parse(text, {
      delimiter,
      record_delimiter: ["\r\n", "\n", "\r"],
      relax_column_count: true,
      relax_quotes: true,
      raw: true,
      on_record: take,
    });
  } catch (error) {
    // With these options the one error left is a quote that is still open where the text ends.
    if (!isCsvError(error)) throw error;
    broken.push(line + 1);
  }
  return { records, broken };
}

function isCsvError(error: unknown): error is CsvError {
  return error instanceof Error && "code" in error && String(error.code).startsWith("CSV_");
}

/** Cells that are quoted whole, or have no quote at their beginning. */
function soundRecord(delimiter: Delimiter): RegExp {
  const cell = `(?:"[^"]*(?:""[^"]*)*"|[^"${delimiter}\\r\\n][^${delimiter}\\r\\n]*|)`;
  return new RegExp(`^${cell}(?:${delimiter}${cell})*[\\r\\n]*$`);
}
