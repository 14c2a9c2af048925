import { type CountKind, countKinds } from "@/lib/schemas/germination-test/counts";

/** A counting sheet as it is typed: texts only, nothing judged. Rows are days and kinds, columns are replicates. */
export interface Sheet {
  /** how many replicates, as typed */
  readonly replicates: string;
  /** seeds in each, as typed; `sown` holds those that differ */
  readonly each: string;
  readonly sown: Readonly<Record<number, string>>;
  /** days of counting, as typed: "5, 10" */
  readonly days: string;
  /** days (by their place in the list) whose seedlings and seeds are told apart by kind; the last one unless said */
  readonly apart: Readonly<Record<number, boolean>>;
  readonly cells: Readonly<Record<string, string>>;
}

/** A place in the sheet. Row -1 is the row of seeds sown. */
export interface SheetRow {
  readonly day: number;
  readonly kind: CountKind | "sown";
}

export const mostReplicates = 40;
/** What is typed for a day that nobody wrote down. */
export const unknownDay = "?";

export function cellKey(day: number, kind: CountKind, replicate: number): string {
  return `${day}|${kind}|${replicate}`;
}

/** The number of replicates that is meant, 1 to 40; 1 while what is typed is no number. */
export function replicateCount(sheet: Sheet): number {
  const count = wholeNumberTyped(sheet.replicates) ?? 1;
  return Math.min(mostReplicates, Math.max(1, count));
}

/** The days as typed, one text each. */
export function dayTexts(sheet: Sheet): string[] {
  return sheet.days.split(/[\s,;]+/).filter((text) => text !== "");
}

/** Whether the kinds are told apart on a day: as said, else on the last day only. */
export function isApart(sheet: Sheet, day: number): boolean {
  return sheet.apart[day] ?? day === dayTexts(sheet).length - 1;
}

/** The rows in their order: seeds sown, then each day with one row a kind. */
export function sheetRows(sheet: Sheet): SheetRow[] {
  const days = dayTexts(sheet).flatMap((_, day): SheetRow[] => {
    const told = isApart(sheet, day)
      ? countKinds
      : countKinds.filter((kind) => kind === "normal" || isUsed(sheet, day, kind));
    return told.map((kind) => ({ day, kind }));
  });
  return [{ day: -1, kind: "sown" }, ...days];
}

/** Whether anything was typed for a kind on a day: then its row stays in sight. */
function isUsed(sheet: Sheet, day: number, kind: CountKind): boolean {
  return Array.from({ length: replicateCount(sheet) }, (_, index) => cellKey(day, kind, index)).some(
    (key) => (sheet.cells[key] ?? "") !== "",
  );
}

/** What stands in a place: seeds sown fall back to those of each replicate. */
export function textAt(sheet: Sheet, row: SheetRow, replicate: number): string {
  if (row.kind === "sown") return sheet.sown[replicate] ?? sheet.each;
  return sheet.cells[cellKey(row.day, row.kind, replicate)] ?? "";
}

/** The sheet with a text typed in a place. */
export function withText(sheet: Sheet, row: SheetRow, replicate: number, text: string): Sheet {
  if (row.kind === "sown") return { ...sheet, sown: { ...sheet.sown, [replicate]: text } };
  return { ...sheet, cells: { ...sheet.cells, [cellKey(row.day, row.kind, replicate)]: text } };
}

/** The sheet with a block of cells put in from a place on, to the right and down; what lies outside the sheet is left out. */
export function withBlock(
  sheet: Sheet,
  from: { row: number; replicate: number },
  block: readonly (readonly string[])[],
): Sheet {
  const rows = sheetRows(sheet);
  let filled = sheet;
  block.forEach((line, down) => {
    const row = rows[from.row + down];
    if (!row) return;
    line.forEach((text, across) => {
      const replicate = from.replicate + across;
      if (replicate < replicateCount(sheet)) filled = withText(filled, row, replicate, text.trim());
    });
  });
  return filled;
}

/** Cells copied from a spreadsheet: lines of cells parted by tabs. A single cell is no block. */
export function blockOf(text: string): string[][] | null {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n$/, "").split("\n");
  const block = lines.map((line) => line.split("\t"));
  return block.length > 1 || (block[0]?.length ?? 0) > 1 ? block : null;
}

/** A whole number of 0 or more as it is typed, or null. */
export function wholeNumberTyped(text: string): number | null {
  return /^\d{1,6}$/.test(text.trim()) ? Number(text.trim()) : null;
}
