import type { Transaction } from "@/lib/db";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { cycleThrough, type Descent, readDescent, wayInWords } from "../../lots/descent";
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
  const lots = await lotsNamed(tx, [...same, ...claimed]);
  const lotOf = (row: FurtherRow) => lots.get(sameName(row.cells.lot ?? ""));
  const faults = same.flatMap((row) => leadFaults(lotOf(row), row));
  for (const [of, at, claims] of [
    [same, ["lot_details.csv", "same_as"], false],
    [claimed, ["lineage_claims.csv", "parent_lot"], true],
  ] as const) {
    const descents = new Map<string, Descent>();
    for (const row of of) {
      const lot = lotOf(row);
      if (!lot) continue;
      const { cropId } = lot.variety;
      const descent = descents.get(cropId) ?? (await readDescent(tx, cropId, { claims }));
      descents.set(cropId, descent);
      faults.push(...cycleFaults(descent, lot, row, at));
    }
  }
  return faults;
}

type LotNamed = Awaited<ReturnType<typeof lotsNamed>> extends Map<string, infer Lot> ? Lot : never;

async function lotsNamed(tx: Transaction, rows: readonly FurtherRow[]) {
  const numbers = [...new Set(rows.map(({ cells }) => sameName(cells.lot ?? "")))];
  const found = await tx.lot.findMany({
    where: { number: { in: numbers } },
    select: {
      id: true,
      number: true,
      varietyId: true,
      variety: { select: { cropId: true } },
      sameAs: { select: { number: true, varietyId: true, sameAsId: true } },
      otherRecords: { select: { number: true }, orderBy: { id: "asc" } },
    },
  });
  return new Map(found.map((lot) => [lot.number, lot]));
}

function leadFaults(lot: LotNamed | undefined, row: FurtherRow): Refusal[] {
  if (!lot?.sameAs) return [];
  const path = ["lot_details.csv", row.line ?? 0, "same_as"];
  if (lot.sameAs.sameAsId !== null) {
    const wrong = "is itself read as another lot";
    return [refusal("stands-for-another", path, lot.sameAs.number, wrong, "name the lot that leads them all")];
  }
  const [led] = lot.otherRecords;
  if (led) {
    const needed = `lot ${led.number} is read as lot ${lot.number}: name ${lot.sameAs.number} there, too`;
    return [refusal("leads-already", path, lot.number, "leads another record", needed)];
  }
  if (lot.sameAs.varietyId === lot.varietyId) return [];
  const wrong = `is of another variety than lot ${lot.number}`;
  return [refusal("other-variety", path, lot.sameAs.number, wrong, "one lot is of one variety")];
}

function cycleFaults(
  descent: Descent,
  lot: LotNamed,
  row: FurtherRow,
  [file, column]: readonly [string, string],
): Refusal[] {
  const way = cycleThrough(descent, lot.id);
  if (way === null) return [];
  const wrong = `would be its own ancestor (${wayInWords(descent, way)})`;
  return [refusal("cycle", [file, row.line ?? 0, column], lot.number, wrong, "look which of them is wrong")];
}
