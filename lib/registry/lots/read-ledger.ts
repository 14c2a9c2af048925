import type { Client } from "@/lib/db";
import type { RowOf } from "../change-set/records";

/** A ledger entry with the names of the steward or lot on its other side. */
export interface LedgerRow extends Omit<RowOf<"LedgerEntry">, "takenBack"> {
  readonly takenBack: boolean;
  readonly otherSteward: string | null;
  readonly otherLot: string | null;
}

/** All entries of a lot's ledger in the order of entry, also those that were replaced. One statement. */
export async function readLedger(db: Client, lotId: string): Promise<LedgerRow[]> {
  const rows = await db.$queryRaw<(Omit<LedgerRow, "takenBack"> & { takenBack: boolean | number })[]>`
    SELECT e.*, p."name" AS "otherSteward", o."number" AS "otherLot"
    FROM "LedgerEntry" e LEFT JOIN "Person" p ON p."stewardId" = e."otherStewardId" LEFT JOIN "Lot" o ON o."id" = e."otherLotId"
    WHERE e."lotId" = ${lotId} ORDER BY e."id"`;
  return rows.map((row) => ({ ...row, takenBack: Boolean(row.takenBack) }));
}
