import { refusal } from "@/lib/science/outcome";
import { type Check, grouped } from "./check";
import { type Entry, tainted } from "./entries";

type Line = Entry<"tests">;

/** The lines of one test agree, a replicate's day stands once, and no more seeds are counted than were sown. */
export function checkTests(check: Check): void {
  for (const lines of grouped(check.lines.tests, (line) => line.cells.test).values()) {
    if (lines.every((line) => line.draft === null)) continue;
    agree(check, lines, "lot", (line) => line.cells.lot, "name-twice");
    agree(check, lines, "date", (line) => line.cells.date?.text ?? null, "date-differs");
    for (const replicate of grouped(lines, (line) => line.cells.replicate).values()) {
      agree(check, replicate, "sown", (line) => line.cells.sown, "sown-differs");
      checkDays(check, replicate);
      checkSum(check, replicate);
    }
  }
}

/** What most lines say holds, and of equals what stands first; a line that says otherwise is at fault. */
function agree(
  check: Check,
  lines: readonly Line[],
  column: "lot" | "date" | "sown",
  cellOf: (line: Line) => string | number | null,
  code: string,
): void {
  const said = mostSaid(lines.filter((line) => !tainted(line, column)).map(cellOf));
  if (said === null) return;
  for (const line of lines) {
    const cell = cellOf(line);
    if (cell === null || cell === said || line.draft === null || tainted(line, column)) continue;
    line.draft.faulty.add(column);
    const what = column === "sown" ? `replicate ${line.cells.replicate} of ${line.cells.test}` : line.cells.test;
    const wrong = `does not go with the other lines of ${what}`;
    check.findings.fault({ ...line.draft.origin, column }, refusal(code, [], cell, wrong, `they say ${said}`));
  }
}

function mostSaid<Cell extends string | number>(cells: readonly (Cell | null)[]): Cell | null {
  const counts = new Map<Cell, number>();
  for (const cell of cells) if (cell !== null) counts.set(cell, (counts.get(cell) ?? 0) + 1);
  const [most] = [...counts].sort(([, one], [, other]) => other - one);
  return most?.[0] ?? null;
}

function checkDays(check: Check, lines: readonly Line[]): void {
  const seen = new Set<number>();
  for (const line of lines) {
    const day = line.cells.day;
    // Counts of days that nobody wrote down may be many.
    if (day === null) continue;
    if (seen.has(day) && line.draft) {
      line.draft.faulty.add("day");
      const wrong = `stands twice in replicate ${line.cells.replicate} of ${line.cells.test}`;
      const needed = "write what was counted on one day in one line";
      check.findings.fault({ ...line.draft.origin, column: "day" }, refusal("day-twice", [], day, wrong, needed));
    }
    seen.add(day);
  }
}

/** Counts are new on their day, so that all together they cannot pass what was sown. */
function checkSum(check: Check, lines: readonly Line[]): void {
  const sown = mostSaid(lines.filter((line) => !tainted(line, "sown")).map((line) => line.cells.sown));
  // A line with a fault is perhaps one that the registry has already, written otherwise.
  const unsure = lines.some((line) => line.draft === null) && lines.some((line) => tainted(line, ...countColumns));
  if (sown === null || unsure) return;
  const inOrder = lines
    .filter((line) => !tainted(line, "day"))
    .sort((one, other) => (one.cells.day ?? Infinity) - (other.cells.day ?? Infinity) || 0);
  const alone = inOrder.filter((line) => countedIn(line) > sown);
  const passing = alone.length > 0 ? alone : firstPassing(inOrder, sown);
  for (const line of passing) {
    const reported = line.draft ? line : inOrder.filter((other) => other.draft).at(-1);
    if (!reported?.draft) continue;
    const counted = alone.length > 0 ? countedIn(line) : inOrder.reduce((sum, each) => sum + countedIn(each), 0);
    const wrong = `seeds were counted of ${sown} sown in replicate ${line.cells.replicate} of ${line.cells.test}`;
    const needed = "write what was newly counted that day, never a running total";
    const fault = refusal("more-counted-than-sown", [], counted, wrong, needed);
    check.findings.fault({ ...reported.draft.origin, column: "normal" }, fault);
  }
}

const countColumns = ["sown", "normal", "abnormal", "hard", "fresh", "dead"];

function firstPassing(lines: readonly Line[], sown: number): Line[] {
  let sum = 0;
  for (const line of lines) {
    sum += countedIn(line);
    if (sum > sown) return [line];
  }
  return [];
}

function countedIn({ cells }: Line): number {
  return (cells.normal ?? 0) + (cells.abnormal ?? 0) + (cells.hard ?? 0) + (cells.fresh ?? 0) + (cells.dead ?? 0);
}
