import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { plantsOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { savePlants } from "@/lib/registry/plants/save-plants";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { savePlantsSchema, traitColumn } from "@/lib/schemas/plants/save-plants";
import { granted } from "../../setup/registry";
import { aVariety } from "../lots/lots-in-tests";

export const owner = ownerHere();

/** A grow-out of a variety with two traits: vigour 1 to 9, and red silk yes or no. */
export async function aGrowOut(db: Database, name = "Mill 2024") {
  const varietyId = await aVariety(db, `Mere Flint of ${name}`, "maize-field");
  const id = uuidv7();
  await db.write.growOut.create({ data: { id, name, nameKey: name.toLowerCase(), varietyId } });
  const define = async (input: Record<string, string>) =>
    granted(await defineTrait(db, owner, varietyId, { scope: "variety", ...input })).value.traitId;
  const vigour = await define({ name: "vigour", kind: "scale", direction: "higher", steps: "1 = weak\n9 = strong" });
  const silk = await define({ name: "silk red", kind: "yes-no" });
  return { id, varietyId, vigour: traitColumn(vigour), silk: traitColumn(silk), vigourId: vigour, silkId: silk };
}

type Cells = Readonly<Record<string, string>>;

/** A row of the grid as it is sent: what was typed, and what stood there ("" unless told). */
export function row(key: string, typed: Cells, was: Cells = {}, added = false) {
  const cells = Object.entries(typed).map(([column, text]) => [column, { text, was: was[column] ?? "" }]);
  return { key, added, cells: Object.fromEntries(cells) };
}

/** Stores rows of the grid. */
export async function save(
  db: Database,
  growOutId: string,
  rows: readonly unknown[],
  { on = "2024-08-20", stewardId = "" } = {},
) {
  const input = granted(parseForm(savePlantsSchema("north"), { on, stewardId, rows }));
  return savePlants(db, owner, growOutId, input, "north");
}

/** The grow-out's plants in short: tag-bearing name, cell, intent and tag of the standing mark, standing scores by trait. */
export async function plantsInShort(db: Database, growOutId: string) {
  const { plants, traits } = await plantsOfGrowOut(db, growOutId);
  return plants.map((plant) => ({
    name: plant.name,
    cell: plant.cell,
    marks: plant.marks.map((mark) => `${mark.tag} ${mark.intent}`),
    scores: Object.fromEntries(
      traits.flatMap(({ id, newest }) => {
        const scores = plant.scores.get(id)?.map((score) => score.text ?? score.value);
        return scores ? [[newest.name, scores]] : [];
      }),
    ),
  }));
}
