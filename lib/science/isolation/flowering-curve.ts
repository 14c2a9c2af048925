import { type Fault, faultsAmong, finiteFault, positiveFault } from "@/lib/science/limits";
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

/** Days and spreads beyond it are no season's, and the integrals over them would lose every digit. */
const FARTHEST = 1_000_000;
/** A spread in days below it is no flowering: a tenth of a second. */
const LEAST_SPREAD = 1e-6;

/**
 * Flowering as a normal curve: sd = (last − first)/4, the peak in the middle of first and last where none was seen.
 *
 * Refused: an sd that is not above 0 (1e-6 days at least), a last day that is not after the first, a peak outside them, days more than a
 * million from day 0.
 * Limits: a rule of the trade for a single flush; crops that bloom for months are no bell. Source: usual practice, no paper read.
 */
export function floweringCurve(days: FloweringDays, at: Path): Outcome<FloweringCurve> {
  if ("sd" in days) {
    const faults = faultsAmong(dayFault(at, "peak", days.peak), spreadFault(at, days.sd));
    return faults.length > 0 ? refused(...faults) : accepted({ peak: days.peak, sd: days.sd });
  }
  const { first, last, peak = (first + last) / 2 } = days;
  const faults = faultsAmong(
    dayFault(at, "first", first),
    dayFault(at, "last", last),
    days.peak === undefined ? undefined : dayFault(at, "peak", days.peak),
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
  const sd = (last - first) / 4;
  if (sd < LEAST_SPREAD)
    return refused(refusal("no-days", [...at, "last"], last, "is hardly after the first day", leastSpread));
  return accepted({ peak, sd });
}

const leastSpread = `a spread of ${LEAST_SPREAD} days or more is needed`;

function dayFault(at: Path, key: string, given: number): Fault {
  const needed = `a day within ${FARTHEST} of day 0 is needed`;
  const far =
    Math.abs(given) > FARTHEST ? refusal("too-far", [...at, key], given, "is no day of a season", needed) : undefined;
  return finiteFault(at, key, given) ?? far;
}

function spreadFault(at: Path, sd: number): Fault {
  const fault = positiveFault(at, "sd", sd);
  if (fault || (sd >= LEAST_SPREAD && sd <= FARTHEST)) return fault;
  const wrong = sd < LEAST_SPREAD ? "is too small" : "is too large";
  return refusal("too-far", [...at, "sd"], sd, wrong, `a spread from ${LEAST_SPREAD} to ${FARTHEST} days is needed`);
}

/** The peak that was taken to lie in the middle, where one was. */
export function curveAssumed(days: FloweringDays, of: string): Assumption[] {
  if ("sd" in days) return [];
  const spread = { code: "spread-of-window", text: `${of}: the standard deviation is a quarter of first to last` };
  if (days.peak !== undefined) return [spread];
  return [spread, { code: "peak-in-the-middle", text: `${of}: the peak lies in the middle of first and last` }];
}
