import type { Cell, Column, Row } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { keptSpan } from "@/lib/display/kept-span";
import { kOfN, percent, percentSpan } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { VarietyRow } from "@/lib/registry/varieties/list-varieties";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { aimWords } from "../_words/aim-words";
import { keptWords } from "../_words/kept-words";

export const columns: readonly Column[] = [
  { key: "variety", name: "Variety", kind: "words", phone: "lead" },
  { key: "crop", name: "Crop", kind: "words" },
  { key: "other", name: "Other names", kind: "words", apart: true, phone: "none" },
  { key: "lots", name: "Lots", kind: "count", phone: "under", phoneName: "lots" },
  { key: "grams", name: "On hand", kind: "count", phone: "none" },
  { key: "places", name: "Places", kind: "count", phone: "under", phoneName: "places" },
  { key: "newest", name: "Newest", kind: "words", phone: "none" },
  { key: "test", name: "Best germination", kind: "span", phone: "none" },
  { key: "kept", name: "Diversity kept", kind: "words", phone: "none" },
  { key: "aim", name: "Aim", kind: "words", apart: true, phone: "none" },
  { key: "waits", name: "Waits", kind: "count", phone: "aside", phoneName: "waits" },
];

/** Units behind the heads of the columns in a file. */
export const csvUnits: Readonly<Record<string, string>> = { grams: "g", test: "share", kept: "share" };

/** A variety as a row of the list; `renewal` is the germination below which a lot is to be renewed. */
export function varietyRow(row: VarietyRow, renewal: number, units: UnitSettings): Row {
  return {
    id: row.id,
    cells: {
      variety: {
        kind: "link",
        words: row.name,
        href: `/varieties/${row.id}`,
        mark: { name: row.name, crop: row.cropKey, coat: storedSeedCoat(row.seedCoat) },
      },
      crop: row.crop,
      other: row.otherNames.join("; "),
      lots: row.lots,
      grams: gramsCell(row, units),
      places: placesCell(row),
      newest:
        row.newestYear === null
          ? row.lots === 0
            ? ""
            : null
          : { kind: "date", words: dateInWords(yearOf(row.newestYear)), sort: row.newestYear },
      test: testCell(row, renewal),
      kept: keptCell(row),
      aim: row.aim === null ? "" : (aimWords[row.aim]?.words ?? row.aim),
      waits: row.waiting === 0 ? "" : { kind: "waits", words: String(row.waiting), sort: row.waiting },
    },
  };
}

/** The year of a lot's date: the day does not matter in a list. */
function yearOf(date: string): string {
  return /^\d{4}-[\d-]+$/.test(date) ? date.slice(0, 4) : date;
}

function gramsCell({ grams, balancesUnknown, lots }: VarietyRow, units: UnitSettings): Cell {
  if (lots === 0) return "";
  if (grams === null) return null;
  const more = balancesUnknown > 0 ? ` + ${balancesUnknown} unknown` : "";
  return { kind: "count", words: `${weight(grams, units)}${more}`, sort: grams };
}

function placesCell({ places, holdersNotConfirmed, lots }: VarietyRow): Cell {
  if (lots === 0 && places === 0 && holdersNotConfirmed === 0) return "";
  const words = holdersNotConfirmed > 0 ? `${places} sure, ${holdersNotConfirmed} not` : String(places);
  return places < 2 ? { kind: "waits", words, sort: places } : { kind: "count", words, sort: places };
}

function testCell({ bestTest, lots, standing }: VarietyRow, renewal: number): Cell {
  if (bestTest === null) return lots === 0 || standing === "clonal" ? "" : null;
  const { germination, low, high, normal, sown, date } = bestTest;
  return {
    kind: "span",
    value: germination,
    low,
    high,
    grade: "counted",
    words: `${kOfN(normal, sown)}, ${percentSpan(low, high)}, tested ${dateInWords(date)}`,
    figure: percent(germination, 0),
    line: renewal,
  };
}

function keptCell({ standing, diversityRetained, diversitySpan, lots, foundersMayBeKin }: VarietyRow): Cell {
  if (standing === "clonal" || standing === "uniform") return keptWords(standing, null);
  if (diversitySpan)
    return { kind: "count", words: keptSpan(diversitySpan), sort: diversitySpan.low, grade: "assumed" };
  if (standing !== "counted") return lots === 0 ? "" : null;
  const words = keptWords(standing, diversityRetained);
  return { kind: "count", words, sort: diversityRetained, grade: foundersMayBeKin ? "assumed" : "counted" };
}
