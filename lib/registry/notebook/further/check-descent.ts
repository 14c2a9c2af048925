import type { Transaction } from "@/lib/db";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { cycleThrough, readDescent, wayInWords } from "../../lots/descent";
import { sameName } from "../../names/fold-name";
import type { FurtherRow, FurtherTable } from "./further-table";

/**
 * What a folder may not make of lots, looked at once all of it stands: a record that is read as one that is itself read as another, or as a lot
 * of another variety; records or claims by which a lot is its own ancestor. With file, line and column.
 */
export async function descentFaults(tx: Transaction, tables: readonly FurtherTable[]): Promise<Refusal[]> {
  const rows = (file: string, column: string) =>
    (tables.find((table) => table.file === file)?.rows ?? []).filter((row) => (row.cells[column] ?? "") !== "");
  const same = rows("lot_details.csv", "same_as");
  const claimed = rows("lineage_claims.csv", "parent_lot").filter(({ cells }) => cells.standing !== "set aside");
  const faults: Refusal[] = [];
  for (const row of same) faults.push(...(await leadFaults(tx, row)));
  for (const row of same) faults.push(...(await cycleFaults(tx, row, ["lot_details.csv", "same_as"], false)));
  for (const row of claimed) faults.push(...(await cycleFaults(tx, row, ["lineage_claims.csv", "parent_lot"], true)));
  return faults;
}

async function lotNamed(tx: Transaction, number: string | undefined) {
  const include = { sameAs: { select: { number: true, varietyId: true, sameAsId: true } }, variety: true };
  return tx.lot.findUnique({ where: { number: sameName(number ?? "") }, include });
}

async function leadFaults(tx: Transaction, row: FurtherRow): Promise<Refusal[]> {
  const lot = await lotNamed(tx, row.cells.lot);
  if (!lot?.sameAs) return [];
  const path = ["lot_details.csv", row.line ?? 0, "same_as"];
  if (lot.sameAs.sameAsId !== null) {
    const wrong = "is itself read as another lot";
    return [refusal("stands-for-another", path, lot.sameAs.number, wrong, "name the lot that leads them all")];
  }
  if (lot.sameAs.varietyId === lot.varietyId) return [];
  const wrong = `is of another variety than lot ${lot.number}`;
  return [refusal("other-variety", path, lot.sameAs.number, wrong, "one lot is of one variety")];
}

async function cycleFaults(
  tx: Transaction,
  row: FurtherRow,
  [file, column]: readonly [string, string],
  claims: boolean,
): Promise<Refusal[]> {
  const lot = await lotNamed(tx, row.cells.lot);
  if (!lot) return [];
  const descent = await readDescent(tx, lot.variety.cropId, { claims });
  const way = cycleThrough(descent, lot.id);
  if (way === null) return [];
  const wrong = `would be its own ancestor (${wayInWords(descent, way)})`;
  return [refusal("cycle", [file, row.line ?? 0, column], lot.number, wrong, "look which of them is wrong")];
}
