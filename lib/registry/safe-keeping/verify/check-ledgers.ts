import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { grouped } from "../../change-set/grouped";
import { type BookedEntry, balanceOf, bringsIn, gramsOf, tolerableDebtGrams } from "../../ledger/balance";
import { type Finding, fault, note } from "./finding";

interface Entry extends BookedEntry {
  readonly lotId: string;
  readonly number: string;
  readonly thousandSeedGrams: number | null;
  readonly transferId: string | null;
}

interface TransferRow {
  readonly id: string;
  readonly kind: string;
  readonly on: string;
  readonly lotId: string;
  readonly newLotId: string | null;
  readonly amount: number | null;
  readonly unit: string;
}

/**
 * Ledgers: a correction stands in the lot of the entry that it corrects, chains of corrections come to an end, what is on hand is the sum of what stands,
 * and both sides of a transfer say the same. A jar below zero is a note: somebody wrote it so, and somebody has to weigh it in.
 */
export async function checkLedgers(db: Database): Promise<{ looked: number; findings: Finding[] }> {
  const { entries, transfers } = await readTogether(db, selections);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const lots = [...grouped(entries, (entry) => entry.lotId).values()];
  const findings = [
    ...entries.flatMap((entry) => correctionFindings(entry, byId)),
    ...lots.flatMap(balanceFindings),
    ...transferFindings(entries, transfers),
  ];
  return { looked: entries.length, findings };
}

const entriesOfLedgers: Selection<Entry> = {
  columns: {
    id: "text",
    lotId: "text",
    number: "text",
    thousandSeedGrams: "number",
    kind: "text",
    amount: "number",
    unit: "text",
    onFirst: "text",
    onLast: "text",
    replacesId: "text",
    takenBack: "flag",
    transferId: "text",
  },
  rows: sql`
    SELECT e."id", e."lotId", l."number", l."thousandSeedGrams", e."kind", e."amount", e."unit", e."onFirst", e."onLast", e."replacesId",
      e."takenBack", e."transferId"
    FROM "LedgerEntry" e JOIN "Lot" l ON l."id" = e."lotId" ORDER BY e."id"`,
};
const transfersAll: Selection<TransferRow> = {
  columns: { id: "text", kind: "text", on: "text", lotId: "text", newLotId: "text", amount: "number", unit: "text" },
  rows: sql`SELECT t."id", t."kind", t."on", t."lotId", t."newLotId", t."amount", t."unit" FROM "Transfer" t ORDER BY t."id"`,
};
const selections = { entries: entriesOfLedgers, transfers: transfersAll };

function correctionFindings(entry: Entry, byId: ReadonlyMap<string, Entry>): Finding[] {
  if (entry.replacesId === null) return [];
  const old = byId.get(entry.replacesId);
  if (old && old.lotId !== entry.lotId)
    return [fault("ledgers", `Lot ${entry.number}: a correction points to an entry of lot ${old.number}.`)];
  const seen = new Set<string>();
  for (let at: Entry | undefined = entry; at; at = at.replacesId === null ? undefined : byId.get(at.replacesId)) {
    if (seen.has(at.id)) return [fault("ledgers", `Lot ${entry.number}: corrections point to each other in a ring.`)];
    seen.add(at.id);
  }
  return [];
}

function balanceFindings(entries: readonly Entry[]): Finding[] {
  const [first] = entries;
  if (!first || hasRing(entries)) return [];
  const balance = balanceOf(entries, first.thousandSeedGrams);
  const debt = balance.steps.find((step) => step.balance < -tolerableDebtGrams);
  const findings = debt
    ? [
        note(
          "ledgers",
          `Lot ${first.number}: more was taken out than was in, ${grams(-debt.balance)} g by ${debt.day}. Weigh it in.`,
        ),
      ]
    : [];
  const summed = sumOf(entries, first.thousandSeedGrams);
  if (summed !== null && balance.grams !== null && Math.abs(summed - balance.grams) > 1e-6)
    findings.push(
      fault(
        "ledgers",
        `Lot ${first.number}: its entries add up to ${grams(summed)} g, its balance says ${grams(balance.grams)} g.`,
      ),
    );
  return findings;
}

/** The sum of what stands, entry by entry and without their order; null where a weighing sets it anew. */
function sumOf(entries: readonly Entry[], thousandSeedGrams: number | null): number | null {
  const replaced = new Set(entries.map((entry) => entry.replacesId));
  const standing = entries.filter((entry) => !replaced.has(entry.id) && !entry.takenBack);
  if (standing.some((entry) => entry.kind === "weighed")) return null;
  return standing.reduce((sum, entry) => {
    const amount = gramsOf(entry, thousandSeedGrams) ?? 0;
    return sum + (bringsIn(entry.kind) ? amount : -amount);
  }, 0);
}

function hasRing(entries: readonly Entry[]): boolean {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  return entries.some((entry) => correctionFindings(entry, byId).length > 0);
}

/** An entry of a transfer stands in one of its two lots, one on each side at most, and says the transfer's own amount. */
function transferFindings(entries: readonly Entry[], transfers: readonly TransferRow[]): Finding[] {
  const replaced = new Set(entries.map((entry) => entry.replacesId));
  const linked = grouped(
    entries.filter((entry) => entry.transferId !== null && !entry.takenBack && !replaced.has(entry.id)),
    (entry) => entry.transferId as string,
  );
  return transfers.flatMap((transfer) => {
    const sides = linked.get(transfer.id) ?? [];
    const what = `The ${transfer.kind} of ${transfer.on}`;
    const findings = sides.flatMap((side) => {
      if (side.lotId !== transfer.lotId && side.lotId !== transfer.newLotId)
        return [fault("ledgers", `${what} is booked in lot ${side.number}, which it does not name.`)];
      if (transfer.amount !== null && (side.amount !== transfer.amount || side.unit !== transfer.unit))
        return [
          fault(
            "ledgers",
            `${what} says ${grams(transfer.amount)} ${transfer.unit}, the ledger of lot ${side.number} says ${grams(side.amount)} ${side.unit}.`,
          ),
        ];
      return [];
    });
    for (const kind of ["given", "received"])
      if (sides.filter((side) => side.kind === kind).length > 1)
        findings.push(fault("ledgers", `${what} is booked as ${kind} more than once.`));
    return findings;
  });
}

function grams(amount: number): string {
  return String(Number(amount.toFixed(6)));
}
