import type { Transaction } from "@/lib/db";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { foldName } from "../names/fold-name";

/** Refuses a lot number that another lot has, in any letter case. No number: nothing to refuse. */
export async function numberFaults(tx: Transaction, number: string | null): Promise<Refusal[]> {
  if (number === null) return [];
  const taken = await tx.lot.findFirst({ where: { numberKey: foldName(number) }, select: { number: true } });
  if (!taken) return [];
  const needed =
    "a number is given once and for life: write another, or leave it empty and the label code is the number";
  return [refusal("number-taken", ["number"], number, `is the number of lot ${taken.number} already`, needed)];
}
