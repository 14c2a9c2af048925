import { randomBytes } from "node:crypto";
import { uuidv7 } from "uuidv7";
import type { LotShare } from "@/lib/schemas/notebook/kinds";
import type { LotRow } from "@/lib/schemas/notebook/rows";
import { LABEL_CODE_BYTES, makeLabelCode } from "@/lib/science/codes/label-code";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import type { TableDifference } from "./difference";
import { type Ids, idIfKnown, idOf, stated, storedExtra } from "./ids";

/** Lots with their parents, and then the parents of grow-outs, which are lots. */
export async function applyLots(
  change: ChangeWriter,
  { added, changed }: TableDifference<"lots">,
  growOuts: TableDifference<"growOuts">,
  ids: Ids,
): Promise<void> {
  const made = added.map((row) => ({ row, id: uuidv7() }));
  await change.createAll(
    "Lot",
    made.map(({ row, id }) => ({
      id,
      number: sameName(row.cells.lot),
      numberKey: foldName(row.cells.lot),
      code: makeLabelCode(Uint8Array.from(randomBytes(LABEL_CODE_BYTES))),
      kind: row.cells.kind,
      ...fieldsOf(row, ids),
    })),
  );
  for (const { row, id } of made) ids.lots.set(sameName(row.cells.lot), id);
  await change.updateMany(
    "Lot",
    changed.map(({ row, id }) => ({ id, patch: stated({ kind: row.cells.kind, ...fieldsOf(row, ids) }) })),
  );
  await applyLotParents(change, made, changed, ids);
  await applyGrowOutParents(change, growOuts, ids);
}

function fieldsOf({ cells, extra }: LotRow, ids: Ids) {
  return {
    varietyId: idOf(ids.varieties, cells.variety),
    holderId: idIfKnown(ids.stewards, cells.holder),
    growOutId: cells.from && "growOut" in cells.from ? idOf(ids.growOuts, cells.from.growOut) : null,
    year: cells.year?.text ?? null,
    yearFirst: cells.year?.first ?? null,
    yearLast: cells.year?.last ?? null,
    thousandSeedGrams: cells.thousand_seed_grams,
    inbreeding: cells.inbreeding,
    notes: cells.notes,
    extra: storedExtra(extra),
  };
}

async function applyLotParents(
  change: ChangeWriter,
  made: readonly { row: LotRow; id: string }[],
  changed: TableDifference<"lots">["changed"],
  ids: Ids,
): Promise<void> {
  const restated = changed.filter((each) => each.cells.some((cell) => cell.column === "from"));
  const old = await change.tx.lotParent.findMany({
    where: { lotId: { in: restated.map((each) => each.id) } },
    select: { id: true },
  });
  await change.remove(
    "LotParent",
    old.map((row) => row.id),
  );
  const rows = [...made, ...restated].flatMap(({ row, id }) =>
    partsOf(row).map((part) => ({ id: uuidv7(), lotId: id, parentLotId: idOf(ids.lots, part.lot), share: part.share })),
  );
  await change.createAll("LotParent", rows);
}

function partsOf(row: LotRow): readonly LotShare[] {
  return row.cells.from && "lots" in row.cells.from ? row.cells.from.lots : [];
}

async function applyGrowOutParents(
  change: ChangeWriter,
  { added, changed }: TableDifference<"growOuts">,
  ids: Ids,
): Promise<void> {
  const restated = changed.filter((each) => each.cells.some((cell) => cell.column === "parents"));
  const old = await change.tx.growOutParent.findMany({
    where: { growOutId: { in: restated.map((each) => each.id) } },
    select: { id: true, growOutId: true, lotId: true, role: true },
  });
  // A line of the folder has no room for what a lot's plants were in a cross.
  const roles = new Map(old.map((row) => [`${row.growOutId} ${row.lotId}`, row.role]));
  await change.remove(
    "GrowOutParent",
    old.map((row) => row.id),
  );
  const rows = [...added, ...restated.map((each) => each.row)].flatMap(({ cells }) =>
    cells.parents.map((parent) => {
      const [growOutId, lotId] = [idOf(ids.growOuts, cells.grow_out), idOf(ids.lots, parent.lot)];
      return { id: uuidv7(), growOutId, lotId, share: parent.share, role: roles.get(`${growOutId} ${lotId}`) ?? null };
    }),
  );
  await change.createAll("GrowOutParent", rows);
}
