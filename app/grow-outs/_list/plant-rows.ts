import type { Cell, Column, Row } from "@/components/tables";
import { plainNumber } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { PlantOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";

const firstColumns: readonly Column[] = [
  { key: "plant", name: "Plant", kind: "words", phone: "lead" },
  { key: "cell", name: "Cell", kind: "words" },
  { key: "kept", name: "Kept", kind: "words" },
  { key: "seed", name: "Seed", kind: "count", phone: "aside" },
  { key: "marks", name: "Marks", kind: "words", phone: "none" },
];

/** The columns of a grow-out's plants: one a trait that was scored; marks only where a plant has one. */
export function plantColumns(plants: readonly PlantOfGrowOut[], traits: readonly string[]): readonly Column[] {
  const marked = plants.some((plant) => plant.marks.length > 0);
  return [
    ...firstColumns.filter((column) => column.key !== "marks" || marked),
    ...traits.map(
      (trait): Column => ({ key: `score:${trait}`, name: trait, kind: "count", phone: "under", phoneName: trait }),
    ),
  ];
}

/** A plant as a row. What was not scored is unknown, never nought. */
export function plantRow(plant: PlantOfGrowOut, traits: readonly string[], units: UnitSettings): Row {
  const scores = traits.map((trait): readonly [string, Cell] => {
    const score = plant.scores.get(trait);
    if (score === undefined) return [`score:${trait}`, null];
    if (score.value === null) return [`score:${trait}`, score.text ?? ""];
    const words = `${plainNumber(score.value, 2)}${score.unit ? `\u00a0${score.unit}` : ""}`;
    return [`score:${trait}`, { kind: "count", words, sort: score.value }];
  });
  const seed: Cell =
    plant.seedGrams === null ? null : { kind: "count", words: weight(plant.seedGrams, units), sort: plant.seedGrams };
  return {
    id: plant.id,
    cells: {
      plant: plant.name,
      cell: plant.cell ?? "",
      kept: plant.kept === null ? null : plant.kept ? "yes" : "no",
      seed,
      marks: plant.marks.map((mark) => [mark.tag, mark.intent, mark.words].filter(Boolean).join(" ")).join("; "),
      ...Object.fromEntries(scores),
    },
  };
}
