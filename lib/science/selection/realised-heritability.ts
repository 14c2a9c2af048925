import { type Fault, faultsAmong } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { solved } from "./solved";

export interface SelectionCycle {
  /** times the control factor; the last may be left out */
  readonly differential?: number;
  /** of the plants that were chosen among; the first is the base */
  readonly mean: number;
}

export interface DriftOfCycles {
  readonly additiveVariance: number;
  readonly effectiveSize: number;
  readonly phenotypicVariance: number;
  /** plants measured in each cycle, the base first */
  readonly measured: readonly number[];
}

interface Slope {
  readonly heritability: number;
  readonly standardError: number;
}

export interface RealisedHeritability extends Slope {
  readonly cumulative: readonly { readonly differential: number; readonly response: number }[];
  readonly withDrift: Slope | null;
  readonly assumed: readonly Assumption[];
}

/**
 * What share of what was chosen for stayed, over cycles of choosing.
 *
 *     S_t = Σ differentials before t;  R_t = mean_t − mean_0
 *     h² = Σ S R/Σ S²;  standard error √(Σ (R − h² S)²/(points − 1)/Σ S²)
 *     with drift: V_tu = min(t, u)·V_A/Ne + V_P/M₀ + [t = u]·V_P/M_t;  h² = S'V⁻¹R/S'V⁻¹S;  standard error 1/√(S'V⁻¹S)
 *
 * The first standard error is too small: the points share drift and the error of the base. Refused: fewer than three cycles, a
 * differential that is missing before the last, nothing chosen at all, variances or sizes that cannot be.
 * Source: Hill 1972, Biometrics 28:747-765; Falconer & Mackay 1996, ch. 11.
 */
export function realisedHeritability(given: {
  readonly cycles: readonly SelectionCycle[];
  readonly drift?: DriftOfCycles;
}): Outcome<RealisedHeritability> {
  const { cycles, drift } = given;
  const faults = [...cycleFaults(cycles), ...(drift ? driftFaults(drift, cycles.length) : [])];
  if (faults.length > 0) return refused(...faults);
  const base = cycles[0]?.mean ?? 0;
  let sum = 0;
  const cumulative = cycles.slice(1).map(({ mean }, place) => {
    sum += cycles[place]?.differential ?? 0;
    return { differential: sum, response: mean - base };
  });
  const squares = cumulative.reduce((total, { differential }) => total + differential ** 2, 0);
  if (squares === 0) {
    return refused(
      refusal(
        "nothing-chosen",
        ["cycles"],
        0,
        "is every cumulative differential",
        "give cycles in which something was chosen",
      ),
    );
  }
  const heritability = cumulative.reduce((total, { differential: s, response: r }) => total + s * r, 0) / squares;
  const left = cumulative.reduce((total, { differential: s, response: r }) => total + (r - heritability * s) ** 2, 0);
  const standardError = Math.sqrt(left / (cumulative.length - 1) / squares);
  return accepted({
    heritability,
    standardError,
    cumulative,
    withDrift: drift ? slopeWithDrift(cumulative, drift) : null,
    assumed: [],
  });
}

function slopeWithDrift(points: RealisedHeritability["cumulative"], drift: DriftOfCycles): Slope {
  const { additiveVariance, effectiveSize, phenotypicVariance, measured } = drift;
  const base = phenotypicVariance / (measured[0] ?? 1);
  const variance = points.map((_, t) =>
    points.map((_, u) => {
      const shared = ((Math.min(t, u) + 1) * additiveVariance) / effectiveSize + base;
      return t === u ? shared + phenotypicVariance / (measured[t + 1] ?? 1) : shared;
    }),
  );
  const s = points.map(({ differential }) => differential);
  const weights = solved(variance, s);
  const along = (of: readonly number[]) => weights.reduce((sum, weight, t) => sum + weight * (of[t] ?? 0), 0);
  const information = along(s);
  return {
    heritability: along(points.map(({ response }) => response)) / information,
    standardError: 1 / Math.sqrt(information),
  };
}

function cycleFaults(cycles: readonly SelectionCycle[]): Refusal[] {
  if (cycles.length < 3) {
    return [
      refusal(
        "too-few-cycles",
        ["cycles"],
        cycles.length,
        "cycles are no series",
        "give three cycles or more, the base first",
      ),
    ];
  }
  return cycles.flatMap(({ differential }, place) =>
    differential === undefined && place < cycles.length - 1
      ? [
          refusal(
            "no-differential",
            ["cycles", place, "differential"],
            differential,
            "stands there",
            "only the last may be left out",
          ),
        ]
      : [],
  );
}

function driftFaults(drift: DriftOfCycles, cycles: number): Refusal[] {
  const { additiveVariance, effectiveSize, phenotypicVariance, measured } = drift;
  const above = (key: string, value: number, least: 0 | "above"): Fault =>
    Number.isFinite(value) && (least === 0 ? value >= 0 : value > 0)
      ? undefined
      : refusal(
          "out-of-range",
          ["drift", key],
          value,
          "cannot be",
          `a number ${least === 0 ? "of 0 or more" : "above 0"} is needed`,
        );
  const faults = faultsAmong(
    above("additiveVariance", additiveVariance, 0),
    above("effectiveSize", effectiveSize, "above"),
    above("phenotypicVariance", phenotypicVariance, "above"),
    measured.length === cycles
      ? undefined
      : refusal(
          "measured",
          ["drift", "measured"],
          measured.length,
          "counts do not fit",
          `give one for each of the ${cycles} cycles`,
        ),
  );
  const counts = measured.flatMap((count, place) =>
    Number.isSafeInteger(count) && count >= 1
      ? []
      : [
          refusal(
            "out-of-range",
            ["drift", "measured", place],
            count,
            "is no count",
            "a whole number, 1 or more, is needed",
          ),
        ],
  );
  return [...faults, ...counts];
}
