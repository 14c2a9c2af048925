import type { Client, Transaction } from "@/lib/db";
import { storedTestsOfLot, summedUp } from "../germination-tests/tests-of-lot";
import { balanceOf } from "../ledger/balance";
import { entriesOfLot } from "../ledger/entries-of-lot";
import type { LotToMove } from "./status-moves";

/** What a move in a lot's life rests on, as it is stored. */
export async function lotToMove(
  tx: Client | Transaction,
  lot: { readonly id: string; readonly status: string | null; readonly thousandSeedGrams: number | null },
): Promise<LotToMove> {
  const tests = (await storedTestsOfLot(tx, lot.id)).map(summedUp).filter((test) => test.totals.counted);
  const last = tests.at(-1);
  const entries = await entriesOfLot(tx, lot.id);
  return {
    status: lot.status,
    lastTest: last ? { sown: last.totals.sown, normal: last.totals.sums.normal ?? 0 } : null,
    grams: balanceOf(entries, lot.thousandSeedGrams).grams,
  };
}
