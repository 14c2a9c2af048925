import { exactInterval, exactUpperBound } from "@/lib/science/binomial/exact-interval";
import type { Interval } from "@/lib/science/binomial/interval";
import { countFault, faultsAmong, insideFault, shareAboveZeroFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface ForeignPollenSeenInput {
  /** seeds or seedlings looked at */
  readonly sampled: number;
  /** those among them that show the foreign mark */
  readonly found: number;
  /** g: share of the foreign pollen that carries the mark, above 0; default 1, a uniform neighbour */
  readonly carrying?: number;
  /** between 0 and 1; default 0.95 */
  readonly confidence?: number;
}

export interface ForeignPollenSeen {
  /** share of the seeds with a foreign father; null where more show the mark than that pollen could give */
  readonly share: number | null;
  /** two-sided exact, at most 1 */
  readonly interval: Interval;
  /** one-sided exact, at most 1: the true share is hardly above this */
  readonly upperBound: number;
  readonly assumed: readonly Assumption[];
}

/**
 * The share of seeds with a foreign father, from a mark that the foreign pollen carries and the variety does not: a kernel colour that shows
 * on the ear in the same season (xenia), or an off-type in the next sowing.
 *
 *     m̂ = x/(n g);  interval = exact interval of x/n, divided by g;  none seen: at most (1 − 0.05^(1/n))/g
 *
 * n `sampled`, x `found`, g `carrying`. Shares of 0 to 1.
 * Refused: nothing looked at, counts that are not whole, more found than looked at, a g of 0 or above 1.
 * Limits: the mark is dominant and the variety has none of it: one that is recessive or shared shows nothing. Seeds of one ear or head share
 * their pollen, so that they say less than as many from as many plants; the margin of a plot shows far more than its middle.
 * Example: 6 of 400, g 1: 1.5 %, 0.55 % to 3.24 %. 0 of 300: at most 0.99 %.
 * Source: the binomial taken directly; Clopper & Pearson 1934, Biometrika 26:404-413.
 */
export function foreignPollenSeen(input: ForeignPollenSeenInput): Outcome<ForeignPollenSeen> {
  const { sampled, found, carrying = 1, confidence = 0.95 } = input;
  const faults = faultsAmong(
    countFault([], "sampled", sampled, 1),
    countFault([], "found", found),
    shareAboveZeroFault([], "carrying", carrying),
    insideFault([], "confidence", confidence),
  );
  if (faults.length === 0 && found > sampled) {
    const needed = "those that show the mark may not pass the seeds looked at";
    faults.push(refusal("more-found-than-sampled", ["found"], found, `is more than the ${sampled} looked at`, needed));
  }
  if (faults.length > 0) return refused(...faults);
  const exact = exactInterval(found, sampled, confidence);
  const ofAll = (share: number) => Math.min(1, share / carrying);
  const share = found / sampled / carrying;
  const assumed: Assumption[] = [];
  if (input.carrying === undefined)
    assumed.push({ code: "uniform-neighbour", text: "all foreign pollen carries the mark" });
  if (input.confidence === undefined) assumed.push({ code: "confidence-95", text: "bounds at 95 % confidence" });
  return accepted({
    share: share > 1 ? null : share,
    interval: { low: ofAll(exact.low), high: ofAll(exact.high) },
    upperBound: ofAll(exactUpperBound(found, sampled, confidence)),
    assumed,
  });
}
