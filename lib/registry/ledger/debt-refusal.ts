import { type Refusal, refusal } from "@/lib/science/outcome";
import { type BookedEntry, balanceOf, bringsIn, tolerableDebtGrams } from "./balance";

/**
 * Refuses a change of the ledger after which the jar would have held less than nothing (by more than half a gram) on some day
 * on which it did not before, or more of a debt than before. `entry` is the one that is written, or the words of one that is taken back.
 */
export function debtRefusal(
  before: readonly BookedEntry[],
  after: readonly BookedEntry[],
  entry: BookedEntry | string,
  thousandSeedGrams: number | null,
): Refusal | null {
  const was = new Map(balanceOf(before, thousandSeedGrams).steps.map((step) => [step.entry.id, step.balance]));
  const debts = balanceOf(after, thousandSeedGrams).steps.filter((step) => {
    if (step.balance >= -tolerableDebtGrams) return false;
    const earlier = was.get(step.entry.id);
    return earlier === undefined || step.balance < earlier - 1e-9;
  });
  const [first] = debts;
  if (!first) return null;
  const wrong = `would leave ${plainGrams(first.balance)} in the jar on ${first.day}`;
  if (typeof entry === "string") {
    return refusal("balance-below-zero", ["reason"], entry, `cannot be taken back: it ${wrong}`, weighIn);
  }
  if (bringsIn(entry.kind) || entry.kind === "weighed") {
    return refusal("balance-below-zero", ["amount"], entry.amount, wrong, `look at the later entries, or ${weighIn}`);
  }
  const worst = Math.min(...debts.map((step) => step.balance));
  return refusal("balance-below-zero", ["amount"], entry.amount, wrong, atMost(entry, worst, thousandSeedGrams));
}

const weighIn = `weigh the jar and enter that first ("weighed")`;

function atMost(entry: BookedEntry, worst: number, thousandSeedGrams: number | null): string {
  const inSeeds = entry.unit === "seeds" && thousandSeedGrams !== null;
  const debt = inSeeds ? (-worst * 1000) / thousandSeedGrams : -worst;
  const most = inSeeds ? Math.floor(entry.amount - debt) : Math.floor((entry.amount - debt) * 100) / 100;
  if (most <= 0) return weighIn;
  return `write at most ${most} ${inSeeds ? "seeds" : "g"}, or ${weighIn}`;
}

function plainGrams(grams: number): string {
  return `${String(Math.round(grams * 100) / 100).replace("-", "−")} g`;
}
