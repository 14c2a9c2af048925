import { type Lie, margin, type Paper, sizeOf } from "./paper";

/*
 * How a field sheet lies on paper, in millimetres. Designed for a hand: no box is lower than narrow-ruled paper (6.35 mm between lines), and
 * none in which a figure is written is narrower than 11 mm.
 */

/** The head of each page: what it is, who and when, the code. */
export const headHeight = 27;
/** The head of the table: each trait with its scale. */
export const tableHeadHeight = 15;
/** The boxes at the foot of the last page. */
export const footHeight = 34;
export const lowestRow = 6.5;
const highestRow = 9;

const [tagWidth, cellWidth, intentWidth] = [15, 12, 21];
const [narrowestTrait, narrowTrait, wideTrait] = [11, 14, 20];
const narrowestWords = 40;

export interface SheetAsk {
  readonly paper: Paper;
  /** null: as fits */
  readonly lie: Lie | null;
  readonly rows: number;
  readonly traits: number;
  /** true where a column tells the cell */
  readonly cells: boolean;
}

export interface SheetLayout {
  readonly paper: Paper;
  readonly lie: Lie;
  readonly width: number;
  readonly height: number;
  readonly rowHeight: number;
  /** widths of the columns; a column that is not there is 0 */
  readonly columns: { tag: number; cell: number; intent: number; trait: number; words: number };
  /** first and last row of each page, counted from 0; the last page has the boxes at its foot */
  readonly pages: readonly { readonly from: number; readonly to: number }[];
  /** how many traits find room, at most, as it lies */
  readonly mostTraits: number;
}

/**
 * Lays rows and traits on pages. Upright where the traits find room so, else on the long side; rows as high as can be without one page more,
 * from 6.5 to 9 mm. Null where there are more traits than find room at 11 mm each.
 */
export function sheetLayout(ask: SheetAsk): SheetLayout | null {
  const lie = ask.lie ?? (ask.traits <= mostTraits(ask, "portrait", narrowTrait) ? "portrait" : "landscape");
  const most = mostTraits(ask, lie, narrowestTrait);
  if (ask.traits > most) return null;
  const { width, height } = sizeOf(ask.paper, lie);
  const rowHeight = highestThatFits(ask.rows, height);
  return {
    ...{ paper: ask.paper, lie, width, height, rowHeight, mostTraits: most },
    columns: columnsOf(ask, lie),
    pages: pagesOf(ask.rows, height, rowHeight),
  };
}

function freeWidth(ask: SheetAsk, lie: Lie): number {
  return sizeOf(ask.paper, lie).width - 2 * margin - tagWidth - intentWidth - (ask.cells ? cellWidth : 0);
}

function mostTraits(ask: SheetAsk, lie: Lie, each: number): number {
  return Math.floor((freeWidth(ask, lie) - narrowestWords) / each);
}

function columnsOf(ask: SheetAsk, lie: Lie): SheetLayout["columns"] {
  const free = freeWidth(ask, lie);
  const trait = ask.traits === 0 ? 0 : Math.min(wideTrait, (free - narrowestWords) / ask.traits);
  const cell = ask.cells ? cellWidth : 0;
  return { tag: tagWidth, cell, intent: intentWidth, trait, words: free - trait * ask.traits };
}

/** Rows on a page without and with the boxes at its foot. */
function roomFor(height: number, rowHeight: number): { readonly full: number; readonly last: number } {
  const free = height - 2 * margin - headHeight - tableHeadHeight;
  // a hundredth of a millimetre for the rounding of what is written in tenths
  const rows = (space: number) => Math.floor((space + 0.01) / rowHeight);
  return { full: rows(free), last: rows(free - footHeight) };
}

function countPages(rows: number, height: number, rowHeight: number): number {
  const { full, last } = roomFor(height, rowHeight);
  return rows <= last ? 1 : Math.ceil((rows - last) / full) + 1;
}

function highestThatFits(rows: number, height: number): number {
  const pages = countPages(rows, height, lowestRow);
  for (let tenths = highestRow * 10; tenths > lowestRow * 10; tenths -= 1)
    if (countPages(rows, height, tenths / 10) === pages) return tenths / 10;
  return lowestRow;
}

function pagesOf(rows: number, height: number, rowHeight: number): { from: number; to: number }[] {
  const { full, last } = roomFor(height, rowHeight);
  const pages: { from: number; to: number }[] = [];
  let from = 0;
  // at least one row goes onto the last page, so that its boxes do not stand alone
  while (rows - from > last) {
    const to = Math.min(from + full, rows - 1);
    pages.push({ from, to: to - 1 });
    from = to;
  }
  return [...pages, { from, to: rows - 1 }];
}
