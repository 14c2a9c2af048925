import { defaultSelfingRate, type Mating, selfIncompatible, separateSexes } from "@/lib/science/crops/mating";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import type { Assumption } from "@/lib/science/outcome";
import type { GrowOutRecord } from "./records";
import { withoutTassels } from "./without-tassels";

/** A grow-out's parents as the calculations take them, with what the crop's profile had to fill in. */
export interface ParentsOfRecord {
  /** null where the numbers of plants are not known */
  readonly parents: PlotParents | null;
  /** who mates how, which is known in any case */
  readonly mating: Pick<PlotParents, "sexes" | "selfIncompatible" | "selfingRate">;
  readonly assumed: readonly Assumption[];
}

/**
 * Pollen parents are the plants standing less those rogued before pollen shed; where the sexes are separate, the males. An
 * empty selfing rate is the crop's, nothing written of rogues is none. A plant whose tassel was taken has pollen share 0
 * (see withoutTassels). Nothing is known without the plants standing (the males), the seed parents and their shares.
 */
export function plotParentsOfRecord(growOut: GrowOutRecord, profile: Mating): ParentsOfRecord {
  const separate = separateSexes(profile);
  const selfingRate = growOut.selfingRate ?? defaultSelfingRate(profile);
  const mating: ParentsOfRecord["mating"] = separate
    ? { sexes: "separate", selfingRate }
    : { sexes: "hermaphrodite", selfingRate, selfIncompatible: selfIncompatible(profile) };
  const assumed: Assumption[] = [];
  if (growOut.selfingRate === null && !separate && !selfIncompatible(profile)) assumed.push(usualRate(selfingRate));
  const standing = separate ? growOut.malesStanding : growOut.plantsStanding;
  const { seedParents, seedShares } = growOut;
  if (standing === null || seedParents === null || seedShares === null) return { parents: null, mating, assumed };
  const rogued = separate ? 0 : (growOut.roguedBeforePollen ?? 0);
  if (!separate && growOut.roguedBeforePollen === null) {
    assumed.push({ code: "rogues-not-recorded", text: "no plant was rogued before pollen shed" });
  }
  if (growOut.seedParentsAtMost != null && growOut.seedParentsAtMost > seedParents) {
    const text = `the seed parents of several harvests, of which some were only counted, are the same plants (${seedParents}, at most ${growOut.seedParentsAtMost})`;
    assumed.push({ code: "harvests-of-same-plants", text });
  }
  const whole: PlotParents = { pollenParents: standing - rogued, seedParents, seedShares, ...mating };
  if (separate) return { parents: whole, mating, assumed };
  const { parents, assumed: ofTassels } = withoutTassels(whole, growOut);
  return { parents, mating, assumed: [...assumed, ...ofTassels] };
}

// Thousands of grow-outs share a few rates, and six figures of a number are dear to write.
const usualRates = new Map<number, Assumption>();

function usualRate(selfingRate: number): Assumption {
  const known = usualRates.get(selfingRate);
  if (known) return known;
  const text = `the selfing rate is the crop's usual ${Number(selfingRate.toPrecision(6))}`;
  const assumption = { code: "selfing-rate-of-crop", text };
  usualRates.set(selfingRate, assumption);
  return assumption;
}
