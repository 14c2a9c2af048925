import type { Line, Read } from "./line";
import { isAdjacent } from "./tokens";

/** Lower numbers that people write fractions of a measure with; "18/20" is a test and none of them. */
const LOWER = new Set([2, 3, 4, 8, 16]);

/** Reads "1/2", "3/4" or "2 1/2" from token `at`; only where a measure follows is it known to be one, which the caller sees to. */
export function readFraction(line: Line, at: number): Read<{ value: number }> | null {
  const whole = line.tokens[at];
  const next = line.tokens[at + 1];
  const isMixed =
    whole?.kind === "number" && /^\d+$/.test(whole.text) && next?.kind === "number" && next.from > whole.to;
  const start = isMixed ? at + 1 : at;
  const [upper, stroke, lower] = [line.tokens[start], line.tokens[start + 1], line.tokens[start + 2]];
  if (upper?.kind !== "number" || stroke?.text !== "/" || lower?.kind !== "number") return null;
  if (!isAdjacent(line.tokens, start + 1) || !isAdjacent(line.tokens, start + 2)) return null;
  if (!/^\d+$/.test(upper.text) || !/^\d+$/.test(lower.text)) return null;
  const [above, below] = [Number(upper.text), Number(lower.text)];
  if (above < 1 || above >= below || !LOWER.has(below)) return null;
  return { end: start + 3, value: (isMixed ? Number(whole.text) : 0) + above / below };
}
