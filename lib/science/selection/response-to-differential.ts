import { faultsAmong, finiteFault, shareFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface ChosenBy {
  /** S, of the seed parents, in the trait's unit */
  readonly differential: number;
  /** h² lies between these; equal where it is known */
  readonly heritability: { readonly low: number; readonly high: number };
  /** whether the pollen, too, came from chosen plants alone */
  readonly control: "seed-parents" | "both-parents";
  readonly selfingRate?: number;
}

export interface ResponseSpan {
  /** what the next generation's mean may move by, in the trait's unit: at the lesser and at the greater heritability */
  readonly atLeast: number;
  readonly atMost: number;
  readonly assumed: readonly Assumption[];
}

/**
 * What one year of choosing may bring, from the differential that was measured.
 *
 *     R = c·h²·S;  c = (1 + s)/2 where seed parents alone were chosen, 1 where the pollen was, too
 *
 * Holds for counts and scores too, where an intensity times a standard deviation does not. Refused: a heritability or selfing rate that is no share, ends in
 * the wrong order. Limits: one generation, no soil in the differential; drift of few parents comes on top of it.
 * Example: S 8, h² 0.4, selfing 0.9, seed parents alone: 3.04.
 * Source: Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 11; with selfing: seed parents weigh (1 + s)/2.
 */
export function responseToDifferential({
  differential,
  heritability,
  control,
  selfingRate,
}: ChosenBy): Outcome<ResponseSpan> {
  const { low, high } = heritability;
  const faults = faultsAmong(
    shareFault(["heritability"], "low", low),
    shareFault(["heritability"], "high", high),
    shareFault([], "selfingRate", selfingRate),
    finiteFault([], "differential", differential),
    low > high
      ? refusal("ends-turned", ["heritability"], `${low} to ${high}`, "runs backwards", "give the lesser end first")
      : undefined,
  );
  if (faults.length > 0) return refused(...faults);
  const c = control === "both-parents" ? 1 : (1 + (selfingRate ?? 0)) / 2;
  const assumed =
    control === "seed-parents" && selfingRate === undefined
      ? [{ code: "selfing-rate", text: "no seed was selfed (selfing rate 0)" }]
      : [];
  return accepted({ atLeast: c * low * differential, atMost: c * high * differential, assumed });
}
