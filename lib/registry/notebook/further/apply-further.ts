import { uuidv7 } from "uuidv7";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { brokenRule, isTaken } from "../../change-set/refused-by-database";
import type { ChangeWriter } from "../../change-set/writer";
import type { Fields } from "./cells";
import { type FurtherDifference, keyText } from "./difference-further";
import { fieldsOf } from "./fields-of-row";
import type { FurtherRow } from "./further-table";
import { harvestName, type NameBook, nameBook, neighbourName, traitName, withKeeper } from "./names";
import { cellsOf, storedRows } from "./read-further";
import type { FurtherSpec } from "./spec";

/** Writes what further files add and change, after the files that they build on stand. Refused with file, line and column where a cell is wrong. */
export async function applyFurther(
  change: ChangeWriter,
  differences: readonly FurtherDifference[],
): Promise<Outcome<null>> {
  const names = await nameBook(change.tx);
  for (const difference of differences) {
    const refusals = await applyOne(change, difference, names);
    if (refusals.length > 0) return refused(...refusals);
  }
  return accepted(null);
}

async function applyOne(
  change: ChangeWriter,
  { spec, added, changed }: FurtherDifference,
  names: NameBook,
): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  const read = (row: FurtherRow): Fields | null => {
    const outcome = fieldsOf(spec, row, names);
    if (outcome.ok) return outcome.value;
    refusals.push(...outcome.refusals);
    return null;
  };
  const said = added.flatMap((row): Fields[] => {
    const fields = read(row);
    return fields ? [fields] : [];
  });
  const standing = await spec.completes?.(change.tx, said);
  const made = said.flatMap((fields, place) => {
    if (standing?.has(place)) return [];
    const record: Fields = { id: uuidv7(), ...withoutNull(fields), ...spec.fixed?.(fields, names) };
    remember(spec, record, names);
    return [record];
  });
  const cleared = Object.fromEntries((spec.clears ?? []).map((field) => [field, null]));
  // The specification names table and fields; their fit is held by a test that brings every file out and in.
  const fault = await written(spec.file, async () => {
    await change.createAll(spec.table, made as never);
    for (const [place, id] of standing ?? [])
      await change.update(spec.table, id, { ...withoutNull(said[place] ?? {}), ...cleared });
  });
  if (fault) return [...refusals, fault];

  if (changed.length > 0) {
    const ids = new Map(
      (await storedRows(change.tx, spec)).map((record) => [
        keyText(spec, { cells: cellsOf(spec, record, names) }),
        record.id,
      ]),
    );
    for (const row of changed) {
      const fields = read(row);
      const id = spec.identity.by === "details" ? (fields?.id as string | undefined) : ids.get(keyText(spec, row));
      if (!fields || !id) continue;
      const fault = await written(spec.file, () =>
        change.update(spec.table, id, withoutNull({ ...fields, id: undefined })),
      );
      if (fault) return [...refusals, fault];
    }
  }
  return refusals;
}

/**
 * Writes what a file gives. What the database refuses of it is a refusal with the file, since the line is not known: a record that may stand once alone and
 * stands elsewhere already, or a cell that its column cannot hold. Cells are checked before, so that this is the last net.
 */
async function written(file: string, work: () => Promise<unknown>): Promise<Refusal | null> {
  try {
    await work();
    return null;
  } catch (error) {
    if (isTaken(error)) {
      const wrong = "names a record that stands already, here or in another file of the folder";
      return refusal("stands-already", [file, 0, ""], file, wrong, "leave out the line of what stands already");
    }
    const rule = brokenRule(error);
    if (rule === null) throw error;
    const wrong = `has a cell that cannot be (${rule.replaceAll("_", " ")})`;
    return refusal("cannot-be", [file, 0, ""], file, wrong, "write it as the other lines of its column");
  }
}

function withoutNull(fields: Fields): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null && value !== undefined));
}

/** The name of one more record of a kind that is told apart by its turn. */
function freeName(names: NameBook, kind: "transfer" | "harvest" | "story", name: string): string {
  if (names.idOf(kind, name) === null) return name;
  let count = 2;
  while (names.idOf(kind, `${name} (${count})`) !== null) count += 1;
  return `${name} (${count})`;
}

function remember(spec: FurtherSpec, record: Fields, names: NameBook): void {
  const keeper = typeof record.stewardId === "string" ? names.nameOf("steward", record.stewardId) : null;
  if (spec.table === "Place") names.add("place", String(record.id), withKeeper(String(record.name), keeper));
  if (spec.table === "Plot") names.add("plot", String(record.id), withKeeper(String(record.name), keeper));
  if (spec.table === "Strain")
    names.add(
      "strain",
      String(record.id),
      withKeeper(String(record.name), names.nameOf("variety", String(record.varietyId))),
    );
  if (spec.table === "GerminationTest") names.add("test", String(record.id), String(record.name));
  if (spec.table === "Trait") {
    const [variety, crop] = [
      names.nameOf("variety", String(record.varietyId)),
      names.nameOf("crop", String(record.cropId)),
    ];
    names.add("trait", String(record.id), traitName(String(record.name), variety, crop, String(record.version)));
  }
  if (spec.table === "Transfer") {
    const name = `${record.kind} ${names.nameOf("lot", String(record.lotId)) ?? ""} ${record.on}`;
    names.add("transfer", String(record.id), freeName(names, "transfer", name));
  }
  if (spec.table === "Story") names.add("story", String(record.id), freeName(names, "story", String(record.words)));
  if (spec.table === "Harvest") {
    const [lot, growOut] = [
      names.nameOf("lot", String(record.lotId)),
      names.nameOf("grow-out", String(record.growOutId)),
    ];
    names.add("harvest", String(record.id), freeName(names, "harvest", harvestName(lot, growOut)));
  }
  if (spec.table === "NeighbourSource") {
    const [growOut, plot] = [
      names.nameOf("grow-out", String(record.growOutId)),
      names.nameOf("plot", String(record.plotId)),
    ];
    let turn = 1;
    const name = () => neighbourName(growOut, plot, String(record.what), turn);
    while (names.idOf("neighbour", name()) !== null) turn += 1;
    names.add("neighbour", String(record.id), name());
  }
  if (spec.table === "Crop") names.add("crop", String(record.id), String(record.commonName));
}
