import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import type { NewRowOf } from "@/lib/registry/change-set/records";
import { balanceOf } from "@/lib/registry/ledger/balance";
import { debtRefusal } from "@/lib/registry/ledger/debt-refusal";
import type { SeedsUsed } from "@/lib/schemas/germination-test/test-entry";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { entriesOfLot } from "../ledger/entries-of-lot";

/**
 * The ledger entry for seeds laid out in a test, or null where the person wants none. Grams are seeds × thousand-seed weight / 1000, or
 * what was weighed. Refused where the lot has no thousand-seed weight, where its quantity is not known, and where more would leave
 * the jar than was in it.
 */
export async function seedsUsed(
  tx: Transaction,
  used: SeedsUsed,
  test: { readonly name: string; readonly on: FuzzyDate; readonly seeds: number },
  lot: { readonly id: string; readonly number: string; readonly thousandSeedGrams: number | null },
): Promise<Outcome<NewRowOf<"LedgerEntry"> | null>> {
  if (used.book === "no") return accepted(null);
  const path = ["seedsUsed"];
  if (used.book === "by-seed-weight" && lot.thousandSeedGrams === null) {
    const needed = "count and weigh some seed of it first, or write the grams yourself";
    return refused(refusal("no-seed-weight", path, lot.number, "has no thousand-seed weight on record", needed));
  }
  const grams = used.book === "weighed" ? used.grams : (test.seeds * (lot.thousandSeedGrams ?? 0)) / 1000;
  const entry = {
    id: uuidv7(),
    lotId: lot.id,
    on: test.on.text,
    onFirst: test.on.first,
    onLast: test.on.last,
    kind: "tested",
    amount: grams,
    unit: "g",
    how: used.book === "weighed" ? "weighed" : "by thousand-seed weight",
    other: test.name,
    replacesId: null,
    takenBack: false,
  };
  const before = await entriesOfLot(tx, lot.id);
  const stood = balanceOf(before, lot.thousandSeedGrams);
  if (stood.grams === null) {
    const needed = "weigh the jar in first, or leave the seeds unbooked";
    return refused(
      refusal("quantity-unknown", path, lot.number, "has no quantity on record to take seed from", needed),
    );
  }
  const debt = debtRefusal(before, [...before, entry], entry, lot.thousandSeedGrams);
  if (debt) return refused({ ...debt, path });
  return accepted(entry);
}
