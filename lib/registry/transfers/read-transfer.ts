import type { Client, Database } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import type { LotHead } from "../lots/read-head";
import { readHead } from "../lots/read-head";

/** One of the two ledgers of a transfer. */
export interface SideOfTransfer {
  readonly entryId: string;
  readonly lotId: string;
  readonly number: string;
  readonly kind: string;
  readonly amount: number;
  readonly unit: string;
  readonly on: string;
  readonly other: string | null;
}

/** A transfer with its lots, its hands, both sides of the ledger and what was promised. */
export interface TransferRead {
  readonly transfer: RowOf<"Transfer">;
  readonly lot: LotHead;
  readonly newNumber: string | null;
  readonly newCode: string | null;
  readonly newStatus: string | null;
  readonly from: string | null;
  readonly fromPlace: string | null;
  readonly fromKind: string | null;
  readonly to: string | null;
  readonly sides: readonly SideOfTransfer[];
  readonly promises: readonly RowOf<"Promise">[];
  /** the change set that wrote it, where that was not an import; null not known */
  readonly changeSetId: string | null;
}

interface NamesSql {
  readonly newNumber: string | null;
  readonly newCode: string | null;
  readonly newStatus: string | null;
  readonly from: string | null;
  readonly fromPlace: string | null;
  readonly fromKind: string | null;
  readonly to: string | null;
  readonly changeSetId: string | null;
}

/** Reads one transfer. Five statements; null where there is no such one. */
export async function readTransfer(db: Database, id: string): Promise<TransferRead | null> {
  const transfer = await db.read.transfer.findUnique({ where: { id } });
  if (!transfer) return null;
  const lot = await readHead(db.read, transfer.lotId);
  if (!lot) return null;
  return {
    transfer,
    lot,
    ...(await readNames(db.read, id)),
    sides: await readSides(db.read, id),
    promises: await db.read.promise.findMany({ where: { transferId: id }, orderBy: { id: "asc" } }),
  };
}

async function readNames(db: Client, id: string): Promise<NamesSql> {
  const [row] = await db.$queryRaw<NamesSql[]>`
    SELECT n."number" AS "newNumber", n."code" AS "newCode", n."status" AS "newStatus", f."name" AS "from", fs."place" AS "fromPlace", fs."kind" AS "fromKind",
      o."name" AS "to",
      (SELECT s."id" FROM "Change" c JOIN "ChangeSet" s ON s."id" = c."changeSetId"
        WHERE c."recordId" = t."id" AND c."action" = 'create' AND s."kind" = 'entry') AS "changeSetId"
    FROM "Transfer" t LEFT JOIN "Lot" n ON n."id" = t."newLotId"
      LEFT JOIN "Person" f ON f."stewardId" = t."fromStewardId" LEFT JOIN "Steward" fs ON fs."id" = t."fromStewardId"
      LEFT JOIN "Person" o ON o."stewardId" = t."toStewardId"
    WHERE t."id" = ${id}`;
  if (!row) throw new Error(`no transfer ${id}`);
  return row;
}

/** The entries that count. */
async function readSides(db: Client, transferId: string): Promise<SideOfTransfer[]> {
  return db.$queryRaw<SideOfTransfer[]>`
    SELECT e."id" AS "entryId", e."lotId", l."number", e."kind", e."amount", e."unit", e."on", e."other"
    FROM "LedgerEntry" e JOIN "Lot" l ON l."id" = e."lotId"
    WHERE e."transferId" = ${transferId} AND NOT e."takenBack"
      AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" r WHERE r."replacesId" = e."id")
    ORDER BY e."id"`;
}
