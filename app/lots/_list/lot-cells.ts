import type { Cell, Column, Row } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { keptSpan } from "@/lib/display/kept-span";
import { kOfN, percent, percentSpan, plainNumber } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { LotRow } from "@/lib/registry/lots/lot-row";
import { testedTooLongAgo } from "@/lib/registry/lots/test-age";
import { type LotColumn, usualColumns } from "@/lib/schemas/lots/list-query";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { seedsSpan } from "../_words/seeds-in-words";

type Told = Omit<Column, "key" | "apart">;

const told: Readonly<Record<LotColumn, Told>> = {
  number: { name: "Lot", kind: "words", phone: "lead" },
  variety: { name: "Variety", kind: "words" },
  crop: { name: "Crop", kind: "words", phone: "none" },
  holder: { name: "Holder", kind: "words", phone: "none" },
  year: { name: "Year", kind: "words" },
  grams: { name: "On hand", kind: "count", phone: "aside" },
  live: { name: "Living seeds", kind: "count", phone: "none" },
  test: { name: "Germination", kind: "span", phone: "under" },
  diversity: { name: "Diversity kept", kind: "count", phone: "none" },
  generations: { name: "Generations", kind: "count", phone: "none" },
  status: { name: "Stands", kind: "words" },
  places: { name: "Kept in", kind: "words", phone: "none" },
  kind: { name: "Kind", kind: "words", phone: "none" },
  code: { name: "Label code", kind: "words", phone: "none" },
  notes: { name: "Notes", kind: "words", phone: "none" },
};

/** The columns of the list of lots; those that are not usual stand apart until they are chosen. */
export const columns: readonly Column[] = (Object.keys(told) as LotColumn[]).map((key) => ({
  key,
  ...told[key],
  apart: !usualColumns.includes(key),
}));

/** What the rows are read by: the line for renewing, the steward's units, and the day it is. */
export interface Reading {
  readonly renewal: number;
  readonly units: UnitSettings;
  readonly today: string;
}

/** A lot as a row of the list. */
export function lotCells(row: LotRow, { renewal, units, today }: Reading): Row {
  const cells: Record<LotColumn, Cell> = {
    number: {
      kind: "link",
      words: row.number,
      href: `/lots/${row.id}`,
      mark: { name: row.variety, crop: row.cropKey, coat: storedSeedCoat(row.seedCoat) },
    },
    variety: { kind: "link", words: row.variety, href: `/varieties/${row.varietyId}` },
    crop: row.crop,
    holder: row.holder,
    year: row.year === null ? null : { kind: "date", words: dateInWords(row.year), sort: row.yearFirst },
    grams: row.grams === null ? null : { kind: "count", words: weight(row.grams, units), sort: row.grams },
    live: liveCell(row, today),
    test: testCell(row, renewal),
    diversity: diversityCell(row),
    generations: row.generations === null ? null : plainNumber(row.generations, 1),
    status: statusCell(row.status),
    places: row.places.join(", "),
    kind: row.kind,
    code: row.code,
    notes: row.notes ?? "",
  };
  return { id: row.id, cells };
}

/** What lived at a test older than the seed usually lives is only assumed to live. */
function liveCell({ live, lastTest, usualLifeYears }: LotRow, today: string): Cell {
  if (live === null) return null;
  const aged = lastTest !== null && testedTooLongAgo(lastTest, usualLifeYears, today);
  return { kind: "count", words: seedsSpan(live), sort: live.low, grade: aged ? "assumed" : live.grade };
}

/** A pure line has nothing to lose; of a crop kept by division there is no such figure. */
function diversityCell({ standing, diversityRetained: share, diversitySpan: span }: LotRow): Cell {
  if (standing === "clonal") return "";
  if (standing === "uniform") return "uniform";
  if (span) return { kind: "count", words: keptSpan(span), sort: span.low, grade: "assumed" };
  if (standing !== "counted" || share === null) return null;
  return { kind: "count", words: percent(share, 0), sort: share };
}

function testCell({ lastTest }: LotRow, renewal: number): Cell {
  if (lastTest === null) return null;
  const { germination, low, high, normal, sown, date } = lastTest;
  return {
    kind: "span",
    value: germination,
    low,
    high,
    grade: "counted",
    words: `${kOfN(normal, sown)}, ${percentSpan(low, high)}, tested ${dateInWords(date)}`,
    figure: percent(germination, nearLine(germination, renewal) ? 1 : 0),
    line: renewal,
  };
}

/** Whether a share would round onto the line that it lies below. */
function nearLine(share: number, line: number): boolean {
  return share < line && percent(share, 0) === percent(line, 0);
}

const waiting = new Set(["quarantine", "hold"]);

function statusCell(status: string | null): Cell {
  if (status === null) return "";
  return waiting.has(status) ? { kind: "waits", words: status } : status;
}
