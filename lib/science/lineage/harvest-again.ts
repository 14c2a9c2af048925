import { sameParentTerms } from "@/lib/science/effective-size/same-parent-terms";
import type { LineageFigures, MeansOfParents } from "@/lib/science/lineage/figures";
import { type DriftLot, type HarvestLot, passingOf } from "@/lib/science/lineage/same-plants";
import type { WeightedCoancestry } from "@/lib/science/lineage/weighted-coancestry";

/** A part of what chance did among shared plants: D (S − θ̄), of θ, t and k, with S and θ̄ of the seed they grew of. */
export function driftAmong(f: LineageFigures, rank: number, plants: number, { probability }: DriftLot): void {
  const at = (column: Float64Array) => column[plants] as number;
  const native = at(f.native);
  const parts = [
    probability * ((1 + at(f.inbreeding)) / 2 - at(f.coancestry)),
    probability * ((native + at(f.nativeInbreeding)) / 2 - at(f.nativeIdentical)),
    probability * ((native + at(f.bothNativeInside)) / 2 - (native ** 2 + at(f.bothNativeExcess))),
  ] as const;
  f.arisen.set(parts, 3 * rank);
  f.coancestry[rank] = parts[0];
  f.nativeIdentical[rank] = parts[1];
  f.bothNativeExcess[rank] = parts[2];
}

/**
 * One of several harvests of the same plants: as a grow-out of its own, but that what chance did among the plants stands in parts which its
 * sisters share (see withSamePlants). F and n follow from its own shares of seed.
 */
export function harvestAgain(
  f: LineageFigures,
  rank: number,
  lot: HarvestLot,
  mean: MeansOfParents,
  theta: WeightedCoancestry,
  plants: number,
): void {
  const { selfingRate: s = 0, foreignPollen: m = 0 } = lot;
  const u = (1 - s) * (1 - m);
  const canSelf = lot.sexes !== "separate" && lot.selfIncompatible !== true;
  const chanceSelfing = canSelf ? sameParentTerms(lot).crossTerm : 0;
  const passing = passingOf(lot);
  const at = (column: Float64Array) => column[plants] as number;

  const inside = (selfTerm: number, between: number) =>
    s * selfTerm + u * (between + chanceSelfing * (selfTerm - between));
  f.inbreeding[rank] = inside((1 + mean.inbreeding) / 2, at(f.coancestry));
  f.nativeInbreeding[rank] = inside((mean.native + mean.nativeInbreeding) / 2, at(f.nativeIdentical));
  f.bothNativeInside[rank] = inside(
    (mean.native + mean.bothNativeInside) / 2,
    mean.native ** 2 + at(f.bothNativeExcess),
  );

  const a2 = passing * passing;
  f.coancestry[rank] = a2 * theta.coancestry;
  f.nativeIdentical[rank] = a2 * theta.nativeIdentical;
  f.bothNativeExcess[rank] = a2 * theta.bothNativeExcess;
  f.native[rank] = passing * mean.native;
  f.generations[rank] = 1 + mean.generations;
  f.passing[rank] = passing;
}
