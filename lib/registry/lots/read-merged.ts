import type { Database } from "@/lib/db";
import { balanceOf } from "../ledger/balance";
import { idsOfLot } from "./lot-history";
import { recordOfLot } from "./record-of-lot";

/** What would be where a record stood for itself again. */
export interface MergedRead {
  readonly record: { readonly id: string; readonly number: string };
  readonly leading: { readonly id: string; readonly number: string };
  /** who said that the two are one, when and why; null where a folder brought it */
  readonly said: { readonly at: string; readonly actor: string; readonly reason: string | null } | null;
  /** what was written of either since, in its order */
  readonly since: readonly { readonly number: number; readonly at: string; readonly title: string }[];
  /** grams on hand of each by its own entries; null not known */
  readonly grams: { readonly record: number | null; readonly leading: number | null };
}

/** Reads what taking a merge back would leave; null where the record is read as no other. */
export async function readMerged(db: Database, recordId: string): Promise<MergedRead | null> {
  const record = await recordOfLot(db.read, recordId);
  const leading = record?.sameAsId ? await recordOfLot(db.read, record.sameAsId) : null;
  if (!record || !leading) return null;
  const changes = await db.read.change.findMany({
    where: { recordId, tableName: "Lot", action: { not: "remove" } },
    orderBy: { changeSet: { number: "desc" } },
    select: { after: true, before: true, changeSet: true },
  });
  const said = changes.find(({ before, after }) => pointsTo(after) === leading.id && pointsTo(before) !== leading.id);
  const ids = await idsOfLot(db.read, recordId);
  const since = said
    ? await db.read.changeSet.findMany({
        where: { number: { gt: said.changeSet.number }, changes: { some: { recordId: { in: ids } } } },
        orderBy: { number: "asc" },
        select: { number: true, at: true, title: true },
      })
    : [];
  const gramsOf = async (lot: { id: string; thousandSeedGrams: number | null }) =>
    balanceOf(
      await db.read.ledgerEntry.findMany({ where: { lotId: lot.id }, orderBy: { id: "asc" } }),
      lot.thousandSeedGrams,
    ).grams;
  return {
    record: { id: record.id, number: record.number },
    leading: { id: leading.id, number: leading.number },
    said: said ? { at: said.changeSet.at, actor: said.changeSet.actor, reason: said.changeSet.reason } : null,
    since,
    grams: { record: await gramsOf(record), leading: await gramsOf(leading) },
  };
}

function pointsTo(row: string | null): string | null {
  return row === null ? null : ((JSON.parse(row) as { sameAsId?: string | null }).sameAsId ?? null);
}
