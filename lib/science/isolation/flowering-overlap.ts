import { notNegativeFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refused } from "@/lib/science/outcome";
import { curveAssumed, type FloweringDays, floweringCurve } from "./flowering-curve";
import { normalOverlap } from "./normal-overlap";
import { stigmaShare } from "./stigma-share";
import { synchronyRatio } from "./synchrony-ratio";

export interface FloweringOverlapInput {
  /** when our stigmas (silks) are receptive, in days */
  readonly stigma: FloweringDays;
  /** when our own plants shed pollen */
  readonly ownPollen: FloweringDays;
  /** when the other planting sheds pollen */
  readonly foreignPollen: FloweringDays;
  /** ρ: foreign pollen that comes in all, for each part of our own; 0 or more */
  readonly loadRatio?: number;
}

export interface FloweringOverlap {
  /** the area that the foreign pollen and our stigmas have in common, 0..1 */
  readonly overlap: number;
  /** foreign pollen that meets our stigmas, relative to fully timed pollen, 0..1 */
  readonly synchrony: number;
  /** peak of the foreign pollen less peak of our stigmas; negative where it is the earlier */
  readonly daysApart: number;
  /** share of our stigmas' seed from foreign pollen, day by day; null without a load ratio */
  readonly share: number | null;
  readonly assumed: readonly Assumption[];
}

/**
 * How far the flowering of another planting meets ours, all read as normal curves.
 *
 *     overlap = ∫ min(foreign, stigma);  synchrony = exp(−δ²/(2(σf² + σs²)));  share = ∫ stigma·ρ foreign/(own + ρ foreign) dt
 *
 * Overlap and synchrony to 1e-9 relative, the share to 1e-6 relative or 1e-12. Refused: what `floweringCurve` refuses; a load
 * ratio below 0. Limits: a single flush each; the ends of flowering are the least noted and matter most.
 * Source: the overlap Inman & Bradley 1989, Commun. Stat. Theory Methods 18:3851-3874; the others derived from products of normal curves.
 */
export function floweringOverlap(input: FloweringOverlapInput): Outcome<FloweringOverlap> {
  const stigma = floweringCurve(input.stigma, ["stigma"]);
  const own = floweringCurve(input.ownPollen, ["ownPollen"]);
  const foreign = floweringCurve(input.foreignPollen, ["foreignPollen"]);
  const load = notNegativeFault([], "loadRatio", input.loadRatio);
  const faults = [stigma, own, foreign].flatMap((each) => (each.ok ? [] : each.refusals));
  if (load) faults.push(load);
  if (faults.length > 0 || !stigma.ok || !own.ok || !foreign.ok) return refused(...faults);
  return accepted({
    overlap: normalOverlap(foreign.value, stigma.value),
    synchrony: synchronyRatio(foreign.value, stigma.value),
    daysApart: foreign.value.peak - stigma.value.peak,
    share: input.loadRatio === undefined ? null : stigmaShare(stigma.value, own.value, foreign.value, input.loadRatio),
    assumed: [
      ...curveAssumed(input.stigma, "our stigmas"),
      ...(input.loadRatio === undefined ? [] : curveAssumed(input.ownPollen, "our pollen")),
      ...curveAssumed(input.foreignPollen, "the foreign pollen"),
    ],
  });
}
