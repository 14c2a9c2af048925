import type { Transaction } from "@/lib/db";
import type { Refusal } from "@/lib/science/outcome";
import { debtRefusal } from "./debt-refusal";
import { entriesOfLot } from "./entries-of-lot";

type Row = Readonly<Record<string, unknown>> | null;

/** A row of a change set that is taken back. */
interface TakenBackRow {
  readonly table: string;
  readonly id: string;
  readonly before: Row;
  readonly after: Row;
}

/** What lies in the jars that were there before a change set and whose ledger, seed weight or records it touched, as it stands now. */
async function jarsOf(tx: Transaction, rows: readonly TakenBackRow[]) {
  const made = new Set(rows.flatMap(({ table, id, before }) => (table === "Lot" && before === null ? [id] : [])));
  const ids = rows.flatMap(({ table, id, before, after }) => {
    if (table === "LedgerEntry") return [before?.lotId, after?.lotId];
    return table === "Lot" ? [id, before?.sameAsId, after?.sameAsId] : [];
  });
  const lots = await tx.lot.findMany({
    where: { id: { in: [...new Set(ids)].filter((id) => typeof id === "string" && !made.has(id)) as string[] } },
    select: { id: true, number: true, thousandSeedGrams: true },
    orderBy: { id: "asc" },
  });
  const jars = new Map<string, Jar>();
  for (const { id, ...lot } of lots) jars.set(id, { ...lot, entries: await entriesOfLot(tx, id) });
  return jars;
}

interface Jar {
  readonly number: string;
  readonly thousandSeedGrams: number | null;
  readonly entries: Awaited<ReturnType<typeof entriesOfLot>>;
}

/**
 * Takes something back, and refuses it where a jar would hold less than nothing then, or more of a debt than before: seed that came in by it has left since.
 */
export async function refusedInDebt(
  tx: Transaction,
  rows: readonly TakenBackRow[],
  takeBack: () => Promise<void>,
): Promise<Refusal[]> {
  const before = await jarsOf(tx, rows);
  await takeBack();
  const after = await jarsOf(tx, rows);
  return [...after].flatMap(([id, { number, entries, thousandSeedGrams }]) => {
    return debtRefusal(before.get(id)?.entries ?? [], entries, `what came into lot ${number}`, thousandSeedGrams) ?? [];
  });
}
