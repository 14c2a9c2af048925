import { editDistance, slipsAllowed } from "../search/edit-distance";
import { foldWords } from "../search/fold-words";
import type { LotRow } from "./lot-row";

export interface Found {
  readonly rows: readonly LotRow[];
  /** nothing was written just so: these are the nearest */
  readonly near: boolean;
}

/**
 * The lots in which every word of the search stands, in any order, whole or begun ("purp pod"): in number, label code, variety and its other
 * names, crop, holder or notes. Letter case and accents do not matter. Where there is none, the words may have a slip or two.
 */
export function findRows(rows: readonly LotRow[], search: string | null): Found {
  const wanted = wordsOf(search ?? "");
  if (wanted.length === 0) return { rows, near: false };
  const texts = rows.map((row) => foldWords(textOf(row)));
  const exact = rows.filter((_, index) => wanted.every((word) => texts[index]?.includes(word)));
  if (exact.length > 0 || wanted.every((word) => slipsAllowed(word) === 0)) return { rows: exact, near: false };
  const near = rows.filter((_, index) => {
    const words = (texts[index] ?? "").split(/[\s,.;:()/-]+/);
    return wanted.every((word) => texts[index]?.includes(word) || words.some((other) => meant(word, other)));
  });
  return { rows: near, near: true };
}

/** Whether a word of a record is what was typed, or begins with it, but for the slips that a word may have. */
function meant(typed: string, word: string): boolean {
  const most = slipsAllowed(typed);
  return most > 0 && editDistance(typed, word.slice(0, typed.length), most) <= most;
}

function wordsOf(search: string): string[] {
  return foldWords(search).split(/\s+/).filter(Boolean);
}

function textOf(row: LotRow): string {
  return [
    row.number,
    row.code,
    ...row.otherNumbers,
    ...row.otherCodes,
    row.variety,
    ...row.otherNames,
    row.crop,
    row.holder,
    row.notes,
  ]
    .filter(Boolean)
    .join(" ");
}
