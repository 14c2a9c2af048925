import type { Cell, Column, Row } from "@/components/tables";
import { scoreInWords } from "@/lib/display/scores";
import { type UnitSettings, weight } from "@/lib/display/units";
import { markShown, type PlantOfGrowOut, type StandingScore } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { plantCellText } from "@/lib/registry/plants/cells-of-plant";
import type { TraitLine } from "@/lib/registry/traits/list-traits";
import { traitColumn } from "@/lib/schemas/plants/save-plants";
import type { TraitKind } from "@/lib/schemas/traits/trait";

type People = ReadonlyMap<string, string>;

const firstColumns: readonly Column[] = [
  { key: "plant", name: "Plant", kind: "words", phone: "lead" },
  { key: "intent", name: "Intent", kind: "words", phone: "aside" },
  { key: "cell", name: "Cell", kind: "words", phoneName: "cell" },
  { key: "kept", name: "Kept", kind: "words", phoneName: "kept" },
  { key: "seed", name: "Seed", kind: "count", phoneName: "seed" },
  { key: "words", name: "Words", kind: "words" },
];

/** The columns of a grow-out's plants: one a trait that was scored; of the others those in which anything stands. */
export function plantColumns(plants: readonly PlantOfGrowOut[], traits: readonly TraitLine[]): readonly Column[] {
  const said: Readonly<Record<string, (plant: PlantOfGrowOut) => boolean>> = {
    plant: () => true,
    intent: (plant) => plant.marks.length > 0,
    cell: (plant) => plant.cell !== null,
    kept: (plant) => plant.kept !== null,
    seed: (plant) => plant.seedGrams !== null,
    words: (plant) => plant.marks.some((mark) => mark.words ?? mark.fate),
  };
  return [
    ...firstColumns.filter((column) => plants.some((plant) => said[column.key]?.(plant))),
    ...traits.map(
      ({ id, newest: { name, kind } }): Column => ({
        key: traitColumn(id),
        name,
        kind: numeric(id, kind, plants) ? "count" : "words",
        phone: "under",
        phoneName: name,
      }),
    ),
  ];
}

/** Whether a trait's scores are figures that can stand under one another: no words, and no two people's side by side. */
function numeric(id: string, kind: TraitKind, plants: readonly PlantOfGrowOut[]): boolean {
  if (kind === "yes-no" || kind === "category" || kind === "date") return false;
  return plants.every(({ scores }) => {
    const standing = scores.get(id) ?? [];
    return standing.length < 2 && standing.every(({ text }) => text === null);
  });
}

/** A plant as a row. What was not scored is unknown, never nought; two people's marks and scores stand side by side, each with who gave it. */
export function plantRow(
  plant: PlantOfGrowOut,
  traits: readonly TraitLine[],
  units: UnitSettings,
  people: People,
  said: Saying = scoreInWords,
): Row {
  const seed: Cell =
    plant.seedGrams === null ? null : { kind: "count", words: weight(plant.seedGrams, units), sort: plant.seedGrams };
  const several = plant.marks.length > 1;
  const intents = plant.marks.map((mark) => (several ? by(mark.intent, mark.stewardId, people) : mark.intent));
  const words = plant.marks.flatMap((mark) => [mark.words, mark.fate].filter(Boolean));
  return {
    id: plant.id,
    cells: {
      plant: plantCellText("tag", plant, markShown(plant)),
      intent: intents.join("; "),
      cell: plant.cell ?? "",
      kept: plant.kept === null ? null : plant.kept ? "yes" : "no",
      seed,
      words: words.join("; "),
      ...Object.fromEntries(
        traits.map((trait) => [
          traitColumn(trait.id),
          scoreCell(trait, plant.scores.get(trait.id) ?? [], people, said),
        ]),
      ),
    },
  };
}

/** How a score is said; a table that goes out says it as it is stored. */
type Saying = typeof scoreInWords;

function scoreCell(trait: TraitLine, scores: readonly StandingScore[], people: People, saying: Saying): Cell {
  const last = scores.at(-1);
  if (!last) return null;
  const words = scores.map((score) => {
    const version = trait.versions.find((each) => each.id === score.traitId) ?? trait.newest;
    const old = version.id === trait.newest.id ? "" : ` (version ${version.version})`;
    const said = `${saying(version, score)}${old}`;
    return scores.length > 1 ? by(said, score.stewardId, people) : said;
  });
  // Two people's scores are not made one number.
  if (scores.length > 1 || last.value === null) return words.join("; ");
  return { kind: "count", words: words.join("; "), sort: last.value };
}

function by(said: string, stewardId: string | null, people: People): string {
  return `${said}, ${stewardId === null ? "by somebody" : (people.get(stewardId) ?? "a steward")}`;
}
