import { faultsAmong, notNegativeFault, positiveFault, shareFault } from "@/lib/science/limits";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { curveFaults, type DistanceCurve, shareAtDistance } from "./distance-curve";
import { repeatedIds, type ShareOfSources, shareOfSources } from "./share-of-sources";

export interface OddsSource {
  readonly id: string;
  /** from edge to edge */
  readonly distanceMetres: number;
  /** flowers open, else plants, else area: in the unit of the plot's size */
  readonly size: number;
  /** part of its pollen that meets our stigmas in time, 0..1 */
  readonly overlap: number;
  /** part of it that makes seed on our plants, 0..1 */
  readonly compatibility: number;
}

export interface OddsShareInput {
  readonly curve: DistanceCurve;
  readonly plotSize: number;
  readonly sources: readonly OddsSource[];
}

// A source a hundred times as large does not send a hundred times the pollen to our flowers: visitors have filled up elsewhere.
const [leastRatio, mostRatio] = [0.1, 10] as const;

/**
 * The share of foreign pollen by a measured curve of distance: term = P/(1 − P)·clamp(size/plot, 0.1, 10)·overlap·compatibility,
 * share = Σ term/(1 + Σ term).
 *
 * Refused: a size that is not above 0, a P(d) of 1, factors outside 0..1. Limits: one curve stands for all places; where it counts
 * seeds, selfing is in it already. Example: faba bean, 30 m², a source of 60 m² at 150 m: 0.0155.
 */
export function oddsShare(input: OddsShareInput): Outcome<ShareOfSources> {
  const { curve, plotSize, sources } = input;
  const faults = oddsFaults(input);
  if (faults.length > 0) return refused(...faults);
  const terms = sources.map((source) => {
    const share = shareAtDistance(curve, source.distanceMetres);
    const size = Math.min(mostRatio, Math.max(leastRatio, source.size / plotSize));
    return (share / (1 - share)) * size * source.overlap * source.compatibility;
  });
  const whole = terms.reduce((sum, term) => sum + term, 1);
  return accepted(shareOfSources(sources.map(({ id }, index) => ({ id, share: (terms[index] as number) / whole }))));
}

function oddsFaults({ curve, plotSize, sources }: OddsShareInput): Refusal[] {
  const faults = [
    ...curveFaults(curve, ["curve"]),
    ...faultsAmong(positiveFault([], "plotSize", plotSize)),
    ...sources.flatMap((source, index) => {
      const at = ["sources", index];
      return faultsAmong(
        notNegativeFault(at, "distanceMetres", source.distanceMetres),
        positiveFault(at, "size", source.size),
        shareFault(at, "overlap", source.overlap),
        shareFault(at, "compatibility", source.compatibility),
      );
    }),
    ...repeatedIds(sources),
  ];
  if (faults.length > 0) return faults;
  return sources.flatMap(({ distanceMetres }, index) => {
    if (shareAtDistance(curve, distanceMetres) < 1) return [];
    const needed = "a curve below 1 at every source: lower its cap";
    const at = ["sources", index, "distanceMetres"];
    return [refusal("share-is-all", at, distanceMetres, "has a share of 1 on this curve", needed)];
  });
}
