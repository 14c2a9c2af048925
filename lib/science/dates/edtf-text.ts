/**
 * The written shape of a date: ISO 8601-2:2019 (EDTF) level 0 and level 1, and of level 2 the one form `[a..b]`.
 * This file reads the characters only; what days they mean is `point-days.ts`, what is refused is `parse-date.ts`.
 */

/** One date of a text: `1987`, `198X`, `1987-05`, `1987-XX`, `1987-05-20`, `1987-21`, each with `~`, `?` or `%`. */
export interface EdtfPoint {
  /** four characters, digits then X: `1987`, `198X`, `19XX` */
  readonly year: string;
  /** `01` to `12` and whatever else two digits can say, `XX`, or null */
  readonly month: string | null;
  readonly day: string | null;
  readonly approximate: boolean;
  readonly uncertain: boolean;
}

/** `..` is an open end (still going on), nothing written is an unknown one. */
export type EdtfEnd = EdtfPoint | "open" | "unknown";

export type EdtfText =
  | { readonly kind: "point"; readonly point: EdtfPoint }
  | { readonly kind: "interval"; readonly from: EdtfEnd; readonly to: EdtfEnd }
  | { readonly kind: "within"; readonly from: EdtfPoint; readonly to: EdtfPoint };

// Level 1 leaves digits open from the right only: no day beside an open month, no month beside an open year.
const POINT = /^(?:(\d{4})-(\d{2})-(\d{2}|XX)|(\d{4})-(XX)-(XX)|(\d{4})-(\d{2}|XX)|(\d{4}|\d{3}X|\d{2}XX))([~?%]?)$/;

export function readEdtfPoint(text: string): EdtfPoint | null {
  const match = POINT.exec(text);
  if (match === null) return null;
  const year = match[1] ?? match[4] ?? match[7] ?? match[9];
  if (year === undefined) return null;
  const mark = match[10] ?? "";
  return {
    year,
    month: match[2] ?? match[5] ?? match[8] ?? null,
    day: match[3] ?? match[6] ?? null,
    approximate: mark === "~" || mark === "%",
    uncertain: mark === "?" || mark === "%",
  };
}

/** The parts of a text that has the shape of a date, or null. That the day exists is not looked at here. */
export function readEdtfText(text: string): EdtfText | null {
  const within = /^\[([^.[\]]+)\.\.([^.[\]]+)\]$/.exec(text);
  if (within !== null) {
    const [from, to] = [readEdtfPoint(within[1] ?? ""), readEdtfPoint(within[2] ?? "")];
    return from === null || to === null ? null : { kind: "within", from, to };
  }
  const ends = text.split("/");
  if (ends.length === 2) {
    const [from, to] = [readEnd(ends[0] ?? ""), readEnd(ends[1] ?? "")];
    if (from === null || to === null) return null;
    // An interval with no date at either end says nothing: that is an empty cell.
    if (typeof from === "string" && typeof to === "string") return null;
    return { kind: "interval", from, to };
  }
  const point = readEdtfPoint(text);
  return point === null ? null : { kind: "point", point };
}

function readEnd(text: string): EdtfEnd | null {
  if (text === "..") return "open";
  if (text === "") return "unknown";
  return readEdtfPoint(text);
}
