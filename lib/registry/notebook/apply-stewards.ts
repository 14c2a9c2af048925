import { uuidv7 } from "uuidv7";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import type { TableDifference } from "./difference";
import { type Ids, stated, storedExtra } from "./ids";

export async function applyStewards(
  change: ChangeWriter,
  { added, changed }: TableDifference<"stewards">,
  ids: Ids,
): Promise<void> {
  const made = added.map((row) => ({ row, id: uuidv7() }));
  await change.createAll(
    "Steward",
    made.map(({ row, id }) => ({ id, kind: row.cells.kind, place: row.cells.place, extra: storedExtra(row.extra) })),
  );
  await change.createAll(
    "Person",
    made.map(({ row, id }) => ({
      id: uuidv7(),
      stewardId: id,
      name: sameName(row.cells.steward),
      nameKey: foldName(row.cells.steward),
    })),
  );
  for (const { row, id } of made) ids.stewards.set(sameName(row.cells.steward), id);
  await change.updateMany(
    "Steward",
    changed.map(({ row, id }) => ({
      id,
      patch: stated({ kind: row.cells.kind, place: row.cells.place, extra: storedExtra(row.extra) }),
    })),
  );
}
