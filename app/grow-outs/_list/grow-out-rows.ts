import type { Cell, Column, Row } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize } from "@/lib/display/numbers";
import type { GrowOutRow } from "@/lib/registry/grow-outs/list-grow-outs";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";

export const columns: readonly Column[] = [
  { key: "growOut", name: "Grow-out", kind: "words", phone: "lead" },
  { key: "variety", name: "Variety", kind: "words" },
  { key: "crop", name: "Crop", kind: "words", apart: true, phone: "none" },
  { key: "sown", name: "Sown", kind: "words" },
  { key: "steward", name: "Steward", kind: "words", phone: "none" },
  { key: "purpose", name: "Purpose", kind: "words", apart: true, phone: "none" },
  { key: "standing", name: "Standing", kind: "count", phone: "none" },
  { key: "parents", name: "Seed parents", kind: "count", phone: "none" },
  { key: "size", name: "Counts as", kind: "count", phone: "aside", phoneName: "counts as" },
  { key: "gave", name: "Gave", kind: "words", phone: "none" },
];

/** Units behind the heads of the columns in a file. */
export const csvUnits: Readonly<Record<string, string>> = {
  standing: "plants",
  parents: "plants",
  size: "effective_plants",
};

/** A grow-out as a row of the list. Its effective size waits where it lies below the crop's floor of plants. */
export function growOutRow(row: GrowOutRow): Row {
  return {
    id: row.id,
    cells: {
      growOut: {
        kind: "link",
        words: row.name,
        href: `/grow-outs/${row.id}`,
        mark: { name: row.variety, crop: row.cropKey, coat: storedSeedCoat(row.seedCoat) },
      },
      variety: { kind: "link", words: row.variety, href: `/varieties/${row.varietyId}` },
      crop: row.crop,
      sown: row.sown === null ? null : { kind: "date", words: dateInWords(row.sown), sort: row.sownFirst },
      steward: row.steward,
      purpose: row.purpose ?? "",
      standing: row.plantsStanding,
      parents: row.seedParents,
      size: sizeCell(row),
      gave: row.lots.length > 0 ? row.lots.map((lot) => lot.number).join(", ") : (row.outcome ?? "no lot on record"),
    },
  };
}

function sizeCell({ clonal, lots, effectiveSize: size, plantsMin }: GrowOutRow): Cell {
  if (clonal || lots.length === 0) return "";
  if (size === null) return null;
  const words = effectiveSize(size);
  return plantsMin !== null && size < plantsMin
    ? { kind: "waits", words, sort: size }
    : { kind: "count", words, sort: size };
}
