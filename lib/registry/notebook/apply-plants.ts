import { uuidv7 } from "uuidv7";
import type { PlantRow } from "@/lib/schemas/notebook/rows";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import type { TableDifference } from "./difference";
import { type Ids, idOf, storedExtra } from "./ids";

const prefix = "score:";
const plainNumber = /^-?\d+(?:\.\d+)?$/;

export async function applyPlants(change: ChangeWriter, { added }: TableDifference<"plants">, ids: Ids): Promise<void> {
  const traits = await traitIds(change, added);
  const made = added.map((row) => ({ row, id: uuidv7() }));
  await change.createAll(
    "Plant",
    made.map(({ row: { cells, extra }, id }) => ({
      id,
      growOutId: idOf(ids.growOuts, cells.grow_out),
      name: sameName(cells.plant),
      nameKey: foldName(cells.plant),
      cell: cells.cell,
      kept: cells.kept === null ? null : cells.kept === "yes",
      seedGrams: cells.seed_grams,
      extra: storedExtra(extra),
    })),
  );
  const scores = made.flatMap(({ row, id }) =>
    scoresOf(row).map(([trait, text]) => ({
      id: uuidv7(),
      plantId: id,
      traitId: traits.get(sameName(trait)) as string,
      value: plainNumber.test(text) ? Number(text) : null,
      text: plainNumber.test(text) ? null : text,
    })),
  );
  await change.createAll("Score", scores);
}

function scoresOf(row: PlantRow): [string, string][] {
  return Object.entries(row.extra).flatMap(([column, text]) =>
    column.startsWith(prefix) && text !== "" ? [[column.slice(prefix.length), text] as [string, string]] : [],
  );
}

/** Traits by name; one that is new is a measure where all its scores are numbers, else a category. Which end is good nobody has said. */
async function traitIds(change: ChangeWriter, rows: readonly PlantRow[]): Promise<Map<string, string>> {
  const known = await change.tx.trait.findMany({ where: { varietyId: null, cropId: null, next: null } });
  const ids = new Map(known.map((trait) => [sameName(trait.name), trait.id]));
  const numbers = new Map<string, boolean>();
  for (const row of rows) {
    for (const [trait, text] of scoresOf(row)) {
      const name = sameName(trait);
      if (!ids.has(name)) numbers.set(name, (numbers.get(name) ?? true) && plainNumber.test(text));
    }
  }
  const made = [...numbers].map(([name, allNumbers]) => ({
    id: uuidv7(),
    name,
    nameKey: foldName(name),
    kind: allNumbers ? "measure" : "category",
  }));
  await change.createAll("Trait", made);
  for (const trait of made) ids.set(trait.name, trait.id);
  return ids;
}
