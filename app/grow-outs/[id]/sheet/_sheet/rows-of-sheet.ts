import { markShown, type PlantOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { plantCellText } from "@/lib/registry/plants/cells-of-plant";
import { tagsOnRecord } from "@/lib/registry/plants/tags-on-record";
import { plantsMeant } from "@/lib/schemas/plants/add-plants";
import { nextNumber } from "@/lib/schemas/plants/next-number";
import { mostRowsOfSheet, type SheetAsked, type SheetOrder } from "@/lib/schemas/plants/sheet-asked";
import type { SheetRow } from "@/lib/schemas/plants/sheet-rows";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** A row as it is printed. Earlier scores are left out: who sees the old score gives it again. */
export interface PrintedRow extends SheetRow {
  readonly intent: string | null;
}

export const rowsUnlessSaid = 30;

/** The rows that are asked for: the plants on record that still stand, the next free numbers, or rows whose tags are written by hand. */
export function rowsOfSheet(plants: readonly PlantOfGrowOut[], asked: SheetAsked): Outcome<readonly PrintedRow[]> {
  const standing = plants.filter(stillStands);
  const down = asked.down ?? (standing.length > 0 ? "record" : "next");
  if (down === "record") return accepted(inOrder(standing, asked.order ?? "tag").map(rowOfPlant));
  const many = asked.many ?? rowsUnlessSaid;
  if (many > mostRowsOfSheet) {
    const wrong = refusal(
      "too-many",
      ["many"],
      many,
      "is more than a sheet holds",
      `ask for ${mostRowsOfSheet} or less`,
    );
    return refused(wrong);
  }
  const from = asked.from ?? nextNumber(tagsOnRecord(plants), asked.letters ?? "");
  const run = plantsMeant({
    ...{ tag: null, letters: asked.letters, from, to: from + many - 1, cell: asked.cell, perCell: asked.perCell },
  });
  if (!run.ok) return run;
  return accepted(run.value.map(({ tag, cell }) => ({ tag: down === "hand" ? null : tag, cell, intent: null })));
}

/** Plants that cannot be looked at any more: what became of them is written. */
export function goneFromField(plants: readonly PlantOfGrowOut[]): number {
  return plants.filter((plant) => !stillStands(plant)).length;
}

function stillStands(plant: PlantOfGrowOut): boolean {
  return !["lost", "eaten", "rogued later"].includes(markShown(plant)?.fate ?? "");
}

function rowOfPlant(plant: PlantOfGrowOut): PrintedRow {
  const mark = markShown(plant);
  return { tag: plantCellText("tag", plant, mark), cell: plant.cell, intent: mark?.intent ?? null };
}

const byNumber = new Intl.Collator("en", { numeric: true });

function inOrder(plants: readonly PlantOfGrowOut[], order: SheetOrder): readonly PlantOfGrowOut[] {
  if (order === "entry") return plants;
  const tagOf = (plant: PlantOfGrowOut) => plantCellText("tag", plant, markShown(plant));
  const byTag = (left: PlantOfGrowOut, right: PlantOfGrowOut) => byNumber.compare(tagOf(left), tagOf(right));
  if (order === "tag") return plants.toSorted(byTag);
  // plants of which nobody said where they stand come behind the others
  const words = (text: string | null) => text ?? "\uffff";
  return plants.toSorted(
    (left, right) =>
      byNumber.compare(words(left.cell), words(right.cell)) ||
      byNumber.compare(words(left.row), words(right.row)) ||
      (left.position ?? Number.MAX_VALUE) - (right.position ?? Number.MAX_VALUE) ||
      byTag(left, right),
  );
}
