import { stringify } from "csv-stringify/sync";
import type { Balance } from "@/lib/registry/ledger/balance";
import type { LedgerRow } from "@/lib/registry/lots/read-ledger";

const head = ["date", "counts_on", "kind", "amount", "unit", "change_g", "balance_g", "other", "notes"];

/** A lot's ledger as a table: the entries that count, in their order, each with what it changed and what was left, in grams. */
export function ledgerCsv({ steps }: Balance<LedgerRow>): string {
  const rows = steps.map(({ entry, day, change, balance }) => [
    entry.on,
    day,
    entry.kind,
    entry.amount,
    entry.unit,
    change === null ? "" : grams(change),
    change === null ? "" : grams(balance),
    entry.other ?? "",
    entry.notes ?? "",
  ]);
  // Text that a spreadsheet would run as a formula is marked with an apostrophe.
  return stringify([head, ...rows], { record_delimiter: "\r\n", escape_formulas: true });
}

/** Sums of decimals, freed of their binary rounding (below a microgram). */
function grams(value: number): number {
  return Number(value.toFixed(9));
}
