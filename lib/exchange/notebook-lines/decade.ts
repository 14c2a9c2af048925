import { type Line, low } from "./line";
import { isAdjacent } from "./tokens";
import type { YearRead } from "./year";

const NAMES = ["", "", "twenties", "thirties", "forties", "fifties", "sixties", "seventies", "eighties", "nineties"];
const PARTS: Record<string, readonly [number, number]> = { early: [0, 3], mid: [4, 6], late: [7, 9] };

/**
 * Reads a decade: "the eighties", "1980s", "80s", "'80s", "early eighties" (its first four years), "mid" (4 to 6), "late" (7 to 9).
 * The eighties are those of the 1900s.
 */
export function decadeAt(line: Line, at: number): YearRead | null {
  let start = at;
  if (low(line, start) === "the") start += 1;
  const part = PARTS[low(line, start)];
  if (part !== undefined) {
    start += 1;
    if (low(line, start) === "-") start += 1;
  } else {
    // "mid-eighties" is one word
    const joined = /^(early|mid|late)-(\w+)$/.exec(low(line, start));
    if (joined !== null) {
      const tens = NAMES.indexOf(joined[2] ?? "-");
      return tens < 2 ? null : ranged(start + 1, `19${tens}`, PARTS[joined[1] ?? ""]);
    }
  }
  if (part !== undefined && low(line, start) === "the") start += 1;
  const named = NAMES.indexOf(low(line, start) || "-");
  if (named >= 2) return ranged(start + 1, `19${named}`, part);
  const token = line.tokens[start];
  const digits = token?.kind === "number" ? token.text : token?.kind === "short-year" ? token.text.slice(1) : "";
  const hasEnding = ["s", "'s"].includes(low(line, start + 1)) && isAdjacent(line.tokens, start + 1);
  if (!hasEnding || !/^(?:\d{3}|\d)0$/.test(digits)) return null;
  const decade =
    digits.length === 4 ? digits.slice(0, 3) : `${Number(digits) >= 20 ? "19" : "20"}${digits.slice(0, 1)}`;
  return ranged(start + 2, decade, part);
}

function ranged(end: number, decade: string, part: readonly [number, number] | undefined): YearRead {
  const edtf = part === undefined ? `${decade}X` : `[${decade}${part[0]}..${decade}${part[1]}]`;
  return { end, edtf, certainty: "likely", relative: false };
}
