import { parseDate } from "@/lib/science/dates/parse-date";
import { lineOf } from "./line";
import { proposeLine } from "./propose-line";
import type { LineContext, LineReading } from "./reading";
import { scan } from "./scan";

/**
 * Reads one line of a notebook in the grower's own words: a year's grow-out, or an event such as seed received, given,
 * tested, mixed, a year without sowing.
 *
 * Gives the words as typed; what was understood, piece by piece with its place (character spans that do not overlap) and
 * how sure it is; what was not understood; and what the line would become in the registry, with what is assumed and what
 * stays unknown. Nothing is invented: a number that is not in the words is null. Pure and quick: the same words after the
 * same lines always give the same reading. Any text is read; it never throws.
 */
export function readNotebookLine(text: string, context: LineContext = { earlier: [] }): LineReading {
  const thisYear = context.today === undefined ? null : Number(context.today.slice(0, 4));
  const { understood, notUnderstood } = scan(lineOf(text, thisYear, previousYear(context.earlier)));
  return { words: text, understood, notUnderstood, proposal: proposeLine(understood, context.earlier) };
}

/** Reads all lines of a notebook in order, each after those before it. Lines without a word are kept as empty notes. */
export function readNotebookLines(lines: readonly string[], context: Omit<LineContext, "earlier"> = {}): LineReading[] {
  const readings: LineReading[] = [];
  for (const line of lines) readings.push(readNotebookLine(line, { ...context, earlier: [...readings] }));
  return readings;
}

function previousYear(earlier: readonly LineReading[]): number | null {
  for (const line of earlier.toReversed()) {
    const date = line.proposal.year === null ? null : parseDate(line.proposal.year);
    if (date?.ok && date.value.first.slice(0, 4) === date.value.last.slice(0, 4))
      return Number(date.value.first.slice(0, 4));
  }
  return null;
}
