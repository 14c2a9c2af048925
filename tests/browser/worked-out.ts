import assert from "node:assert/strict";
import { type CropProfile, cropList } from "@/lib/science/crops/crop-profile";
import { defaultSelfingRate, equilibriumInbreeding, selfIncompatible } from "@/lib/science/crops/mating";
import { type EffectiveSize, effectiveSize } from "@/lib/science/effective-size/effective-size";
import type { Shares } from "@/lib/science/effective-size/plot-parents";
import { type GerminationTest, germinationTest } from "@/lib/science/germination/germination-test";
import type { FloweringWindow } from "@/lib/science/isolation/flowering-window";
import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageLot, LotLineage } from "@/lib/science/lineage/lots";
import type { Outcome } from "@/lib/science/outcome";
import { reserve } from "@/lib/science/reserve/reserve";
import { thousandSeedWeight } from "@/lib/science/seed-weight/thousand-seed-weight";
import { type SowingCount, sowingCount } from "@/lib/science/sowing/sowing-count";

/*
 * What lib/science makes of what a steward of a walk told. No figure here is read from a page.
 */

/** What an outcome holds; a refusal fails the test. */
export function held<Value>(outcome: Outcome<Value>): Value {
  assert.ok(outcome.ok, outcome.ok ? "" : outcome.refusals.map(({ sentence }) => sentence).join("; "));
  return outcome.value;
}

/** The profile of a crop of the list. */
export function crop(key: string): CropProfile {
  const found = cropList().find((each) => each.key === key);
  assert.ok(found, `the crop ${key}`);
  return found;
}

/** A germination test: seeds in each replicate, and what came up on each day of counting. */
export interface TestTold {
  readonly on: string;
  readonly each: number;
  readonly days: readonly number[];
  readonly counts: readonly (readonly number[])[];
}

/** What a thousand seeds weigh, in grams. */
export function thousandGrams(weighed: readonly { readonly seeds: number; readonly grams: number }[]): number {
  return held(thousandSeedWeight({ counts: weighed })).thousandSeedGrams;
}

/** A test as its replicates read. */
export function testRead({ each, counts }: TestTold): GerminationTest {
  const replicates = counts.map((days) => ({ sown: each, normal: days.reduce((sum, count) => sum + count, 0) }));
  return held(germinationTest({ replicates }));
}

/** The seeds that plants ask for by a test: of the seeds that germinate 8 in 10 make a plant, enough in 9 of 10 sowings. */
export function sowingOf(test: GerminationTest, plants: number): SowingCount {
  const { sown, normal } = test;
  return held(sowingCount({ test: { sown, normal }, plantsWanted: plants, emergence: 0.8, confidence: 0.9 }));
}

/** What a holder keeps back who has nobody beside them: one grow-out, two tests of 50, a sowing for another place, an archive of 50. */
export function reserveOf(seedsPerGrowOut: number) {
  return held(reserve({ seedsPerGrowOut, growOuts: 1, tests: 2, seedsPerTest: 50, duplicates: 1, archive: 50 }));
}

/** How a crop's plants mate, where nobody recorded it. */
export function matingOf(profile: CropProfile) {
  const selfingRate = defaultSelfingRate(profile);
  const inbreeding = equilibriumInbreeding(selfingRate);
  return { selfingRate, selfIncompatible: selfIncompatible(profile), inbreeding };
}

/** The effective size of so many pollen and seed parents of a crop. */
export function sizeOf(
  profile: CropProfile,
  parents: { readonly pollenParents: number; readonly seedParents: number; readonly seedShares?: Shares },
): EffectiveSize {
  return held(effectiveSize({ ...matingOf(profile), ...parents }));
}

/** What a lot that was grown from a founder lot in one grow-out holds. */
export function lineageOf(
  profile: CropProfile,
  parents: { readonly pollenParents: number; readonly seedParents: number; readonly seedShares: Shares },
): LotLineage {
  const { inbreeding, ...mating } = matingOf(profile);
  const lots: LineageLot[] = [
    { id: "founder", kind: "founder", inbreeding },
    { id: "grown", kind: "grow-out", parents: [{ id: "founder", share: 1 }], ...mating, ...parents },
  ];
  const found = held(lineage({ lots })).lots.find(({ id }) => id === "grown");
  assert.ok(found);
  return found;
}

/** Days of flowering, first and last seen to the day. */
export function windowOf([first, last]: readonly [string, string]): FloweringWindow {
  return { from: { first, last: first }, to: { first: last, last } };
}
