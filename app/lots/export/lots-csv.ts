import { stringify } from "csv-stringify/sync";
import type { LotRow } from "@/lib/registry/lots/lot-row";
import { type LotColumn, usualColumns } from "@/lib/schemas/lots/list-query";

type Value = string | number | null;

/** A column of the file. Numbers are plain decimals in the unit that stands in the name; empty is not known. */
interface FileColumn {
  readonly name: string;
  readonly type: "string" | "number" | "integer";
  readonly description: string;
  readonly value: (row: LotRow) => Value;
}

const columnsOf: Readonly<Record<LotColumn, readonly FileColumn[]>> = {
  number: [text("lot", "lot number", (row) => row.number)],
  variety: [text("variety", "name of the variety", (row) => row.variety)],
  crop: [text("crop", "name of the crop", (row) => row.crop)],
  holder: [text("holder", "steward who holds it", (row) => row.holder)],
  year: [text("harvest_year", "date of the harvest, EDTF (ISO 8601-2)", (row) => row.year)],
  grams: [number("on_hand_g", "balance of the ledger, grams", (row) => row.grams)],
  live: [
    number("living_seeds_low", "living seeds at least, seeds", (row) => row.live?.low ?? null),
    number("living_seeds_high", "living seeds at most, seeds", (row) => row.live?.high ?? null),
  ],
  test: [
    text("last_test_date", "day of the last germination test, EDTF", (row) => row.lastTest?.date ?? null),
    whole("last_test_sown_seeds", "seeds sown in the last test", (row) => row.lastTest?.sown ?? null),
    whole("last_test_normal_seeds", "normal seedlings of the last test", (row) => row.lastTest?.normal ?? null),
    number("germination_share", "normal of sown, share 0 to 1", (row) => row.lastTest?.germination ?? null),
    number("germination_low_share", "low end of the exact 95 % interval", (row) => row.lastTest?.low ?? null),
    number("germination_high_share", "high end of the exact 95 % interval", (row) => row.lastTest?.high ?? null),
  ],
  diversity: [
    number("diversity_kept_share", "1 − coancestry, share 0 to 1", (row) =>
      row.standing === "counted" && row.diversitySpan === null ? row.diversityRetained : null,
    ),
    number("diversity_kept_low_share", "the least of it that the records allow, where they are incomplete", (row) =>
      row.diversitySpan ? row.diversitySpan.low : null,
    ),
    number("diversity_kept_high_share", "the most of it that the records allow, where they are incomplete", (row) =>
      row.diversitySpan ? row.diversitySpan.high : null,
    ),
    text("lineage", "whether that can be put in a figure", (row) => row.standing),
  ],
  generations: [number("generations", "generations from the founder lots", (row) => row.generations)],
  status: [text("stands", "how the lot stands", (row) => row.status)],
  places: [text("kept_in", "places of its containers", (row) => row.places.join("; ") || null)],
  kind: [text("kind", "founder, harvest, blend or split", (row) => row.kind)],
  code: [text("label_code", "label code with its check character", (row) => row.code)],
  notes: [text("notes", "notes as written", (row) => row.notes)],
};

/** The lots as a table of the chosen columns. Text that a spreadsheet would run as a formula is marked with an apostrophe. */
export function lotsCsv(rows: readonly LotRow[], chosen: readonly LotColumn[] | null): string {
  const columns = fileColumns(chosen);
  const lines = rows.map((row) => columns.map((column) => column.value(row) ?? ""));
  return stringify([columns.map((column) => column.name), ...lines], {
    record_delimiter: "\r\n",
    escape_formulas: true,
  });
}

/** What the columns of the file mean, as a Table Schema. */
export function lotsTableSchema(chosen: readonly LotColumn[] | null) {
  return {
    $schema: "https://datapackage.org/profiles/2.0/tableschema.json",
    fields: fileColumns(chosen).map(({ name, type, description }) => ({ name, type, description })),
    missingValues: [""],
  };
}

function fileColumns(chosen: readonly LotColumn[] | null): FileColumn[] {
  return (chosen ?? usualColumns).flatMap((column) => columnsOf[column]);
}

function text(name: string, description: string, value: FileColumn["value"]): FileColumn {
  return { name, type: "string", description, value };
}

function number(name: string, description: string, value: FileColumn["value"]): FileColumn {
  return { name, type: "number", description, value };
}

function whole(name: string, description: string, value: FileColumn["value"]): FileColumn {
  return { name, type: "integer", description, value };
}
