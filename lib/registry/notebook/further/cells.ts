import { readCount, readDecimalWithin } from "@/lib/schemas/notebook/cells";
import { writeDecimal } from "@/lib/schemas/notebook/decimal";
import { parseDate } from "@/lib/science/dates/parse-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { sameName } from "../../names/fold-name";
import { hashOfPhotoPath, pathInFolder } from "../../photos/photo-place";
import { joinedName, type NameBook, partsOf } from "./names";
import { type FurtherColumn, joinedParts } from "./spec";

/** The fields of a record that one cell gives. */
export type Fields = Record<string, unknown>;

const anyNumber = readDecimalWithin({});

type Cells = Readonly<Record<string, string>>;

/** Reads a cell of a row into the fields of its record. An empty cell gives null. */
export function readCell(column: FurtherColumn, cells: Cells, names: NameBook): Outcome<Fields> {
  const { field, kind } = column;
  const text = cells[column.column] ?? "";
  if (kind.as === "joined") return readJoined(column, cells, names);
  if (text.trim() === "") {
    if (column.needed)
      return refused(refusal("missing", [], null, "stands here", `write the ${column.column.replaceAll("_", " ")}`));
    if (kind.as === "part") return accepted({});
    return accepted(
      kind.as === "date" ? { [field]: null, [`${field}First`]: null, [`${field}Last`]: null } : { [field]: null },
    );
  }
  switch (kind.as) {
    case "part":
      return accepted({});
    case "text":
      return accepted({ [field]: text });
    case "photo": {
      const hash = hashOfPhotoPath(text.trim());
      if (hash !== null) return accepted({ [field]: hash });
      return refused(refusal("no-picture", [], text, "is no picture of this folder", "write the path of its file"));
    }
    case "number":
      return mapped(anyNumber(text, "."), (value) => ({ [field]: value }));
    case "count":
      return mapped(readCount(0)(text, "."), (value) => ({ [field]: value }));
    case "yes-no":
      return yesNo(field, text);
    case "day":
      return mapped(parseDate(text), (value) => ({ [field]: value.text }));
    case "date":
      return mapped(parseDate(text), (value) => ({
        [field]: value.text,
        [`${field}First`]: value.first,
        [`${field}Last`]: value.last,
      }));
    case "one-of":
      if (kind.words.includes(text.trim())) return accepted({ [field]: text.trim() });
      return refused(refusal("not-one-of", [], text, "is not known here", `write ${kind.words.join(", ")}`));
    case "name-of": {
      const id = names.idOf(kind.of, text);
      if (id !== null) return accepted({ [field]: id });
      return refused(
        refusal(
          "unknown-name",
          [],
          text,
          `is no ${kind.of} of this folder or registry`,
          "write its name as it stands there",
        ),
      );
    }
  }
}

/** The record that several cells name together; none where the first is empty and need not stand. */
function readJoined({ column, field, kind, needed }: FurtherColumn, cells: Cells, names: NameBook): Outcome<Fields> {
  if (kind.as !== "joined") return accepted({});
  const columns: readonly string[] = kind.cells ?? joinedParts[kind.of];
  const parts = columns.map((part) => cells[part] ?? "");
  const empty = kind.cells ? (cells[column] ?? "").trim() === "" : parts.every((part) => part.trim() === "");
  if (empty && !needed) return accepted({ [field]: null });
  const id = names.idOf(kind.of, joinedName(parts));
  if (id !== null) return accepted({ [field]: id });
  const shown = parts.filter((part) => part.trim() !== "").join(", ");
  return refused(
    refusal(
      "unknown-name",
      [],
      shown,
      `is no ${kind.of} of this folder or registry`,
      `write ${columns.join(", ")} as they stand there`,
    ),
  );
}

function yesNo(field: string, text: string): Outcome<Fields> {
  const word = text.trim().toLowerCase();
  if (word === "yes" || word === "no") return accepted({ [field]: word === "yes" });
  return refused(refusal("not-one-of", [], text, "is not known here", "write yes or no"));
}

function mapped<T>(outcome: Outcome<T>, give: (value: T) => Fields): Outcome<Fields> {
  return outcome.ok ? accepted(give(outcome.value)) : outcome;
}

const noNames: NameBook = { idOf: () => null, nameOf: () => null, add: () => {} };

/**
 * A cell as it stands once it was brought in and goes out again: numbers, days and words as the registry writes them, names as they are compared. What
 * cannot be read stays as it is. So a line that somebody wrote as 07.50 is the same line the next time.
 */
export function settledCell(column: FurtherColumn, cells: Cells): string {
  const text = cells[column.column] ?? "";
  if (text.trim() === "") return column.unsaid ?? "";
  switch (column.kind.as) {
    case "text":
      return text.replaceAll("\r\n", "\n");
    case "part":
    case "joined":
    case "name-of":
      return sameName(text);
    default: {
      const read = readCell(column, cells, noNames);
      return read.ok ? writeCell(column, read.value, noNames) : text;
    }
  }
}

/** A field as its cell. */
export function writeCell(column: FurtherColumn, record: Readonly<Record<string, unknown>>, names: NameBook): string {
  const value = record[column.field];
  if (value === null || value === undefined) return "";
  if (column.kind.as === "yes-no") return value ? "yes" : "no";
  const { kind } = column;
  if (kind.as === "part" || kind.as === "joined") {
    const name = names.nameOf(kind.of, String(value));
    const parts: readonly string[] = (kind.as === "joined" ? kind.cells : undefined) ?? joinedParts[kind.of];
    return name === null ? "" : (partsOf(name)[parts.indexOf(column.column)] ?? "");
  }
  if (column.kind.as === "photo") return pathInFolder(String(value));
  if (column.kind.as === "name-of") return names.nameOf(column.kind.of, String(value)) ?? "";
  if (typeof value === "number") return writeDecimal(value);
  return String(value);
}
