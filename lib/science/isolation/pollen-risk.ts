import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type OddsShareInput, oddsShare } from "./odds-share";
import { type PlaneShareInput, planeShare } from "./plane-share";
import type { ShareOfSources } from "./share-of-sources";

export type PollenRiskInput =
  | (PlaneShareInput & { readonly form: "plane"; readonly uncertaintyFactor?: number })
  | (OddsShareInput & { readonly form: "odds"; readonly uncertaintyFactor?: number });

export interface PollenRisk extends ShareOfSources {
  /** the share divided and multiplied by the uncertainty factor, at most 1 */
  readonly range: { readonly low: number; readonly high: number };
  readonly assumed: readonly Assumption[];
}

/** How far a share may be off either way, by the form: from models against field data, direction of the wind and scatter of sites. */
const usualFactor = { plane: 5, odds: 10 } as const;

/**
 * The share of foreign pollen to expect in a plot, by a kernel over the plane (wind) or a measured curve of distance (insects), with
 * its range: share/f to min(1, share·f), f 5 for the plane and 10 for the curve unless told.
 *
 *     plane: share = Σ source/(own + Σ source), averaged over the plot's points;  curve: share = Σ term/(1 + Σ term)
 *
 * Shares 0..1, metres. Refused: what `planeShare` and `oddsShare` refuse; an uncertainty factor below 1. No sources give a share of 0, and say that none
 * given is not none there. Limits: a judgement with a wide range, never a verdict: the distance rule decides.
 * Source: the kernels' and curves' own, in pollen-models.json; the ranges are a judgement.
 */
export function pollenRisk(input: PollenRiskInput): Outcome<PollenRisk> {
  const factor = input.uncertaintyFactor ?? usualFactor[input.form];
  const outcome = input.form === "plane" ? planeShare(input) : oddsShare(input);
  const low = !(Number.isFinite(factor) && factor >= 1);
  if (!outcome.ok || low) {
    const own = low
      ? [
          refusal(
            "out-of-range",
            ["uncertaintyFactor"],
            factor,
            "cannot stand for uncertaintyFactor",
            "1 or more is needed",
          ),
        ]
      : [];
    return refused(...(outcome.ok ? [] : outcome.refusals), ...own);
  }
  const { foreignShare } = outcome.value;
  return accepted({
    ...outcome.value,
    range: { low: foreignShare / factor, high: Math.min(1, foreignShare * factor) },
    assumed: assumedOf(input, factor),
  });
}

function assumedOf(input: PollenRiskInput, factor: number): Assumption[] {
  if (input.sources.length === 0) {
    return [{ code: "no-sources", text: "no source was given, which is not the same as none there" }];
  }
  const assumed: Assumption[] = [];
  if (input.form === "plane" && input.points === undefined)
    assumed.push({ code: "nine-places", text: "the plot was looked at in 3 by 3 places" });
  if (input.form === "plane" && input.sources.some((source) => source.shedding === undefined))
    assumed.push({ code: "sheds-fully", text: "a source sheds all its pollen where nothing else is said" });
  if (input.uncertaintyFactor === undefined)
    assumed.push({ code: "usual-uncertainty", text: `the range is ${factor} times either way` });
  return assumed;
}
