import { notebookTables, tableNames } from "@/lib/schemas/notebook/columns";
import { compareCodePoints } from "@/lib/science/code-point-order";
import type { Refusal } from "@/lib/science/outcome";

/** Something found while a notebook folder was read: a fault keeps it out, a warning does not. */
export interface Finding {
  readonly severity: "fault" | "warning";
  readonly code: string;
  readonly file: string;
  /** the record as a spreadsheet counts rows, the header 1; null: the whole file */
  readonly line: number | null;
  /** null: the whole row */
  readonly column: string | null;
  /** what stands there and what would be right */
  readonly sentence: string;
}

/** Where something was found. */
export interface Spot {
  readonly file: string;
  readonly line: number | null;
  readonly column?: string | null;
}

/** Collects what is found, in any order. */
export class Findings {
  readonly #all: Finding[] = [];

  fault(spot: Spot, refusal: Refusal): void {
    this.#add("fault", spot, refusal.code, refusal.sentence);
  }

  warn(spot: Spot, code: string, sentence: string): void {
    this.#add("warning", spot, code, sentence);
  }

  #add(severity: Finding["severity"], spot: Spot, code: string, sentence: string): void {
    this.#all.push({ severity, code, file: spot.file, line: spot.line, column: spot.column ?? null, sentence });
  }

  sorted(): { faults: Finding[]; warnings: Finding[] } {
    const sorted = this.#all.slice().sort(compareFindings);
    return {
      faults: sorted.filter(({ severity }) => severity === "fault"),
      warnings: sorted.filter(({ severity }) => severity === "warning"),
    };
  }
}

const files: readonly string[] = tableNames.map((table) => notebookTables[table].file);

/** Order by file, the seven first in the order in which they build on one another, then by line. */
export function compareFindings(one: Finding, other: Finding): number {
  return (
    placeOf(one.file) - placeOf(other.file) ||
    compareCodePoints(one.file, other.file) ||
    (one.line ?? 0) - (other.line ?? 0)
  );
}

function placeOf(file: string): number {
  const place = files.indexOf(file);
  return place === -1 ? files.length : place;
}

const LONGEST_LINE = 400;

/** One line of text: `lots.csv:12: year: "19x7" is not a date; ...`, with `warning: ` before a warning. */
export function findingLine(finding: Finding): string {
  const place = finding.line === null ? finding.file : `${finding.file}:${finding.line}`;
  const parts = finding.column === null ? [place, finding.sentence] : [place, finding.column, finding.sentence];
  // A cell may hold line breaks; a finding is one line.
  const whole = parts.join(": ").replace(/\s*[\r\n\u2028\u2029]+\s*/g, " ");
  const line = whole.length > LONGEST_LINE ? `${whole.slice(0, 200)} ... ${whole.slice(-180)}` : whole;
  return finding.severity === "warning" ? `warning: ${line}` : line;
}
