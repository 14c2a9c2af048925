import { uuidv7 } from "uuidv7";
import { scorePrefix } from "@/lib/schemas/notebook/columns";
import { readDecimal, writeDecimal } from "@/lib/schemas/notebook/decimal";
import type { PlantRow } from "@/lib/schemas/notebook/rows";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import { traitsByName } from "../traits/traits-by-name";
import type { TableDifference } from "./difference";
import type { FurtherRow } from "./further/further-table";
import { type Ids, idOf, storedExtra } from "./ids";

const plainNumber = /^-?\d+(?:\.\d+)?$/;

interface Told {
  readonly plantId: string;
  readonly varietyId: string;
  readonly trait: string;
  readonly text: string;
}

/**
 * Writes plants and their scores. A score of which the folder's scores.csv says more (`scores`) is left to that file, so that it stands once
 * and in its order.
 */
export async function applyPlants(
  change: ChangeWriter,
  { added }: TableDifference<"plants">,
  ids: Ids,
  scores: readonly FurtherRow[],
): Promise<void> {
  const made = added.map((row) => ({ row, id: uuidv7(), growOutId: idOf(ids.growOuts, row.cells.grow_out) }));
  await change.createAll(
    "Plant",
    made.map(({ row: { cells, extra }, id, growOutId }) => ({
      id,
      growOutId,
      name: sameName(cells.plant),
      nameKey: foldName(cells.plant),
      cell: cells.cell,
      kept: cells.kept === null ? null : cells.kept === "yes",
      seedGrams: cells.seed_grams,
      extra: storedExtra(extra),
    })),
  );
  const saidElsewhere = new Set(
    scores.map(({ cells }) =>
      cellName(cells.grow_out, cells.plant, cells.trait, cells.words || plainDigits(cells.value)),
    ),
  );
  const varieties = new Map(
    made.length === 0
      ? []
      : (await change.tx.growOut.findMany({ select: { id: true, varietyId: true } })).map((each) => [
          each.id,
          each.varietyId,
        ]),
  );
  const all = made.flatMap(({ row, id, growOutId }) =>
    scoresOf(row).map(([trait, text]): Told & { cell: string } => ({
      plantId: id,
      varietyId: varieties.get(growOutId) ?? "",
      trait,
      text,
      cell: cellName(row.cells.grow_out, row.cells.plant, trait, text),
    })),
  );
  const traits = await traitIds(change, all);
  const told = all.filter(({ cell }) => !saidElsewhere.has(cell));
  await change.createAll(
    "Score",
    told.map(({ plantId, varietyId, trait, text }) => ({
      id: uuidv7(),
      plantId,
      traitId: traits(varietyId, trait),
      value: plainNumber.test(text) ? Number(text) : null,
      text: plainNumber.test(text) ? null : text,
    })),
  );
}

function cellName(growOut = "", plant = "", trait = "", score = ""): string {
  return JSON.stringify([growOut, plant, trait, score].map(sameName));
}

function plainDigits(text = ""): string {
  const read = readDecimal(text);
  return read.ok ? writeDecimal(read.value) : text;
}

function scoresOf(row: PlantRow): [string, string][] {
  return Object.entries(row.extra).flatMap(([column, text]) =>
    column.startsWith(scorePrefix) && text !== "" ? [[column.slice(scorePrefix.length), text] as [string, string]] : [],
  );
}

/**
 * Traits by name: those that are defined for the variety, its crop or all; one that nobody defined is a measure where all its scores are
 * numbers, else a category, and shared. Which end is good nobody has said.
 */
async function traitIds(
  change: ChangeWriter,
  told: readonly Told[],
): Promise<(varietyId: string, name: string) => string> {
  const known = await traitsByName(change.tx);
  const numbers = new Map<string, boolean>();
  for (const { varietyId, trait, text } of told) {
    if (known(varietyId, trait) !== null) continue;
    const name = sameName(trait);
    numbers.set(name, (numbers.get(name) ?? true) && plainNumber.test(text));
  }
  const made = [...numbers].map(([name, allNumbers]) => ({
    id: uuidv7(),
    name,
    nameKey: foldName(name),
    kind: allNumbers ? "measure" : "category",
  }));
  await change.createAll("Trait", made);
  const ids = new Map(made.map((trait) => [trait.name, trait.id]));
  return (varietyId, name) => known(varietyId, name) ?? (ids.get(sameName(name)) as string);
}
