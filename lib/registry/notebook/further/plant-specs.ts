import type { Transaction } from "@/lib/db";
import { refusal } from "@/lib/science/outcome";
import { foldName } from "../../names/fold-name";
import { bareScores, scoresThatSayMore } from "../scores-of-plants";
import type { Fields } from "./cells";
import { traitName } from "./names";
import { another, count, date, day, type FurtherSpec, joined, nameOf, number, oneOf, text } from "./spec";

const lines = { by: "lines" } as const;
const needed = { needed: true };

/** What traits mean, and what plants.csv does not say of marks and scores. */
export const plantFiles: readonly FurtherSpec[] = [
  {
    file: "traits.csv",
    table: "Trait",
    noun: "trait",
    identity: { by: "keyed", columns: 4 },
    beforePlants: true,
    columns: [
      text("trait", { needed: true, field: "name" }),
      nameOf("variety", { column: "trait_variety", field: "varietyId" }),
      nameOf("crop", { column: "trait_crop", field: "cropId" }),
      count("trait_version", { needed: true, field: "version" }),
      oneOf("kind", ["count", "measure", "scale", "yes-no", "category", "date"], needed),
      text("unit"),
      oneOf("direction", ["higher", "lower", "target", "none"]),
      number("target"),
      number("scale_low"),
      number("scale_high"),
      text("wording"),
    ],
    // A version follows the one before it, by its number.
    fixed: ({ name, varietyId, cropId, version }, names) => ({
      nameKey: foldName(String(name)),
      previousId: names.idOf(
        "trait",
        traitName(
          String(name),
          names.nameOf("variety", String(varietyId)),
          names.nameOf("crop", String(cropId)),
          Number(version) - 1,
        ),
      ),
    }),
  },
  {
    file: "plant_places.csv",
    table: "Plant",
    noun: "place of a plant",
    identity: { by: "keyed", columns: 2 },
    where: { OR: [{ row: { not: null } }, { position: { not: null } }, { sameAsId: { not: null } }] },
    columns: [
      ...joined("plant", { needed: true, field: "id" }),
      text("row"),
      number("position"),
      another("plant", "same_as", "sameAsId"),
    ],
    refuses: ({ id, sameAsId }) =>
      (sameAsId ?? null) !== null && sameAsId === id
        ? refusal(
            "of-itself",
            ["same_as"],
            "same_as",
            "is the plant itself",
            "name the plant that leads, or leave it empty",
          )
        : null,
    completes: plantsNamed,
  },
  {
    file: "marks.csv",
    table: "Mark",
    noun: "mark",
    identity: lines,
    events: true,
    columns: [
      ...joined("plant", needed),
      text("tag"),
      oneOf("intent", ["keep", "watch", "pull"], needed),
      date("on", needed),
      text("words"),
      text("fate"),
      nameOf("steward"),
    ],
  },
  {
    file: "scores.csv",
    table: "Score",
    noun: "score",
    identity: lines,
    events: true,
    chosen: scoresThatSayMore,
    completes: bareScores,
    refuses: ({ value, text: said }) =>
      (value ?? said ?? null) === null
        ? refusal("score-missing", ["value"], null, "is no score", "write a number in value, or words in words")
        : null,
    columns: [
      ...joined("plant", needed),
      ...joined("trait", needed),
      number("value"),
      text("words", { field: "text" }),
      day("on"),
      nameOf("steward"),
    ],
  },
];

/** A place is said of a plant that stands: the row's own cells name it. */
async function plantsNamed(_tx: Transaction, rows: readonly Fields[]): Promise<ReadonlyMap<number, string>> {
  return new Map(rows.map(({ id }, place) => [place, String(id)]));
}
