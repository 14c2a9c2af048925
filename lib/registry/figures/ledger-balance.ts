import { type BookedEntry, gramsOnHand } from "../ledger/balance";

/**
 * Grams on hand by a lot's ledger, or null where no entry says anything of a weight. Sums of decimals are freed of their
 * binary rounding (below a microgram), -0 included. Source: the running balance, `balanceOf`.
 */
export function ledgerBalance(entries: readonly BookedEntry[], thousandSeedGrams: number | null): number | null {
  const grams = gramsOnHand(entries, thousandSeedGrams);
  return grams === null ? null : Number(grams.toFixed(9)) + 0;
}
