import { dateInWords } from "@/lib/display/dates";
import { plainNumber, significant } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { distance, type UnitSettings } from "@/lib/display/units";
import type { AssessedNeighbour, Assessment } from "@/lib/registry/neighbours/assess-neighbours";
import type { GroundOfNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import type { KnownWindow } from "@/lib/registry/neighbours/windows";
import type { IsolationDistances, IsolationPurpose } from "@/lib/science/isolation/distance-rule";
import type { WindowEnd, WindowOverlap } from "@/lib/science/isolation/flowering-window";
import type { NeighbourVerdict, VerdictReason } from "@/lib/science/isolation/neighbour-verdict";

/** The verdict of the rule on a neighbour, in a word or two. */
export const verdictNames: Readonly<Record<NeighbourVerdict, string>> = {
  ok: "ok",
  marginal: "marginal",
  "too-close": "too close",
  "does-not-cross": "does not cross",
  "rarely-crosses": "hardly crosses",
  "none-known": "no crossing known",
  "same-variety": "the same variety",
  "not-assessed": "not assessed",
};

export const purposeNames: Readonly<Record<IsolationPurpose, string>> = {
  stewardship: "to keep the variety",
  home: "for home use",
};

/** The distances of the rule: "200 m to 800 m". */
export function distancesWords(distances: IsolationDistances, units: UnitSettings): string {
  const { min, max } = distances;
  return min === max ? distance(max, units) : `${distance(min, units)} to ${distance(max, units)}`;
}

/** Why a neighbour is judged so, a phrase a reason. */
export function reasonWords(
  each: AssessedNeighbour,
  { distances, receptive }: Assessment,
  ground: GroundOfNeighbours,
  units: UnitSettings,
): string[] {
  const far = (metres: number | undefined) => distance(metres ?? null, units);
  const words: Readonly<Record<VerdictReason, () => string>> = {
    "same-variety": () => "its pollen is not foreign, though another keeping of it may have drifted",
    clonal: () => "the crop is kept by division, so its pollen does not matter unless true seed is saved",
    "no-crop-named": () => "no crop is named, so nobody can say whether it crosses",
    "unknown-pair": () => `the list does not say whether ${each.neighbour.cropName} and ${ground.cropName} cross`,
    "does-not-cross": () => `${each.neighbour.cropName} and ${ground.cropName} do not cross`,
    "none-known": () => `no crossing of ${each.neighbour.cropName} and ${ground.cropName} is known`,
    "rarely-crosses": () =>
      `${each.neighbour.cropName} and ${ground.cropName} hardly cross (about ${factorWords(each)} of full crossing)`,
    "no-distances-of-crop": () => `no isolation distance of ${ground.cropName} is known`,
    "distance-unknown": () => "how far off it stands is not written",
    "within-inner": () => `nearer than ${far(distances?.min)}`,
    between: () => `between ${far(distances?.min)} and ${far(distances?.max)}`,
    "beyond-outer": () => `${far(distances?.max)} off or more`,
    "apart-in-time": () => "its flowering was seen to lie apart from ours",
    "apart-as-told": () => "by what was told it flowers apart from ours, which nobody saw",
    "days-in-common": () => `in flower together on ${overlapWords(each.overlap, receptive)}`,
    "time-unknown": () => "whether both flower at once is not known",
    "crosses-in-part": () => `it crosses in part (about ${factorWords(each)} of full crossing)`,
    "far-larger": () =>
      `${significant(each.sizeRatio ?? 0, 2)} times our size: a large field reaches farther than the list’s distances`,
  };
  return each.reasons.map((reason) => words[reason]());
}

function factorWords({ crossing }: AssessedNeighbour): string {
  return plainNumber(crossing?.factor ?? 0, 6);
}

/** Days in common with the days on which our stigmas were receptive: "6 of 10 days", "3 to 8 days", "an unknown number of days". */
export function overlapWords(overlap: WindowOverlap | null, receptive: WindowOverlap | null): string {
  if (overlap === null) return "an unknown number of days";
  const days = spanOfDays(overlap);
  const exact = receptive !== null && receptive.most !== null && receptive.least === receptive.most;
  return exact && overlap.most === overlap.least ? `${overlap.least} of ${counted(receptive.least, "day")}` : days;
}

function spanOfDays({ least, most }: WindowOverlap): string {
  if (most === null) return least === 0 ? "an unknown number of days" : `${counted(least, "day")} or more`;
  return least === most ? counted(least, "day") : `${least} to ${counted(most, "day")}`;
}

/** When something flowers: "10 July 2026 to 20 July 2026", "from 10 July 2026, end not noted". */
export function windowWords(window: KnownWindow | null): string {
  if (window === null) return "not known";
  const { from, to } = window;
  if (from && to) return `${endWords(from)} to ${endWords(to)}`;
  if (from) return `from ${endWords(from)}, end not noted`;
  return to ? `until ${endWords(to)}, beginning not noted` : "not known";
}

function endWords({ first, last }: WindowEnd): string {
  return first === last ? dateInWords(first) : `between ${dateInWords(first)} and ${dateInWords(last)}`;
}
