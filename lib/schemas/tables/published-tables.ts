import { z } from "zod";
import conditions from "@/lib/science/germination/germination-conditions.json";
import kindsOfCrops from "@/lib/science/germination/kinds-of-crops.json";
import minima from "@/lib/science/germination/vegetable-minima.json";
import { pollenModels } from "@/lib/science/isolation/pollen-models";
import oilContents from "@/lib/science/seed-moisture/oil-content.json";
import { viabilityConstants } from "@/lib/science/viability/viability-constants";
import { neededWords, optionalWords } from "../varieties/fields";

/** How far a value was checked: read in its source, read second hand, or known in general. */
export type TableMark = "verified" | "second hand" | "not verified";

export interface TableField {
  readonly key: string;
  readonly name: string;
  readonly unit?: string;
  readonly kind: "number" | "whole" | "words";
  /** how words have to be written, and what to say where they are not */
  readonly written?: { readonly as: RegExp; readonly needed: string };
  /** of a number, both included */
  readonly least?: number;
  readonly most?: number;
  /** the field whose value this one may not lie below */
  readonly notBelow?: string;
}

export interface TableRow {
  /** known by this in an own value */
  readonly key: string;
  readonly name: string;
  readonly detail: string | null;
  readonly values: Readonly<Record<string, number | string | null>>;
  /** narrower bounds than its field has, by field */
  readonly bounds?: Readonly<Record<string, { readonly least: number; readonly most: number }>>;
  readonly source: string;
  readonly mark: TableMark;
  readonly latinName: string | null;
  /** keys of the crops that the row is looked up for; null: it is told by the Latin name */
  readonly crops: readonly string[] | null;
}

export interface PublishedTable {
  /** its file's name without the ending */
  readonly key: string;
  readonly title: string;
  /** what it is used for here, and what it is not */
  readonly about: string;
  /** the calculation that its numbers go into */
  readonly method: string | null;
  readonly fields: readonly TableField[];
  readonly rows: readonly TableRow[];
}

const cropsOfKind = (kind: string) =>
  Object.entries(kindsOfCrops).flatMap(([crop, ofCrop]) => (ofCrop === kind ? [crop] : []));

const markOf = (verified: boolean | string): TableMark => {
  if (verified === true || verified === "verified") return "verified";
  return verified === "secondary" || verified === "second hand" || verified === "range yes"
    ? "second hand"
    : "not verified";
};

/** The tables that the calculations read, with what a steward may put in the place of their values. */
export const publishedTables: readonly PublishedTable[] = [
  {
    key: "vegetable-minima",
    title: "Least germination of vegetable seed in trade",
    about:
      "A line of United States law for seed in trade, normal seedlings and hard seed together. Beside a home test it is orientation: such a test is never an official one.",
    method: "germination-test",
    fields: [{ key: "minimumPercent", name: "Least germination", unit: "%", kind: "number", least: 0, most: 100 }],
    rows: minima.rows.map(({ kind, latinName, minimumPercent }) => ({
      key: kind,
      name: kind,
      detail: null,
      values: { minimumPercent },
      source: minima.source,
      mark: markOf(minima.verified),
      latinName,
      crops: cropsOfKind(kind),
    })),
  },
  {
    key: "germination-conditions",
    title: "How a germination test is set up",
    about: "Warmth and days of an official test. A new test here proposes these days.",
    method: "germination-test",
    fields: [
      {
        key: "temperatureC",
        name: "Warmth",
        unit: "°C",
        kind: "words",
        written: {
          as: /^\d+(-\d+)?(; ?\d+(-\d+)?)*$/,
          needed: "write degrees as 20, as 20-30 for 16 hours and 8, or as 20-30; 25 for a choice",
        },
      },
      { key: "firstCountDay", name: "First count", unit: "days", kind: "whole", least: 1, most: 365 },
      {
        key: "finalCountDay",
        name: "Final count",
        unit: "days",
        kind: "whole",
        least: 1,
        most: 365,
        notBelow: "firstCountDay",
      },
    ],
    rows: conditions.rows.map(({ kind, temperatureC, firstCountDay, finalCountDay, requirements }) => ({
      key: kind,
      name: kind,
      detail: requirements,
      values: { temperatureC, firstCountDay, finalCountDay },
      source: conditions.source,
      mark: markOf(conditions.verified),
      latinName: null,
      crops: cropsOfKind(kind),
    })),
  },
  {
    key: "pollen-models",
    title: "How far pollen of a crop goes",
    about:
      "The numbers behind the share of foreign pollen, for the few crops of which they were measured. The distance rule decides; this only explains.",
    method: "pollen-risk",
    fields: [
      { key: "a", name: "a", kind: "number", least: 0.0001, most: 10_000 },
      { key: "b", name: "b", kind: "number", least: -10, most: 20 },
      { key: "cap", name: "Most at no distance", kind: "number", least: 0.0001, most: 0.99 },
      { key: "fromMetres", name: "Measured from", unit: "m", kind: "number", least: 0, most: 100_000 },
      {
        key: "beyondMetres",
        name: "Measured to",
        unit: "m",
        kind: "number",
        least: 0.01,
        most: 100_000,
        notBelow: "fromMetres",
      },
    ],
    rows: pollenModels().map((model) => ({
      key: model.key,
      name: model.form === "plane" ? "Maize, over the plane" : nameOfLine(model.key),
      detail: model.form === "plane" ? "g = (b − 1)/(π a²) · (1 + r²/a²)^(−b)" : "P = min(cap, a · d^b)",
      values: numbersOfModel(model),
      // A kernel that does not integrate, or pollen that grows with distance, is none.
      bounds: { b: model.form === "plane" ? { least: 1.01, most: 20 } : { least: -10, most: -0.01 } },
      source: model.source,
      mark: markOf(model.verified),
      latinName: null,
      crops: model.crops,
    })),
  },
  {
    key: "viability-constants",
    title: "Constants of seed life",
    about:
      "For how long seed lives at a given moisture and warmth, of the few kinds whose constants were read in their source. Where a lot's moisture and the warmth of its place were read, its forecast begins with them; its own tests lead.",
    method: "viability",
    fields: [
      { key: "KE", name: "KE", kind: "number", least: 0, most: 30 },
      { key: "CW", name: "CW", kind: "number", least: 0, most: 30 },
      { key: "CH", name: "CH", kind: "number", least: 0, most: 1 },
      { key: "CQ", name: "CQ", kind: "number", least: 0, most: 0.1 },
    ],
    rows: viabilityConstants().map((row) => ({
      key: row.crop,
      name: row.crop,
      detail: row.range,
      values: { KE: row.KE, CW: row.CW, CH: row.CH, CQ: row.CQ },
      source: row.source,
      mark: markOf(row.verified),
      latinName: row.latinName,
      crops: null,
    })),
  },
  {
    key: "oil-content",
    title: "Oil in dry seed",
    about: "The oil that seed-moisture asks for: seed with more oil holds less water in the same air.",
    method: "seed-moisture",
    fields: [
      { key: "oilPercentLow", name: "From", unit: "%", kind: "number", least: 0, most: 99 },
      { key: "oilPercentHigh", name: "To", unit: "%", kind: "number", least: 0, most: 99, notBelow: "oilPercentLow" },
    ],
    rows: oilContents.map(({ crop, latinName, oilPercentLow, oilPercentHigh, source, verified }) => ({
      key: crop,
      name: crop,
      detail: null,
      values: { oilPercentLow, oilPercentHigh },
      source,
      mark: markOf(verified),
      latinName,
      crops: null,
    })),
  },
];

function nameOfLine(key: string): string {
  const name = key.replace(/-line$/, "").replaceAll("-", " ");
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}, by distance`;
}

function numbersOfModel(model: ReturnType<typeof pollenModels>[number]): TableRow["values"] {
  if (model.form === "odds") {
    const { a, b, cap } = model.curve;
    return { a, b, cap, fromMetres: model.fromMetres, beyondMetres: model.beyondMetres };
  }
  const { kernel, beyondMetres } = model;
  return kernel.model === "2dt" ? { a: kernel.a, b: kernel.b, beyondMetres } : { beyondMetres };
}

export function publishedTable(key: string): PublishedTable | undefined {
  return publishedTables.find((table) => table.key === key);
}

/** The rows of a table that speak of a crop: by its key, else by the two words of its Latin name. */
export function rowsOfCrop(
  { rows }: PublishedTable,
  crop: { readonly key: string; readonly latinName: string | null },
): readonly TableRow[] {
  const species = speciesOf(crop.latinName);
  return rows.filter((row) =>
    row.crops ? row.crops.includes(crop.key) : species !== null && speciesOf(row.latinName) === species,
  );
}

function speciesOf(latinName: string | null): string | null {
  const [genus, species] = latinName?.split(" ") ?? [];
  return genus && species ? `${genus} ${species}` : null;
}

/** An own value for one field of a table's row, with its reason. */
export const TableValueSchema = z.strictObject({
  table: z.string(),
  row: z.string(),
  field: z.string(),
  value: neededWords("write the value that holds with you"),
  reason: neededWords("write why your value differs from the table's"),
  source: optionalWords,
});

export type TableValueInput = z.input<typeof TableValueSchema>;
