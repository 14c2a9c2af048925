import { type ReplicateCounts, replicateFaults } from "@/lib/science/germination/test-counts";
import { countFault, faultsAmong, insideFault, shareAboveZeroFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { fewestSeeds, MOST_SEEDS } from "@/lib/science/sowing/fewest-seeds";
import { guardedCeiling } from "@/lib/science/whole-steps";

export interface SowingCountInput {
  readonly test: Pick<ReplicateCounts, "sown" | "normal">;
  /** plants standing for each germinable seed sown, above 0 to 1; default 1 */
  readonly emergence?: number;
  /** N */
  readonly plantsWanted: number;
  /** between 0 and 1; default 0.9 */
  readonly confidence?: number;
}

export interface SowingCount {
  readonly seeds: number;
  /** m · emergence · E[π] */
  readonly expectedPlants: number;
  /** ⌈N / (p̂ · emergence)⌉, which falls short about every second time; null where nothing germinated */
  readonly plainDivision: number | null;
  /** the chance of the plants wanted from these seeds */
  readonly probability: number;
  readonly assumed: readonly Assumption[];
}

/**
 * How many seeds to sow so that the plants wanted will stand.
 *
 *     the smallest m with P(Binomial(m, emergence·π) ≥ N) ≥ confidence,  π ~ Beta(x + ½, n − x + ½)
 *
 * Takes seeds and plants as whole numbers. Refused: nothing tested, no plant wanted, an emergence of 0, more than ten million seeds.
 * Limits: an old test tells the germination of its day; losses to roguing and choosing come on top of the plants wanted.
 * Example: 20 plants at 0.9 from 18 of 20, emergence 0.8: 34 seeds, where plain division says 28.
 * Source: beta-binomial prediction from a germination test; see chanceOfPlants.
 */
export function sowingCount(input: SowingCountInput): Outcome<SowingCount> {
  const { test, emergence = 1, plantsWanted, confidence = 0.9 } = input;
  const faults = [
    ...replicateFaults(test, ["test"]),
    ...faultsAmong(
      shareAboveZeroFault([], "emergence", emergence),
      countFault([], "plantsWanted", plantsWanted, 1),
      insideFault([], "confidence", confidence),
    ),
  ];
  if (faults.length > 0) return refused(...faults);
  const { normal, sown } = test;
  const fewest = plantsWanted > MOST_SEEDS ? null : fewestSeeds(plantsWanted, confidence, { normal, sown, emergence });
  if (!fewest) {
    const needed =
      "with this test, emergence and confidence more than ten million seeds would be needed: want fewer, or be less sure";
    return refused(refusal("too-many-seeds", ["plantsWanted"], plantsWanted, "plants cannot be promised", needed));
  }
  const plain = (plantsWanted * sown) / (normal * emergence);
  return accepted({
    ...fewest,
    expectedPlants: (fewest.seeds * emergence * (normal + 0.5)) / (sown + 1),
    plainDivision: normal === 0 ? null : guardedCeiling(plain),
    assumed: assumedOf(input),
  });
}

function assumedOf({ emergence, confidence }: SowingCountInput): Assumption[] {
  const assumed: Assumption[] = [];
  if (emergence === undefined)
    assumed.push({ code: "all-emerge", text: "every germinable seed comes up (emergence 1)" });
  if (confidence === undefined) assumed.push({ code: "confidence-90", text: "enough plants in 9 of 10 sowings" });
  return assumed;
}
