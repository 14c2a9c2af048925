import { countFault, type Fault, faultsAmong, shareFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { intensityInfinite, intensityOf } from "./selection-intensity";

export interface SelectionPlan {
  /** plants to choose from */
  readonly candidates: number;
  readonly kept: number;
  readonly heritability: number;
  /** of single plants, in the trait's unit */
  readonly phenotypicSd: number;
  /** whether the pollen, too, came from chosen plants alone */
  readonly control: "seed-parents" | "both-parents";
  readonly selfingRate?: number;
}

export interface SelectionResponse {
  readonly proportion: number;
  /** for an endless field */
  readonly intensityInfinite: number;
  /** for this many plants, in standard deviations */
  readonly intensity: number;
  /** what the next generation's mean may move by, in the trait's unit */
  readonly response: number;
  readonly assumed: readonly Assumption[];
}

/**
 * What one year of choosing may bring.
 *
 *     p = k/n;  i the mean of the k largest of n normal draws;  R = i·h²·σ·c;  c = (1 + s)/2 for seed parents alone, 1 for both
 *
 * Refused: more kept than there are, a heritability or selfing rate that is no share, a standard deviation below 0.
 * Source: Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 11; with selfing: seed parents weigh (1 + s)/2.
 */
export function selectionResponse(plan: SelectionPlan): Outcome<SelectionResponse> {
  const { candidates, kept, heritability, phenotypicSd, control, selfingRate } = plan;
  const faults = faultsAmong(
    countFault([], "candidates", candidates, 1),
    countFault([], "kept", kept, 1),
    shareFault([], "heritability", heritability),
    spreadFault(phenotypicSd),
    shareFault([], "selfingRate", selfingRate),
    kept > candidates
      ? refusal(
          "more-kept",
          ["kept"],
          kept,
          `is more than the ${candidates} plants`,
          "keep at most as many as there are",
        )
      : undefined,
  );
  if (faults.length > 0) return refused(...faults);
  const proportion = kept / candidates;
  const intensity = intensityOf(candidates, kept);
  const c = control === "both-parents" ? 1 : (1 + (selfingRate ?? 0)) / 2;
  const assumed =
    control === "seed-parents" && selfingRate === undefined
      ? [{ code: "selfing-rate", text: "no seed was selfed (selfing rate 0)" }]
      : [];
  return accepted({
    proportion,
    intensityInfinite: intensityInfinite(proportion),
    intensity,
    response: intensity * heritability * phenotypicSd * c,
    assumed,
  });
}

function spreadFault(sd: number): Fault {
  if (Number.isFinite(sd) && sd >= 0) return undefined;
  return refusal("sd", ["phenotypicSd"], sd, "is no standard deviation", "a number of 0 or more is needed");
}
