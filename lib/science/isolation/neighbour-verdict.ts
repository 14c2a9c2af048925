import type { CrossingOfPair } from "./crossing-of-pair";
import { distanceRule, type IsolationDistances } from "./distance-rule";
import type { WindowOverlap } from "./flowering-window";

/** What can be said of a neighbour source. */
export type NeighbourVerdict =
  | "ok"
  | "marginal"
  | "too-close"
  | "does-not-cross"
  | "rarely-crosses"
  | "none-known"
  | "same-variety"
  | "not-assessed";

/** Why: what decided first, then what else bears on it. */
export type VerdictReason =
  | "same-variety"
  | "clonal"
  | "no-crop-named"
  | "unknown-pair"
  | "does-not-cross"
  | "none-known"
  | "rarely-crosses"
  | "no-distances-of-crop"
  | "distance-unknown"
  | "within-inner"
  | "between"
  | "beyond-outer"
  | "apart-in-time"
  | "apart-as-told"
  | "days-in-common"
  | "time-unknown"
  | "crosses-in-part"
  | "far-larger";

export interface NeighbourFacts {
  readonly sameVariety: boolean;
  /** our crop is kept by division: pollen does not matter unless true seed is saved */
  readonly clonal: boolean;
  /** null where no crop is named */
  readonly crossing: CrossingOfPair | null;
  readonly distances: IsolationDistances | null;
  /** edge to edge; null unknown */
  readonly distanceMetres: number | null;
  /** of its pollen with our stigmas; null where neither window was noted */
  readonly overlap: WindowOverlap | null;
  /** the windows lie apart by what was seen in the field on both sides, not by what was told */
  readonly apartAsSeen: boolean;
  /** its size against our plot's; null where either is unknown */
  readonly sizeRatio: number | null;
}

export interface VerdictOnNeighbour {
  readonly verdict: NeighbourVerdict;
  readonly reasons: readonly VerdictReason[];
}

/** From here on a source is called far larger than the plot: the odds form of the share counts no more than this. */
export const farLarger = 10;

/**
 * The verdict of the distance rule on one neighbour source: only what crosses fully or in part is judged by its distance. A source whose
 * flowering was seen to lie apart from ours is ok whatever its distance; what was only told parts nothing. What is not known is not
 * assessed, never ok.
 * Source: the distance rule over the crop's isolation distances; time in place of distance: WAC 16-302-290 (only where no stigma is
 * receptive while the other sheds).
 */
export function neighbourVerdict(facts: NeighbourFacts): VerdictOnNeighbour {
  const { crossing, distances, distanceMetres } = facts;
  if (facts.clonal) return { verdict: "ok", reasons: ["clonal"] };
  if (facts.sameVariety) return { verdict: "same-variety", reasons: ["same-variety"] };
  if (crossing === null) return { verdict: "not-assessed", reasons: ["no-crop-named"] };
  if (crossing.degree === "unknown") return { verdict: "not-assessed", reasons: ["unknown-pair"] };
  if (crossing.degree === "none") return { verdict: "does-not-cross", reasons: ["does-not-cross"] };
  if (crossing.degree === "none-known") return { verdict: "none-known", reasons: ["none-known"] };
  if (crossing.degree === "rare") return { verdict: "rarely-crosses", reasons: ["rarely-crosses"] };
  const besides = reasonsBesides(facts);
  if (facts.apartAsSeen) return { verdict: "ok", reasons: ["apart-in-time", ...besides] };
  if (distances === null) return { verdict: "not-assessed", reasons: ["no-distances-of-crop", ...besides] };
  if (distanceMetres === null) return { verdict: "not-assessed", reasons: ["distance-unknown", ...besides] };
  const verdict = distanceRule(distanceMetres, distances);
  return { verdict, reasons: [decided[verdict], ...besides] };
}

const decided = { "too-close": "within-inner", marginal: "between", ok: "beyond-outer" } as const;

function reasonsBesides({ crossing, overlap, apartAsSeen, sizeRatio }: NeighbourFacts): VerdictReason[] {
  const reasons: VerdictReason[] = [];
  if (crossing?.degree === "partial") reasons.push("crosses-in-part");
  if (overlap === null || (overlap.most === null && overlap.least === 0)) reasons.push("time-unknown");
  else if (overlap.most !== 0) reasons.push("days-in-common");
  else if (!apartAsSeen) reasons.push("apart-as-told");
  if (sizeRatio !== null && sizeRatio >= farLarger) reasons.push("far-larger");
  return reasons;
}
