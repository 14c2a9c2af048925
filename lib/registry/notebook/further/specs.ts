import { refusal } from "@/lib/science/outcome";
import { foldName } from "../../names/fold-name";
import { growOutFiles } from "./grow-out-specs";
import { harvestFiles } from "./harvest-specs";
import { lineageFiles } from "./lineage-specs";
import { neighbourFiles } from "./neighbour-specs";
import { photoFiles } from "./photo-specs";
import { grains, placeFiles } from "./place-specs";
import { plantFiles } from "./plant-specs";
import { recordFiles } from "./record-specs";
import { count, date, day, type FurtherSpec, nameOf, number, oneOf, text, yesNo } from "./spec";

const details = { by: "details" } as const;
const needed = { needed: true };
const folded = (cells: Readonly<Record<string, unknown>>) => ({ nameKey: foldName(String(cells.name)) });

/** Tests and replicates of which nothing is counted yet: a line of tests.csv is a count. */
const setUpFiles: readonly FurtherSpec[] = [
  {
    file: "tests_set_up.csv",
    table: "GerminationTest",
    noun: "test set up",
    identity: { by: "keyed", columns: 1 },
    where: { replicates: { none: { counts: { some: {} } } } },
    columns: [
      text("test", { needed: true, field: "name" }),
      nameOf("lot", needed),
      date("date", { needed: true, field: "on" }),
    ],
    fixed: folded,
  },
  {
    file: "replicates_set_up.csv",
    table: "TestReplicate",
    noun: "replicate set up",
    identity: { by: "lines" },
    once: 2,
    where: { counts: { none: {} } },
    columns: [nameOf("test", needed), text("replicate", { needed: true, field: "name" }), count("sown", needed)],
  },
];

/** Further fields of records that the seven files name. */
const detailFiles: readonly FurtherSpec[] = [
  {
    file: "settings.csv",
    table: "Setting",
    noun: "setting",
    identity: { by: "keyed", columns: 1 },
    columns: [text("key", needed), text("value", needed)],
  },
  {
    file: "own_crops.csv",
    table: "Crop",
    noun: "crop of one's own",
    beforePlants: true,
    identity: { by: "keyed", columns: 1 },
    where: { own: true },
    columns: [
      text("crop", { needed: true, field: "commonName" }),
      text("latin_name"),
      text("cautions"),
      yesNo("clonal"),
    ],
    fixed: (cells) => ({
      key: `own-${foldName(String(cells.commonName))}`,
      commonNameKey: foldName(String(cells.commonName)),
      own: true,
    }),
  },
  {
    file: "crop_values.csv",
    table: "CropOverride",
    noun: "own value of a crop",
    identity: { by: "keyed", columns: 2 },
    columns: [
      nameOf("crop", needed),
      text("field", needed),
      text("value", needed),
      text("reason", needed),
      text("source"),
    ],
  },
  {
    file: "table_values.csv",
    table: "TableOverride",
    noun: "own value in a table",
    identity: { by: "keyed", columns: 3 },
    columns: [
      text("table", needed),
      text("row", needed),
      text("field", needed),
      text("value", needed),
      text("reason", needed),
      text("source"),
    ],
  },
  {
    file: "steward_details.csv",
    table: "Steward",
    noun: "steward",
    identity: details,
    // What nobody changed is not said.
    where: { placeGrain: { not: "village" }, person: { isNot: null } },
    columns: [nameOf("steward", { needed: true, field: "id" }), oneOf("place_grain", grains)],
  },
  {
    file: "variety_details.csv",
    table: "Variety",
    noun: "variety",
    identity: details,
    columns: [
      nameOf("variety", { needed: true, field: "id" }),
      oneOf("aim", ["true-to-type", "broad-and-alive", "improved"]),
      text("seed_coat"),
      text("cautions"),
      text("rights"),
      oneOf("sensitivity", ["public", "circle", "held"]),
      count("plants_wanted"),
      count("seed_parents_wanted"),
      number("isolation_wanted_m"),
      text("note"),
    ],
  },
  {
    file: "lot_details.csv",
    table: "Lot",
    noun: "lot",
    identity: details,
    columns: [
      nameOf("lot", { needed: true, field: "id" }),
      text("code"),
      text("year_words"),
      oneOf("founder_lines", ["one", "many"]),
      text("origin"),
      text("status"),
      text("status_reason"),
      text("treatment"),
      text("treatment_substance"),
      yesNo("original_sample"),
      text("identity_grade"),
      text("isolation_grade"),
      text("isolation_reasons"),
      text("donor_number"),
      text("how_sure"),
      nameOf("lot", { column: "same_as", field: "sameAsId" }),
    ],
    refuses: ({ id, sameAsId }) =>
      (sameAsId ?? null) !== null && sameAsId === id
        ? refusal(
            "of-itself",
            ["same_as"],
            "same_as",
            "is the lot itself",
            "name the lot that leads, or leave it empty",
          )
        : null,
  },
  {
    file: "grow_out_details.csv",
    table: "GrowOut",
    noun: "grow-out",
    identity: details,
    columns: [
      nameOf("grow-out", { needed: true, field: "id" }),
      oneOf("purpose", ["renew", "food", "compare", "teach", "increase"]),
      text("note"),
      count("plants_planned"),
      count("seed_parents_planned"),
      count("detasselled"),
      count("seed_parents_detasselled"),
      day("neighbours_looked_on"),
      day("ended_on"),
      text("foreign_pollen_how"),
    ],
  },
  {
    file: "test_details.csv",
    table: "GerminationTest",
    noun: "germination test",
    identity: details,
    columns: [
      nameOf("test", { needed: true, field: "id" }),
      oneOf("basis", ["normal seedlings", "sprouted"]),
      text("method"),
      text("temperature"),
      text("pre_treatment"),
      number("final_count_day"),
      text("note"),
    ],
  },
];

/** All further files, in the order in which their records build on one another. */
export const furtherSpecs: readonly FurtherSpec[] = [
  ...setUpFiles,
  ...detailFiles,
  ...placeFiles,
  ...growOutFiles,
  ...plantFiles,
  ...recordFiles,
  ...neighbourFiles,
  ...harvestFiles,
  ...lineageFiles,
  ...photoFiles,
];
