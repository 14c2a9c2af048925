import { faultsAmong, faultsIn, positiveFault } from "@/lib/science/limits";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** Taking the small bags whole and no more than a cap of any other. */
export interface CappedTaking {
  readonly cap: number;
  /** of each bag, in the order given */
  readonly takings: readonly number[];
  /** bags that are emptied */
  readonly whole: number;
}

/**
 * The evenest way to take an amount from bags that hold different amounts: the cap c with
 *
 *     Σ min(aᵢ, c) = wanted
 *
 * so that Σ shares², and with it what is lost, is as small as it can be. Units: any one unit. Refused: an amount of nothing or less, more
 * wanted than the bags hold. Example: 12 g of bags of 2, 6 and 10 g: 2, 5 and 5 g. Source: equalising the largest parts minimises a sum of
 * squares under upper bounds (Kuhn–Tucker conditions).
 */
export function cappedTaking(amounts: readonly number[], wanted: number): Outcome<CappedTaking> {
  const faults = [
    ...faultsIn(amounts.map((amount, index) => positiveFault(["amounts"], index, amount))),
    ...faultsAmong(positiveFault([], "wanted", wanted)),
  ];
  const whole = amounts.reduce((sum, amount) => sum + amount, 0);
  if (faults.length === 0 && wanted > whole * (1 + 1e-9))
    faults.push(refusal("more-than-held", ["wanted"], wanted, `is more than the ${whole} held`, "want that or less"));
  if (faults.length > 0) return refused(...faults);
  const ascending = amounts.toSorted((one, other) => one - other);
  let cap = ascending.at(-1) ?? 0;
  let below = 0;
  for (const [place, amount] of ascending.entries()) {
    const even = (wanted - below) / (ascending.length - place);
    if (even <= amount) {
      cap = even;
      break;
    }
    below += amount;
  }
  const takings = amounts.map((amount) => Math.min(amount, cap));
  return accepted({ cap, takings, whole: amounts.filter((amount) => amount <= cap).length });
}
