import { sameParentTerms } from "@/lib/science/effective-size/same-parent-terms";
import type { LineageFigures, MeansOfParents } from "@/lib/science/lineage/figures";
import type { GrowOutLot } from "@/lib/science/lineage/lots";
import type { WeightedCoancestry } from "@/lib/science/lineage/weighted-coancestry";

/**
 * A cross: every seed has one gene of a plant of lot A (seed parents) and one of a plant of lot B (pollen parents), or of foreign pollen.
 *
 *     θ_new = ¼ G_A(P_MM) + ½ u Θ(A, B) + ¼ u² G_B(P_FF)        G_X(P) = P·S_X + (1 − P)·θ_X,  S_X = ½(1 + F_X),  u = 1 − m
 *     F_new = u Θ(A, B)
 *     n_new = ½ n_A + ½ u n_B,  and t, k with their own self terms, as lineage
 *
 * Takes Θ over both lots weighted ½ and ½u, over a = 1 − m/2 (`theta`), and tells the lot's figures. A gene of the new seed is of a gene of A
 * as often as of one of B; so seed of the cross and any older lot X have a (w_A Θ(A, X) + w_B Θ(B, X)), as every grow-out.
 * Source: a grow-out with q = 0 for the pollen side and p = 0 for the seed side in the contribution form of Lindgren & Mullin 1998,
 * Can. J. For. Res. 28:276-283; the inbreeding of offspring is the coancestry of the parents, Malécot 1948.
 */
export function growCross(
  f: LineageFigures,
  rank: number,
  lot: GrowOutLot,
  { seed, pollen }: { readonly seed: number; readonly pollen: number },
  mean: MeansOfParents,
  theta: WeightedCoancestry,
): void {
  const { seedParentTerm, pollenParentTerm } = sameParentTerms(lot);
  const u = 1 - (lot.foreignPollen ?? 0);
  const passing = (1 + u) / 2;
  const weights = [0.25, (u * u) / 4] as const;
  const at = (column: Float64Array, side: number) => column[side] as number;
  const both = (side: number) => at(f.native, side) ** 2 + at(f.bothNativeExcess, side);

  // w'Θw over both sides holds what is between them: the rest of it is within each.
  const between = (weighted: number, own: (side: number) => number) =>
    u === 0 ? 0 : (passing * passing * weighted - weights[0] * own(seed) - weights[1] * own(pollen)) / (u / 2);
  const betweenLots = between(theta.coancestry, (side) => at(f.coancestry, side));
  const betweenNative = between(theta.nativeIdentical, (side) => at(f.nativeIdentical, side));
  const betweenBoth =
    at(f.native, seed) * at(f.native, pollen) + between(theta.bothNativeExcess, (side) => at(f.bothNativeExcess, side));
  f.inbreeding[rank] = u * betweenLots;
  f.nativeInbreeding[rank] = u * betweenNative;
  f.bothNativeInside[rank] = u * betweenBoth;

  const arisen = (self: (side: number) => number, own: (side: number) => number) =>
    weights[0] * seedParentTerm * (self(seed) - own(seed)) +
    weights[1] * pollenParentTerm * (self(pollen) - own(pollen));
  const ofAll = arisen(
    (side) => (1 + at(f.inbreeding, side)) / 2,
    (side) => at(f.coancestry, side),
  );
  const ofNative = arisen(
    (side) => (at(f.native, side) + at(f.nativeInbreeding, side)) / 2,
    (side) => at(f.nativeIdentical, side),
  );
  const ofBoth = arisen((side) => (at(f.native, side) + at(f.bothNativeInside, side)) / 2, both);
  f.arisen[3 * rank] = ofAll;
  f.arisen[3 * rank + 1] = ofNative;
  f.arisen[3 * rank + 2] = ofBoth;
  f.coancestry[rank] = passing * passing * theta.coancestry + ofAll;
  f.nativeIdentical[rank] = passing * passing * theta.nativeIdentical + ofNative;
  f.bothNativeExcess[rank] = passing * passing * theta.bothNativeExcess + ofBoth;
  f.native[rank] = passing * mean.native;
  f.generations[rank] = 1 + mean.generations;
  f.passing[rank] = passing;
}
