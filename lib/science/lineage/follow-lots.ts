import { sameParentTerms } from "@/lib/science/effective-size/same-parent-terms";
import { atOnce, eachInSteps, type Steps } from "@/lib/science/in-steps";
import { AncestorTrace } from "@/lib/science/lineage/ancestor-trace";
import { CoancestryInUse, recursionsNeeded } from "@/lib/science/lineage/coancestry-in-use";
import { emptyFigures, type LineageFigures, type MeansOfParents } from "@/lib/science/lineage/figures";
import { growCross } from "@/lib/science/lineage/grow-cross";
import { driftAmong, harvestAgain } from "@/lib/science/lineage/harvest-again";
import { type FounderLot, type GrowOutLot, isCross } from "@/lib/science/lineage/lots";
import { lotsInUse } from "@/lib/science/lineage/lots-in-use";
import type { Pedigree } from "@/lib/science/lineage/pedigree";
import type { CoancestryAmongParents, WeightedCoancestry } from "@/lib/science/lineage/weighted-coancestry";

/** Squares of lots in use may take this many numbers: 160 MB. */
const MOST_IN_SQUARES = 20_000_000;

/** The figures of all lots, parents before offspring. */
export function followLots(pedigree: Pedigree, way?: "trace" | "in-use"): LineageFigures {
  return atOnce(followInSteps(pedigree, way));
}

/** The same, laid down now and then. */
export function* followInSteps(pedigree: Pedigree, way?: "trace" | "in-use"): Steps<LineageFigures> {
  const figures = emptyFigures(pedigree.lots.length);
  const among = amongParentsOf(pedigree, figures, way);
  yield;
  yield* eachInSteps(pedigree.lots, (lot, rank) => {
    if (lot.kind === "founder") found(figures, rank, lot);
    else if (lot.kind === "drift") driftAmong(figures, rank, firstOf(pedigree, rank), lot);
    else {
      const mean = meansOfParents(pedigree, figures, rank);
      const theta = among.amongParents(rank);
      if (lot.kind === "harvest") harvestAgain(figures, rank, lot, mean, theta, firstOf(pedigree, rank));
      else if (lot.kind === "grow-out" && isCross(lot))
        growCross(figures, rank, lot, sidesOf(pedigree, rank, lot), mean, theta);
      else if (lot.kind === "grow-out") reproduce(figures, rank, lot, mean, theta);
      else pool(figures, rank, mean, theta);
    }
    among.settled(rank);
  });
  return figures;
}

/** The quicker of the two exact ways, by the steps that each could take at worst. */
function amongParentsOf(pedigree: Pedigree, figures: LineageFigures, way?: "trace" | "in-use"): CoancestryAmongParents {
  const use = lotsInUse(pedigree);
  const squares = use.slots ** 2 * recursionsNeeded(pedigree);
  const traceSteps = pedigree.lots.reduce(
    (sum, lot, rank) => sum + (lot.kind !== "founder" && lot.parents.length > 1 ? rank : 0),
    0,
  );
  const chosen = way ?? (squares <= MOST_IN_SQUARES && use.steps < traceSteps ? "in-use" : "trace");
  return chosen === "in-use" ? new CoancestryInUse(pedigree, figures, use) : new AncestorTrace(pedigree, figures);
}

function meansOfParents(pedigree: Pedigree, figures: LineageFigures, rank: number): MeansOfParents {
  const { firstParent, parentRank, parentShare } = pedigree;
  const mean = { inbreeding: 0, native: 0, generations: 0, nativeInbreeding: 0, bothNativeInside: 0 };
  for (let link = firstParent[rank] as number; link < (firstParent[rank + 1] as number); link++) {
    const parent = parentRank[link] as number;
    const share = parentShare[link] as number;
    mean.inbreeding += share * (figures.inbreeding[parent] as number);
    mean.native += share * (figures.native[parent] as number);
    mean.generations += share * (figures.generations[parent] as number);
    mean.nativeInbreeding += share * (figures.nativeInbreeding[parent] as number);
    mean.bothNativeInside += share * (figures.bothNativeInside[parent] as number);
  }
  return mean;
}

function found(figures: LineageFigures, rank: number, lot: FounderLot): void {
  const coancestry = lot.coancestry ?? 0;
  const inbreeding = lot.inbreeding ?? 0;
  figures.inbreeding[rank] = inbreeding;
  figures.coancestry[rank] = coancestry;
  figures.native[rank] = 1;
  figures.nativeIdentical[rank] = coancestry;
  figures.nativeInbreeding[rank] = inbreeding;
  figures.bothNativeInside[rank] = 1;
  figures.arisen[3 * rank] = coancestry;
  figures.arisen[3 * rank + 1] = coancestry;
}

function pool(figures: LineageFigures, rank: number, mean: MeansOfParents, theta: WeightedCoancestry): void {
  figures.inbreeding[rank] = mean.inbreeding;
  figures.coancestry[rank] = theta.coancestry;
  figures.native[rank] = mean.native;
  figures.generations[rank] = mean.generations;
  figures.nativeIdentical[rank] = theta.nativeIdentical;
  figures.nativeInbreeding[rank] = mean.nativeInbreeding;
  figures.bothNativeExcess[rank] = theta.bothNativeExcess;
  figures.bothNativeInside[rank] = mean.bothNativeInside;
  figures.passing[rank] = 1;
}

function reproduce(
  f: LineageFigures,
  rank: number,
  lot: GrowOutLot,
  mean: MeansOfParents,
  theta: WeightedCoancestry,
): void {
  const { seedParentTerm, pollenParentTerm, crossTerm } = sameParentTerms(lot);
  const s = lot.selfingRate ?? 0;
  const u = (1 - s) * (1 - (lot.foreignPollen ?? 0));
  const chanceSelfing = lot.sexes === "separate" || lot.selfIncompatible === true ? 0 : crossTerm;
  const passing = 1 - ((1 - s) * (lot.foreignPollen ?? 0)) / 2;
  const fromOnePlant = ((1 + s) ** 2 * seedParentTerm + 2 * u * (1 + s) * crossTerm + u * u * pollenParentTerm) / 4;

  const self = (1 + mean.inbreeding) / 2;
  const selfNative = (mean.native + mean.nativeInbreeding) / 2;
  const selfBothNative = (mean.native + mean.bothNativeInside) / 2;
  const bothNative = mean.native ** 2 + theta.bothNativeExcess;

  const inside = (selfTerm: number, between: number) =>
    s * selfTerm + u * (between + chanceSelfing * (selfTerm - between));
  f.inbreeding[rank] = inside(self, theta.coancestry);
  f.nativeInbreeding[rank] = inside(selfNative, theta.nativeIdentical);
  f.bothNativeInside[rank] = inside(selfBothNative, bothNative);

  const a2 = passing * passing;
  const arisen = fromOnePlant * (self - theta.coancestry);
  const arisenNative = fromOnePlant * (selfNative - theta.nativeIdentical);
  const arisenBothNative = fromOnePlant * (selfBothNative - bothNative);
  f.arisen[3 * rank] = arisen;
  f.arisen[3 * rank + 1] = arisenNative;
  f.arisen[3 * rank + 2] = arisenBothNative;
  f.coancestry[rank] = a2 * theta.coancestry + arisen;
  f.nativeIdentical[rank] = a2 * theta.nativeIdentical + arisenNative;
  f.bothNativeExcess[rank] = a2 * theta.bothNativeExcess + arisenBothNative;
  f.native[rank] = passing * mean.native;
  f.generations[rank] = 1 + mean.generations;
  f.passing[rank] = passing;
}

function firstOf({ firstParent, parentRank }: Pedigree, rank: number): number {
  return parentRank[firstParent[rank] as number] as number;
}

/** The lots of a cross: whose plants gave the seed, and whose the pollen. */
function sidesOf({ firstParent, parentRank }: Pedigree, rank: number, lot: GrowOutLot) {
  const first = firstParent[rank] as number;
  const [one, other] = [parentRank[first] as number, parentRank[first + 1] as number];
  return lot.parents[0]?.role === "seed parent" ? { seed: one, pollen: other } : { seed: other, pollen: one };
}
