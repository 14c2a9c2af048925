import { uuidv7 } from "uuidv7";
import type { VarietyRow } from "@/lib/schemas/notebook/rows";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import type { TableDifference } from "./difference";
import { type Ids, stated, storedExtra } from "./ids";

export async function applyVarieties(
  change: ChangeWriter,
  { added, changed }: TableDifference<"varieties">,
  ids: Ids,
): Promise<void> {
  const crops = await cropIds(change, [...added, ...changed.map(({ row }) => row)]);
  const fieldsOf = ({ cells, extra }: VarietyRow) => ({
    cropId: crops.get(foldName(cells.crop)) as string,
    story: cells.story,
    typeDescription: cells.type_description,
    extra: storedExtra(extra),
  });
  const made = added.map((row) => ({
    id: uuidv7(),
    name: sameName(row.cells.variety),
    nameKey: foldName(row.cells.variety),
    ...fieldsOf(row),
  }));
  await change.createAll("Variety", made);
  for (const { name, id } of made) ids.varieties.set(name, id);
  await change.updateMany(
    "Variety",
    changed.map(({ row, id }) => ({ id, patch: stated(fieldsOf(row)) })),
  );
}

/** Crops by key and by common name, folded; a name that is neither becomes a crop of the steward's own. */
async function cropIds(change: ChangeWriter, rows: readonly VarietyRow[]): Promise<Map<string, string>> {
  const known = await change.tx.crop.findMany({ select: { id: true, key: true, commonNameKey: true } });
  const ids = new Map([
    ...known.map((crop) => [crop.commonNameKey, crop.id] as const),
    ...known.map((crop) => [crop.key, crop.id] as const),
  ]);
  const own = new Map<string, string>();
  for (const { cells } of rows) if (!ids.has(foldName(cells.crop))) own.set(foldName(cells.crop), sameName(cells.crop));
  const made = [...own].map(([folded, name]) => ({
    id: uuidv7(),
    key: `own-${folded}`,
    commonName: name,
    commonNameKey: folded,
    own: true,
  }));
  await change.createAll("Crop", made);
  for (const crop of made) ids.set(crop.commonNameKey, crop.id);
  return ids;
}
