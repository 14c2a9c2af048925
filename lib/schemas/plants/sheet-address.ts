import { isShortCode, shortCodeOfId } from "@/lib/science/codes/short-code-of-id";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { readSheetRows, type SheetRow, sheetRowsText, sheetTraitsText } from "./sheet-rows";

/** A page of a field sheet, as the code in its head tells it: what is needed to type it in as it lies there. */
export interface SheetPage {
  /** short code of its grow-out */
  readonly growOut: string;
  readonly rows: string;
  readonly traits: string;
  /** the day that was printed on it; null where it was written by hand */
  readonly on: string | null;
}

const nothing = "-";

/**
 * The address in the head of a sheet, in capitals: HTTPS://KINROW.LAN:4707/S/7KQ2M/1:30/2223322222/20260820. A phone's own camera opens it, and
 * the scanner of a page takes the page out of it wherever the registry is reached by now.
 */
export function sheetAddress(
  origin: string,
  growOutId: string,
  rows: readonly SheetRow[],
  traitIds: readonly string[],
  on: string | null,
): string {
  const day = on?.replaceAll("-", "") ?? nothing;
  const steps = ["S", shortCodeOfId(growOutId), sheetRowsText(rows), sheetTraitsText(traitIds) || nothing, day];
  return `${origin}/${steps.join("/")}`.toUpperCase();
}

/** Reads the page out of what a scanner found. Refused: what is no such address, a damaged one, rows that are none. */
export function readSheetAddress(text: string): Outcome<SheetPage> {
  const [, growOut, rows, traits, on] =
    /\/S\/([^/]+)\/([^/]+)\/([^/]+)\/([^/?#]+)$/.exec(text.trim().toUpperCase()) ?? [];
  const page = growOut && rows && traits && on ? sheetPage(growOut, rows, traits, on) : null;
  if (page) return page;
  const shown = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  const needed = "scan the code in the head of a sheet, or write its rows";
  return refused(refusal("no-sheet-code", ["sheet"], shown, "is no code of a field sheet", needed));
}

/** The page by the steps of its address. */
export function sheetPage(growOut: string, rows: string, traits: string, on: string): Outcome<SheetPage> {
  const read = readSheetRows(rows);
  if (!read.ok) return read;
  if (!isShortCode(growOut))
    return refused(refusal("sheet-grow-out", ["sheet"], growOut, "names no grow-out", "scan the sheet again"));
  const [, year, month, day] = /^(\d{4})(\d{2})(\d{2})$/.exec(on) ?? [];
  return accepted({
    ...{ growOut, rows },
    traits: traits === nothing ? "" : traits,
    on: year === undefined ? null : `${year}-${month}-${day}`,
  });
}

/** Where a page of a sheet is typed in: the grid of the grow-out's plants, its rows, traits and day as on the paper. */
export function gridOfSheet(growOutId: string, { rows, traits, on }: Omit<SheetPage, "growOut">): string {
  const query = new URLSearchParams({ sheet: rows, ...(traits ? { traits } : {}), ...(on ? { on } : {}) });
  return `/grow-outs/${growOutId}/plants?${query}`;
}
