import { type Database, readRows, type Selection, sql } from "@/lib/db";
import type { RowOf } from "../change-set/records";

/** A ledger entry with the names of the steward or lot on its other side. */
export interface LedgerRow extends RowOf<"LedgerEntry"> {
  readonly otherSteward: string | null;
  readonly otherLot: string | null;
}

/** All entries of a lot's ledger in the order of entry, also those that were replaced. */
export function ledgerOfLot(lotId: string): Selection<LedgerRow> {
  return {
    columns: {
      id: "text",
      lotId: "text",
      on: "text",
      onFirst: "text",
      onLast: "text",
      kind: "text",
      amount: "number",
      unit: "text",
      how: "text",
      other: "text",
      otherStewardId: "text",
      otherLotId: "text",
      notes: "text",
      transferId: "text",
      replacesId: "text",
      takenBack: "flag",
      extra: "text",
      otherSteward: "text",
      otherLot: "text",
    },
    rows: sql`
      SELECT e.*, p."name" AS "otherSteward", o."number" AS "otherLot"
      FROM "LedgerEntry" e LEFT JOIN "Person" p ON p."stewardId" = e."otherStewardId" LEFT JOIN "Lot" o ON o."id" = e."otherLotId"
      WHERE e."lotId" = ${lotId} ORDER BY e."id"`,
  };
}

/** The same, read. One statement. */
export async function readLedger(db: Database, lotId: string): Promise<LedgerRow[]> {
  return readRows(db, ledgerOfLot(lotId));
}
