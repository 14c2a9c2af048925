import { type Database, readRows, type Selection, sql } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import { recordsOfLot } from "./same-lot";

/** A ledger entry with the names of the steward or lot on its other side. */
export interface LedgerRow extends RowOf<"LedgerEntry"> {
  readonly otherSteward: string | null;
  readonly otherLot: string | null;
  /** the number of another record of the lot, where the entry was written under that one */
  readonly writtenUnder: string | null;
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
      writtenUnder: "text",
    },
    rows: sql`
      SELECT e.*, p."name" AS "otherSteward", l."number" AS "otherLot", w."number" AS "writtenUnder"
      FROM "LedgerEntry" e LEFT JOIN "Person" p ON p."stewardId" = e."otherStewardId" LEFT JOIN "Lot" m ON m."id" = e."otherLotId"
        LEFT JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") LEFT JOIN "Lot" w ON w."id" = e."lotId" AND w."sameAsId" IS NOT NULL
      WHERE e."lotId" IN ${recordsOfLot(lotId)} ORDER BY e."id"`,
  };
}

/** The same, read. One statement. */
export async function readLedger(db: Database, lotId: string): Promise<LedgerRow[]> {
  return readRows(db, ledgerOfLot(lotId));
}
