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
 * names, crop, holder or notes. Letter case and accents do not matter. One or two letters or figures have to begin a word: within
 * words they stand nearly everywhere. Where there is none, the words may have a slip or two.
 */
export function findRows(rows: readonly LotRow[], search: string | null): Found {
  const wanted = wordsOf(search ?? "");
  if (wanted.length === 0) return { rows, near: false };
  const texts = rows.map((row) => foldWords(textOf(row)));
  const exact = rows.filter((_, index) => wanted.every((word) => stands(word, texts[index] ?? "")));
  if (exact.length > 0 || wanted.every((word) => slipsAllowed(word) === 0)) return { rows: exact, near: false };
  const near = rows.filter((_, index) => {
    const words = (texts[index] ?? "").split(/[\s,.;:()/-]+/);
    return wanted.every((word) => stands(word, texts[index] ?? "") || words.some((other) => meant(word, other)));
  });
  return { rows: near, near: true };
}

/** So long a word is found within another, too. */
const longEnough = 3;

function stands(word: string, text: string): boolean {
  if (word.length >= longEnough) return text.includes(word);
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1))
    if (at === 0 || !/[\p{L}\p{N}]/u.test(text.charAt(at - 1))) return true;
  return false;
}

/** The rows with that of which the number itself was typed first, where there is one. */
export function namedFirst(rows: readonly LotRow[], search: string | null): readonly LotRow[] {
  const typed = foldWords(search ?? "").trim();
  const named =
    typed === ""
      ? []
      : rows.filter((row) => [row.number, ...row.otherNumbers].some((each) => foldWords(each) === typed));
  return named.length === 0 ? rows : [...named, ...rows.filter((row) => !named.includes(row))];
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
