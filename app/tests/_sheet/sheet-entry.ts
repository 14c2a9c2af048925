import { refusalSentence } from "@/lib/display/refusals";
import { type CountKind, countKinds } from "@/lib/schemas/germination-test/counts";
import { countsAgainstSown } from "@/lib/schemas/germination-test/counts-against-sown";
import type { Path } from "@/lib/science/outcome";
import { cellKey, dayTexts, replicateCount, type Sheet, textAt, unknownDay, wholeNumberTyped } from "./sheet";

/** Counts of an earlier day that stand already, by replicate. */
export interface StandingDay {
  readonly day: number | null;
  readonly normal: number;
  readonly abnormal: number | null;
  readonly hard: number | null;
  readonly fresh: number | null;
  readonly dead: number | null;
}

export type EntryCount = StandingDay;

export interface EntryReplicate {
  readonly name: string;
  readonly sown: number;
  readonly counts: readonly EntryCount[];
}

/** Something in the sheet that cannot stand, at its cell (`key` as cellKey gives it, `sown|replicate`, or `days`). */
export interface SheetFault {
  readonly key: string;
  readonly sentence: string;
}

export interface SheetReading {
  readonly replicates: readonly EntryReplicate[];
  readonly faults: readonly SheetFault[];
  /** the cell that a path of the entry leads to (`replicates.0.counts.1.normal`) */
  cellAt(path: Path): string | null;
}

/**
 * What a sheet says: its replicates with their counts, every cell that cannot be read or passes what was sown, and where in the sheet a
 * refusal of the entry belongs. A day of which nothing was typed is not counted; 0 is.
 */
export function readSheet(sheet: Sheet, standing: readonly (readonly StandingDay[])[] = []): SheetReading {
  const faults: SheetFault[] = [];
  const days = dayTexts(sheet).map(dayTyped);
  dayTexts(sheet).forEach((text, index) => {
    if (days[index] === null)
      faults.push({
        key: "days",
        sentence: `“${text}” is not a day: write days as 5, 10, or ? where nobody wrote it down.`,
      });
  });
  const daysOfCounts: number[][] = [];
  const replicates = Array.from({ length: replicateCount(sheet) }, (_, replicate): EntryReplicate => {
    const sown = wholeNumberTyped(textAt(sheet, { day: -1, kind: "sown" }, replicate)) ?? 0;
    if (sown < 1)
      faults.push({ key: `sown|${replicate}`, sentence: `Replicate ${replicate + 1}: how many seeds were laid out?` });
    const counted = days.flatMap((day, index) => {
      const count = day === null ? null : countOf(sheet, index, replicate, day, faults);
      return count ? [{ count, index }] : [];
    });
    daysOfCounts.push(counted.map(({ index }) => index));
    const own = counted.map(({ count }) => count);
    const before = standing[replicate] ?? [];
    const rule = { name: String(replicate + 1), sown: sown || Number.MAX_SAFE_INTEGER, counts: [...before, ...own] };
    for (const refusal of countsAgainstSown(rule, [])) {
      const at = Number(refusal.path[1]) - before.length;
      const index = counted[at]?.index ?? counted[0]?.index;
      if (index !== undefined)
        faults.push({
          key: cellKey(index, "normal", replicate),
          sentence: refusalSentence(refusal),
        });
    }
    return { name: String(replicate + 1), sown, counts: own };
  });
  return { replicates, faults, cellAt: (path) => cellOfPath(path, daysOfCounts) };
}

type DayTyped = number | "unknown";

/** A day as typed; null where it cannot be read. */
function dayTyped(text: string): DayTyped | null {
  if (text === unknownDay) return "unknown";
  return /^\d{1,3}(?:\.\d)?$/.test(text) ? Number(text) : null;
}

function countOf(
  sheet: Sheet,
  index: number,
  replicate: number,
  day: DayTyped,
  faults: SheetFault[],
): EntryCount | null {
  const typed = (kind: CountKind) => (sheet.cells[cellKey(index, kind, replicate)] ?? "").trim();
  if (countKinds.every((kind) => typed(kind) === "")) return null;
  const values = countKinds.map((kind): [CountKind, number | null] => {
    const text = typed(kind);
    const value = wholeNumberTyped(text);
    const where = `Replicate ${replicate + 1}${day === "unknown" ? "" : `, day ${day}`}`;
    if (text !== "" && value === null)
      faults.push({ key: cellKey(index, kind, replicate), sentence: `${where}: “${text}” is not a count.` });
    if (text === "" && kind === "normal")
      faults.push({
        key: cellKey(index, kind, replicate),
        sentence: `${where}: how many came up? Write 0 if none did.`,
      });
    return [kind, value];
  });
  const { normal, ...others } = Object.fromEntries(values) as Record<CountKind, number | null>;
  return { day: day === "unknown" ? null : day, normal: normal ?? 0, ...others };
}

function cellOfPath(path: Path, daysOfCounts: readonly (readonly number[])[]): string | null {
  const [what, replicate, part, count, kind] = path;
  if (what !== "replicates" || typeof replicate !== "number") return null;
  if (part !== "counts" || typeof count !== "number") return `sown|${replicate}`;
  const day = daysOfCounts[replicate]?.[count];
  if (day === undefined) return null;
  return cellKey(day, countKinds.find((each) => each === kind) ?? "normal", replicate);
}
