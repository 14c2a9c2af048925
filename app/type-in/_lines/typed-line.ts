import { readNotebookLine } from "@/lib/exchange/notebook-lines/read-notebook-line";
import type { LineReading } from "@/lib/exchange/notebook-lines/reading";
import { corrected } from "./corrections";
import { joinedToStanding, type StandingLot } from "./join-standing";

/** What a person put in place of something that was understood: another text, or nothing at all. */
export type Fix = { readonly text: string } | { readonly dropped: true };
export type Fixes = Readonly<Record<string, Fix>>;

/** A line as it is typed, with what was put right in its proposal. */
export interface TypedLine {
  readonly id: string;
  readonly words: string;
  readonly fixes: Fixes;
}

/** A line read and put right; `faults` are fixes that cannot be read, by their field. */
export interface ReadLine extends LineReading {
  readonly faults: Readonly<Record<string, string>>;
}

/**
 * Reads the lines in their order, each after those before it as they were put right, so that a corrected year or a dropped lot reaches
 * the lines that lean on it. `standing` are lots that stand already, which a line may lean on. The words stay as typed.
 */
export function readLines(
  lines: readonly TypedLine[],
  today: string,
  standing: readonly StandingLot[] = [],
): ReadLine[] {
  const earlier: ReadLine[] = [];
  for (const { words, fixes } of lines) {
    const reading = readNotebookLine(withYear(words, fixes.year), { earlier, today });
    earlier.push(corrected({ ...joinedToStanding(reading, standing), words }, fixes));
  }
  return earlier;
}

/** The words with another year in place of the one they begin with, or with a year before them where they have none. */
function withYear(words: string, fix: Fix | undefined): string {
  if (!fix) return words;
  const year = readNotebookLine(words).understood.find((fact) => fact.kind === "year");
  const text = "text" in fix ? fix.text.trim() : "";
  if (!year) return text === "" ? words : `${text}, ${words}`;
  return `${words.slice(0, year.from)}${text}${words.slice(year.to)}`;
}
