import { faultsIn, positiveFault } from "@/lib/science/limits";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** Taking the same amount from every bag, after the smallest few were left out. */
export interface EqualTaking {
  /** how many of the smallest bags are left out */
  readonly leftOut: number;
  /** bags that are taken from: as many seed parents */
  readonly bags: number;
  /** what is taken from each, in the unit of the amounts: the smallest bag that is left */
  readonly each: number;
  readonly total: number;
}

/**
 * What can be taken in equal shares from bags that hold different amounts: from all of them the smallest sets the amount; without the
 * smallest, the next. Only those that give more than any that leaves out fewer.
 *
 *     with k left out of n bags a(1) ≤ a(2) ≤ … ≤ a(n):   each = a(k + 1),   total = (n − k) · a(k + 1)
 *
 * Units: any one unit for all (grams, seeds). Refused: no bag, an amount of nothing or less.
 * Example: bags of 2, 6 and 10 g: 2 g of each make 6 g, without the smallest 6 g of each make 12 g. Source: counting.
 */
export function equalTakings(amounts: readonly number[]): Outcome<EqualTaking[]> {
  const faults = faultsIn(amounts.map((amount, index) => positiveFault(["amounts"], index, amount)));
  if (amounts.length === 0)
    faults.push(refusal("no-bags", ["amounts"], [], "holds no bag", "give what lies in each, one at least"));
  if (faults.length > 0) return refused(...faults);
  const ascending = amounts.toSorted((one, other) => one - other);
  const takings: EqualTaking[] = [];
  for (const [leftOut, each] of ascending.entries()) {
    const bags = ascending.length - leftOut;
    const best = takings.at(-1)?.total ?? 0;
    if (bags * each > best) takings.push({ leftOut, bags, each, total: bags * each });
  }
  return accepted(takings);
}
