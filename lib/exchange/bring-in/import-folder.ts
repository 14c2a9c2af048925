import type { Actor } from "@/lib/access/actor";
import { may } from "@/lib/access/permissions";
import { type Performed, perform } from "@/lib/registry/change-set/perform";
import { cropProfiles } from "@/lib/registry/crops/crop-profiles";
import type { Client, Database, Transaction } from "@/lib/registry/handles";
import { applyDifference } from "@/lib/registry/notebook/apply-difference";
import { changeLines, type Tally, tallyOf, titleOf } from "@/lib/registry/notebook/describe-difference";
import { type Difference, differenceOf, isEmpty } from "@/lib/registry/notebook/difference";
import { applyFurther } from "@/lib/registry/notebook/further/apply-further";
import { descentFaults } from "@/lib/registry/notebook/further/check-descent";
import { checkFurther } from "@/lib/registry/notebook/further/check-further";
import { type FurtherDifference, furtherDifference } from "@/lib/registry/notebook/further/difference-further";
import type { FurtherTable } from "@/lib/registry/notebook/further/further-table";
import { furtherSpecs } from "@/lib/registry/notebook/further/specs";
import { linkTransfers } from "@/lib/registry/notebook/link-transfers";
import { readNotebook } from "@/lib/registry/notebook/read-notebook";
import { accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { byKnownNames, hasTables } from "../notebook-folder/files-by-name";
import { compareFindings, type Finding } from "../notebook-folder/finding";
import { type FurtherReading, readFurtherFiles } from "../notebook-folder/read-further-files";
import { readNotebookFolder } from "../notebook-folder/read-notebook-folder";
import { type PictureSource, picturesAmong, picturesFile, picturesOfFolder } from "../pictures/pictures-of-folder";

/** What bringing a folder in would do. With faults it would do nothing. */
export interface FolderCheck {
  readonly faults: readonly Finding[];
  readonly warnings: readonly Finding[];
  /** by kind of record; empty where there are faults */
  readonly tally: readonly Tally[];
  /** a sentence for each record that would change */
  readonly changes: readonly string[];
  /** true where a record that is there would change */
  readonly changesStanding: boolean;
  /** true where the registry says all of it already */
  readonly nothingNew: boolean;
}

type Files = ReadonlyMap<string, Uint8Array>;

interface Checked extends FolderCheck {
  readonly difference: Difference | null;
  readonly further: readonly FurtherTable[];
}

/** Checks a folder together with what the registry has; writes nothing. `pictures`: where the files are that photos.csv names. */
export async function checkFolder(
  db: Database,
  files: Files,
  pictures: PictureSource = picturesAmong(files),
): Promise<FolderCheck> {
  const named = byKnownNames(files);
  const further = await withPictures(db, readFurtherFiles(named), pictures, false);
  const { difference: _difference, further: _further, ...check } = await checked(db.read, named, further);
  return check;
}

/**
 * Brings a folder in, whole or not at all, as one change set. It is checked inside the transaction, so that nothing slips in between
 * looking and writing. Refused with file, line and column where there is a fault. A folder that says nothing new leaves no trace.
 */
export async function importFolder(
  db: Database,
  actor: Actor,
  files: Files,
  onWritten: (records: number) => void = () => {},
  pictures: PictureSource = picturesAmong(files),
): Promise<Outcome<Performed<FolderCheck>>> {
  const allowed = may(actor, "import");
  if (!allowed.ok) return allowed;
  // Pictures take their time: they stand in their places before the transaction begins, and a file that no row comes to name harms nothing.
  const named = byKnownNames(files);
  const reading = await withPictures(db, readFurtherFiles(named), pictures, true);
  const operation = { action: "import" as const, kind: "import" as const, title: "Brought in" };
  return perform(db, actor, operation, async (change, tx) => {
    const check = await checked(tx, named, reading);
    if (!check.difference) return refused(...check.faults.map(asRefusal));
    if (check.nothingNew) return accepted(check);
    change.title = `Brought in: ${titleOf(check.difference) || "further records"}`;
    change.onWritten = onWritten;
    const [early, late] = [true, false].map((before) =>
      check.further.filter((table) => isBeforePlants(table) === before),
    ) as [FurtherTable[], FurtherTable[]];
    // Plots and crops that the seven files made stand now, so that the further files change them instead of making them again.
    const further = async (tables: readonly FurtherTable[]) =>
      applyFurther(change, await furtherDifference(tx, tables));
    const applied = await applyDifference(change, check.difference, {
      beforePlants: () => further(early),
      scores: late.find((table) => table.file === "scores.csv")?.rows ?? [],
    });
    const rest = applied.ok ? await further(late) : applied;
    if (!rest.ok) return rest;
    const circular = await descentFaults(tx, check.further);
    if (circular.length > 0) return refused(...circular.map(asFinding).map(asRefusal));
    await linkTransfers(change);
    return accepted(check);
  });
}

function isBeforePlants({ file }: FurtherTable): boolean {
  return furtherSpecs.some((spec) => spec.file === file && spec.beforePlants);
}

/** The further files with each picture by the name under which it is stored here. */
async function withPictures(
  db: Database,
  reading: FurtherReading,
  source: PictureSource,
  keep: boolean,
): Promise<FurtherReading> {
  const table = reading.tables.find((each) => each.file === picturesFile);
  if (!table) return reading;
  const pictures = await picturesOfFolder(db, table, source, keep);
  return {
    tables: reading.tables.map((each) => (each === table ? pictures.table : each)),
    faults: [...reading.faults, ...pictures.faults],
    warnings: [...reading.warnings, ...pictures.warnings],
  };
}

async function checked(db: Client | Transaction, files: Files, further: FurtherReading): Promise<Checked> {
  const existing = await readNotebook(db);
  const reading = readNotebookFolder(files, { existing, crops: await cropProfiles(db) });
  const none = hasTables(files) ? [] : [noTables];
  const inFurther = reading.notebook ? await checkFurther(db, reading.notebook, further.tables) : [];
  const faults = [...none, ...reading.faults, ...further.faults, ...inFurther.map(asFinding)].sort(compareFindings);
  const warnings = [...reading.warnings, ...further.warnings].sort(compareFindings);
  if (faults.length > 0 || !reading.notebook) {
    return {
      faults,
      warnings,
      tally: [],
      changes: [],
      changesStanding: false,
      nothingNew: false,
      difference: null,
      further: [],
    };
  }
  const difference = differenceOf(reading.notebook, existing);
  const more = await furtherDifference(db, further.tables);
  return {
    faults,
    warnings,
    tally: [...tallyOf(difference), ...more.map(furtherTally)],
    changes: [...changeLines(difference), ...more.flatMap(furtherChangeLines)],
    changesStanding:
      tallyOf(difference).some((each) => each.changed > 0) || more.some((each) => each.changed.length > 0),
    nothingNew: isEmpty(difference) && more.every((each) => each.added.length === 0 && each.changed.length === 0),
    difference,
    further: further.tables,
  };
}

const noTables: Finding = {
  severity: "fault",
  code: "no-tables",
  file: "the folder",
  line: null,
  column: null,
  sentence:
    "none of the files of a notebook stands in it; take the one in which varieties.csv, lots.csv and the others lie",
};

function furtherTally({ spec, added, changed, same }: FurtherDifference): Tally {
  const noun = spec.identity.by === "details" ? `more of ${many(spec.noun)}` : many(spec.noun);
  return { noun, file: spec.file, added: added.length, changed: changed.length, same };
}

/** "crop of one's own" gives "crops of one's own": the noun at the head takes the ending. */
function many(noun: string): string {
  const [, head = noun, rest = ""] = /^(.*?)((?: of| from| in| or) .*)?$/.exec(noun) ?? [];
  return `${/[^aeiou]y$/.test(head) ? `${head.slice(0, -1)}ie` : head}s${rest}`;
}

function furtherChangeLines({ spec, changed }: FurtherDifference): string[] {
  const [first] = spec.columns;
  return first
    ? changed.map((row) => `${spec.noun} ${row.cells[first.column] ?? ""}: ${spec.file} says more of it or otherwise`)
    : [];
}

function asFinding({ code, path: [file, line, column], sentence }: Refusal): Finding {
  return { severity: "fault", code, file: String(file), line: Number(line), column: String(column), sentence };
}

function asRefusal(finding: Finding): Refusal {
  return {
    code: finding.code,
    path: [finding.file, finding.line ?? 0, finding.column ?? ""],
    given: null,
    needed: "",
    sentence: `${finding.file}${finding.line === null ? "" : `:${finding.line}`}: ${finding.column ? `${finding.column}: ` : ""}${finding.sentence}`,
  };
}
