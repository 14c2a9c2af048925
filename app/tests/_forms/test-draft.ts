import { dayTexts, type Sheet } from "../_sheet/sheet";
import type { EntryReplicate } from "../_sheet/sheet-entry";

/** The fields beside the sheet, by their name in the form, as typed. */
export type Fields = Readonly<Record<string, string>>;

/** A test as it is being typed. */
export interface TestDraft {
  readonly fields: Fields;
  readonly sheet: Sheet;
}

/** What an official test of the crop does, said beside the fields. */
export interface TestHints {
  readonly days: string;
  readonly temperature?: string;
  readonly method?: string;
}

/** The fields' words, for the summary of refusals. */
export const labels: Readonly<Record<string, string>> = {
  on: "Set up on",
  basis: "What is counted",
  name: "Name of the test",
  seedsUsed: "The seeds used",
  "seedsUsed.grams": "Weighed",
  finalCountDay: "Counted on days",
  lotId: "Lot",
};

/** Reads a stored draft, perhaps of an older page; null where it is none. */
export function draftOf(stored: unknown): TestDraft | null {
  if (typeof stored !== "object" || stored === null) return null;
  const { fields, sheet } = stored as Partial<TestDraft>;
  if (typeof fields !== "object" || typeof sheet !== "object" || !sheet) return null;
  const { replicates, each, days, sown, apart, cells } = sheet;
  if (typeof replicates !== "string" || typeof each !== "string" || typeof days !== "string") return null;
  return {
    fields: fields ?? {},
    sheet: { replicates, each, days, sown: sown ?? {}, apart: apart ?? {}, cells: cells ?? {} },
  };
}

/** The last of the days that are written down, or null where none can be read. */
export function lastDayTyped(sheet: Sheet): number | null {
  const days = dayTexts(sheet)
    .map(Number)
    .filter((day) => Number.isFinite(day));
  return days.length > 0 ? Math.max(...days) : null;
}

/** Whether the last day that is written down has no count yet. */
export function lastDayOpen(sheet: Sheet): boolean {
  const last = dayTexts(sheet).length - 1;
  return !Object.entries(sheet.cells).some(([key, text]) => key.startsWith(`${last}|`) && text.trim() !== "");
}

/** The entry as the registry's shape takes it; what is not readable is sent as it stands, so that it is refused by name. */
export function givenEntry(
  lotId: string,
  fields: Fields,
  sheet: Sheet,
  replicates: readonly EntryReplicate[],
): unknown {
  const words = (name: string) => (fields[name] ?? "").trim() || null;
  const grams = (fields["seedsUsed.grams"] ?? "").trim().replace(",", ".");
  const book = fields.seedsUsed ?? "no";
  return {
    lotId,
    name: words("name"),
    on: fields.on ?? "",
    basis: words("basis"),
    method: words("method"),
    temperature: words("temperature"),
    preTreatment: words("preTreatment"),
    finalCountDay: lastDayTyped(sheet),
    note: words("note"),
    replicates,
    seedsUsed: book === "weighed" ? { book, grams: /^\d+(\.\d+)?$/.test(grams) ? Number(grams) : grams } : { book },
  };
}
