import { SHORT_CODE_CHARACTERS, shortCodeOfId } from "@/lib/science/codes/short-code-of-id";
import { inUpperCase, outOfUpperCase } from "@/lib/science/codes/upper-case-text";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** A row of a field sheet: the tag that stands there, or null where it is written by hand; and the cell, where one was printed. */
export interface SheetRow {
  readonly tag: string | null;
  readonly cell: string | null;
}

/** So many rows a sheet may have that is typed in in one go. */
const mostRows = 1000;

/*
 * The rows of a page in the order in which they stand, for the code in its head: parts with full stops between them, each a tag or a run of
 * numbered tags (first:last), with the cell before it (cell*). A run without a tag is so many rows to be filled in by hand.
 *   1:30          tags 1 to 30
 *   A*1:4.B*5:8   tags 1 to 4 in cell A, 5 to 8 in cell B
 *   R7:12.3       tags R7 to R12, then 3
 *   :20           20 rows with no tag printed
 */
const [between, toLast, afterCell] = [".", ":", "*"] as const;
const numbered = /^(.*?)(0|[1-9]\d{0,5})$/;

/** The rows as they stand in the code. */
export function sheetRowsText(rows: readonly SheetRow[]): string {
  const parts: string[] = [];
  let place = 0;
  while (place < rows.length) {
    const first = rows[place] as SheetRow;
    const length = runFrom(rows, place);
    const cell = first.cell === null ? "" : `${inUpperCase(first.cell)}${afterCell}`;
    const last = first.tag === null ? String(length) : numberOf(rows[place + length - 1]?.tag ?? "");
    const tag = inUpperCase(first.tag ?? "");
    parts.push(first.tag !== null && length === 1 ? `${cell}${tag}` : `${cell}${tag}${toLast}${last}`);
    place += length;
  }
  return parts.join(between);
}

/** How many rows from here go on by one, in one cell. */
function runFrom(rows: readonly SheetRow[], start: number): number {
  const first = rows[start] as SheetRow;
  const [, letters = "", digits = ""] = numbered.exec(first.tag ?? "") ?? [];
  let length = 1;
  for (; start + length < rows.length; length += 1) {
    const row = rows[start + length] as SheetRow;
    const next = first.tag === null ? null : digits === "" ? undefined : `${letters}${Number(digits) + length}`;
    if (row.cell !== first.cell || row.tag !== next) break;
  }
  return length;
}

function numberOf(tag: string): string {
  return numbered.exec(tag)?.[2] ?? "";
}

/** Reads the rows out of a code. Refused, naming the part: a damaged tag, a run that goes backwards or is of no numbers, too many rows. */
export function readSheetRows(text: string): Outcome<readonly SheetRow[]> {
  const rows: SheetRow[] = [];
  for (const part of text.split(between)) {
    const [front = "", cellText] = part.split(afterCell).reverse();
    const [tagText = "", lastText] = front.split(toLast);
    const cell = cellText === undefined ? accepted(null) : outOfUpperCase(cellText);
    if (!cell.ok) return cell;
    const tag = outOfUpperCase(tagText);
    if (!tag.ok) return tag;
    const tags = tagsOfRun(tag.value, lastText);
    if (tags === null || (tag.value === "" && lastText === undefined))
      return wrong(part, "is no row of a sheet", "write tags with full stops between them, and a run as 1:30");
    if (rows.length + tags.length > mostRows)
      return wrong(text, `is more than ${mostRows} rows`, "type it in page by page");
    for (const each of tags) rows.push({ tag: each, cell: cell.value });
  }
  return accepted(rows);
}

function tagsOfRun(first: string, lastText: string | undefined): (string | null)[] | null {
  if (lastText === undefined) return [first];
  if (!/^\d{1,6}$/.test(lastText)) return null;
  const last = Number(lastText);
  if (first === "") return last > mostRows ? Array(mostRows + 1).fill(null) : Array(last).fill(null);
  const [, letters, digits] = numbered.exec(first) ?? [];
  if (digits === undefined || Number(digits) > last) return null;
  const length = Math.min(last - Number(digits), mostRows) + 1;
  return Array.from({ length }, (_, step) => `${letters}${Number(digits) + step}`);
}

/** The traits of a sheet as they stand in its code: their short codes, one behind the other. */
export function sheetTraitsText(traitIds: readonly string[]): string {
  return traitIds.map(shortCodeOfId).join("");
}

/** The traits that a code names, of those that there are, in its order; one that is not there any more is left out. */
export function sheetTraits(text: string, traitIds: readonly string[]): string[] {
  const byCode = new Map(traitIds.map((id) => [shortCodeOfId(id), id]));
  const codes = text.toUpperCase().match(new RegExp(`.{${SHORT_CODE_CHARACTERS}}`, "g")) ?? [];
  return codes.flatMap((code) => byCode.get(code) ?? []);
}

function wrong(given: string, what: string, needed: string): Outcome<never> {
  return refused(refusal("sheet-rows", ["rows"], given, what, needed));
}
