import { faultsAmong, finiteFault, positiveFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Path, refusal, refused } from "@/lib/science/outcome";

/** When something flowers, in days: by its peak and spread, or by the first and last day seen. */
export type FloweringDays =
  | { readonly peak: number; readonly sd: number }
  | { readonly first: number; readonly last: number; readonly peak?: number };

/** Flowering read as a normal curve, in days. */
export interface FloweringCurve {
  readonly peak: number;
  readonly sd: number;
}

/**
 * Flowering as a normal curve: sd = (last − first)/4, the peak in the middle of first and last where none was seen.
 *
 * Refused: an sd that is not above 0, a last day that is not after the first, a peak outside them.
 * Limits: a rule of the trade for a single flush; crops that bloom for months are no bell. Source: usual practice, no paper read.
 */
export function floweringCurve(days: FloweringDays, at: Path): Outcome<FloweringCurve> {
  if ("sd" in days) {
    const faults = faultsAmong(finiteFault(at, "peak", days.peak), positiveFault(at, "sd", days.sd));
    return faults.length > 0 ? refused(...faults) : accepted({ peak: days.peak, sd: days.sd });
  }
  const { first, last, peak = (first + last) / 2 } = days;
  const faults = faultsAmong(
    finiteFault(at, "first", first),
    finiteFault(at, "last", last),
    finiteFault(at, "peak", peak),
  );
  if (faults.length > 0) return refused(...faults);
  if (!(last > first)) {
    return refused(
      refusal("no-days", [...at, "last"], last, "is not after the first day", "the last day lies after the first"),
    );
  }
  if (peak < first || peak > last) {
    const needed = `a day from ${first} to ${last} is needed`;
    return refused(refusal("peak-outside", [...at, "peak"], peak, "lies outside first and last", needed));
  }
  return accepted({ peak, sd: (last - first) / 4 });
}

/** The peak that was taken to lie in the middle, where one was. */
export function curveAssumed(days: FloweringDays, of: string): Assumption[] {
  if ("sd" in days) return [];
  const spread = { code: "spread-of-window", text: `${of}: the standard deviation is a quarter of first to last` };
  if (days.peak !== undefined) return [spread];
  return [spread, { code: "peak-in-the-middle", text: `${of}: the peak lies in the middle of first and last` }];
}
