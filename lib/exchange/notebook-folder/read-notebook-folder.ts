import { sameName } from "@/lib/registry/names/fold-name";
import { notebookTables, type TableName } from "@/lib/schemas/notebook/columns";
import { emptyNotebook, type Notebook, type RowOf } from "@/lib/schemas/notebook/rows";
import { type CropProfile, cropList } from "@/lib/science/crops/crop-profile";
import type { Check } from "./check";
import { checkCycles } from "./check-cycles";
import { checkGrowOuts } from "./check-grow-outs";
import { checkLedger } from "./check-ledger";
import { checkLineage } from "./check-lineage";
import { checkLots } from "./check-lots";
import { checkPlants } from "./check-plants";
import { checkTests } from "./check-tests";
import { CropBook } from "./crop-book";
import { absentTable, type DraftNotebook, type DraftTable } from "./draft";
import { type Entry, layOver, type NamedEntries, nameEntries } from "./entries";
import { type Finding, Findings } from "./finding";
import { joinLines } from "./join-lines";
import { readTable } from "./read-table";
import { resolveReferences } from "./resolve-references";
import { reportUnknownNames } from "./unknown-names";
import { warnImplausible } from "./warn-implausible";

export interface ReadingOptions {
  /** what the registry has already; nothing unless told */
  readonly existing?: Notebook;
  /** the crops that a variety may name, those of the registry included; the crop list unless told */
  readonly crops?: readonly CropProfile[];
}

export interface NotebookReading {
  /** sorted by file and line; with any of them the folder may not go in */
  readonly faults: readonly Finding[];
  readonly warnings: readonly Finding[];
  /**
   * The folder's rows, names written as the records they belong to write them, cells that the folder leaves empty filled from
   * the registry's record. Null where there are faults.
   */
  readonly notebook: Notebook | null;
}

/**
 * Reads the seven files of a notebook folder and checks the whole that they would make with what the registry has.
 * Takes the bytes by file name; other names are not looked at. Never throws for what stands in a file.
 */
export function readNotebookFolder(
  files: ReadonlyMap<string, Uint8Array>,
  options: ReadingOptions = {},
): NotebookReading {
  const findings = new Findings();
  const existing = options.existing ?? emptyNotebook();
  const drafts = readDrafts(files, findings);
  const { entries, nameless } = nameEntries(drafts, existing, findings);
  const unknown = resolveReferences(drafts, entries, findings);
  reportUnknownNames(unknown, drafts, entries, nameless, findings);
  layAllOver(entries);
  const lines = {
    plants: joinLines("plants", drafts.plants, existing.plants),
    tests: joinLines("tests", drafts.tests, existing.tests),
    ledger: joinLines("ledger", drafts.ledger, existing.ledger),
  };
  const profiles = readCrops(entries, new CropBook(options.crops ?? cropList()), findings);
  const check: Check = { drafts, existing, entries, lines, profiles, findings };
  checkLots(check);
  checkGrowOuts(check);
  checkCycles(check);
  const seed = checkPlants(check);
  checkTests(check);
  const balances = checkLedger(check);
  checkLineage(check, seed);
  warnImplausible(check, balances);
  const { faults, warnings } = findings.sorted();
  return { faults, warnings, notebook: faults.length > 0 ? null : asNotebook(check) };
}

function readDrafts(files: ReadonlyMap<string, Uint8Array>, findings: Findings): DraftNotebook {
  const read = <Table extends TableName>(table: Table): DraftTable<Table> => {
    const bytes = files.get(notebookTables[table].file);
    return bytes === undefined ? absentTable() : readTable(table, bytes, findings);
  };
  return {
    stewards: read("stewards"),
    varieties: read("varieties"),
    growOuts: read("growOuts"),
    lots: read("lots"),
    plants: read("plants"),
    tests: read("tests"),
    ledger: read("ledger"),
  };
}

function layAllOver(entries: NamedEntries): void {
  for (const entry of entries.stewards.bearers()) layOver(entry);
  for (const entry of entries.varieties.bearers()) layOver(entry);
  for (const entry of entries.growOuts.bearers()) layOver(entry);
  for (const entry of entries.lots.bearers()) layOver(entry);
}

/** The profile of each variety's crop; a crop of the steward's own gets an empty one, with a warning. */
function readCrops(entries: NamedEntries, book: CropBook, findings: Findings): Map<string, CropProfile | null> {
  const profiles = new Map<string, CropProfile | null>();
  for (const entry of entries.varieties.bearers()) {
    const { variety, crop } = entry.cells;
    if (variety === null) continue;
    const known = crop === null ? null : book.find(crop);
    if (crop !== null && known === undefined && entry.draft) {
      const meant = book.suggestions(crop);
      const sentence = `"${crop}" is not in the crop list; it becomes a crop of your own, of which nothing is known yet`;
      const whole = meant.length === 0 ? sentence : `${sentence}: did you mean ${meant.join(" or ")}?`;
      findings.warn({ ...entry.draft.origin, column: "crop" }, "crop-of-own", whole);
    }
    const profile = crop === null ? null : (known ?? book.add(crop));
    profiles.set(sameName(variety), profile);
    if (profile) entry.cells = { ...entry.cells, crop: book.nameOf(profile) };
  }
  return profiles;
}

/** The folder's rows as they are to go in: nothing in them has a fault. */
function asNotebook(check: Check): Notebook {
  const { entries, lines } = check;
  const rows = <Table extends TableName>(table: readonly Entry<Table>[]): RowOf<Table>[] =>
    table.flatMap(({ cells, extra, draft, record }) => {
      if (draft === null) return [];
      // Every needed cell is there: a missing one is a fault.
      const whole = cells as RowOf<Table>["cells"];
      return [{ cells: whole, extra, origin: draft.origin, ...(record?.id === undefined ? {} : { id: record.id }) }];
    });
  return {
    stewards: rows(entries.stewards.bearers()),
    varieties: rows(entries.varieties.bearers()),
    growOuts: rows(entries.growOuts.bearers()),
    lots: rows(entries.lots.bearers()),
    plants: rows(lines.plants),
    tests: rows(lines.tests),
    ledger: rows(lines.ledger),
  };
}
