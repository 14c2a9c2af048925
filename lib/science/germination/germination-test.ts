import { exactInterval } from "@/lib/science/binomial/exact-interval";
import type { Interval } from "@/lib/science/binomial/interval";
import { jeffreysInterval } from "@/lib/science/binomial/jeffreys-interval";
import { wilsonInterval } from "@/lib/science/binomial/wilson-interval";
import { type ReplicateSpread, replicateSpread } from "@/lib/science/germination/replicate-spread";
import { type StandardVerdict, standardVerdict } from "@/lib/science/germination/standard-verdict";
import { type ReplicateCounts, replicateFaults } from "@/lib/science/germination/test-counts";
import { faultsAmong, insideFault, shareFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface GerminationTestInput {
  readonly replicates: readonly ReplicateCounts[];
  /** between 0 and 1; default 0.95 */
  readonly confidence?: number;
  /** a share of normal seedlings that the lot is held against, 0 to 1 */
  readonly standard?: number;
}

export interface GerminationTest {
  readonly sown: number;
  readonly normal: number;
  /** x/n */
  readonly germination: number;
  readonly exact: Interval;
  readonly wilson: Interval;
  readonly jeffreys: Interval;
  /** (normal + hard + fresh)/n */
  readonly viablePotential: number;
  /** null for a single replicate */
  readonly spread: ReplicateSpread | null;
  /** null where no standard was given */
  readonly standard: StandardVerdict | null;
  readonly assumed: readonly Assumption[];
}

/** Confidence of every interval where none is asked for. */
export const USUAL_CONFIDENCE = 0.95;

/**
 * One germination test read honestly: x = Σ normal of n = Σ sown, with intervals, spread and standard.
 *
 *     germination = x/n          viable potential = (normal + hard + fresh)/n
 *
 * Refused: no replicate, nothing sown, counts that are not whole, kinds that pass the seeds sown.
 * Limits: seeds are a random sample of the lot; mouldy seeds are dead; a sprouted root is not yet a normal seedling.
 * Example: 18 of 20: 0.90, exact 0.683 to 0.988. Sources: the intervals', replicateSpread's and standardVerdict's own.
 */
export function germinationTest(input: GerminationTestInput): Outcome<GerminationTest> {
  const { replicates, standard } = input;
  const confidence = input.confidence ?? USUAL_CONFIDENCE;
  const faults = [
    ...replicates.flatMap((replicate, index) => replicateFaults(replicate, ["replicates", index])),
    ...faultsAmong(insideFault([], "confidence", confidence), shareFault([], "standard", standard)),
  ];
  if (replicates.length === 0) {
    faults.push(refusal("no-replicate", ["replicates"], [], "holds no replicate", "give at least one"));
  }
  if (faults.length > 0) return refused(...faults);

  const total = (kind: keyof ReplicateCounts) => replicates.reduce((sum, replicate) => sum + (replicate[kind] ?? 0), 0);
  const sown = total("sown");
  const normal = total("normal");
  return accepted({
    sown,
    normal,
    germination: normal / sown,
    exact: exactInterval(normal, sown, confidence),
    wilson: wilsonInterval(normal, sown, confidence),
    jeffreys: jeffreysInterval(normal, sown, confidence),
    viablePotential: (normal + total("hard") + total("fresh")) / sown,
    spread: replicates.length > 1 ? replicateSpread(replicates) : null,
    standard: standard === undefined ? null : standardVerdict(normal, sown, standard),
    assumed: assumedOf(input),
  });
}

function assumedOf({ replicates, confidence }: GerminationTestInput): Assumption[] {
  const assumed: Assumption[] = [];
  const couldHide = ({ sown, normal, abnormal, hard, fresh, dead }: ReplicateCounts) =>
    (hard === undefined || fresh === undefined) &&
    normal + (abnormal ?? 0) + (hard ?? 0) + (fresh ?? 0) + (dead ?? 0) < sown;
  if (replicates.some(couldHide)) {
    const text = "seeds that were not told apart are neither hard nor fresh";
    assumed.push({ code: "not-told-apart-not-viable", text });
  }
  if (confidence === undefined) assumed.push({ code: "confidence-95", text: "intervals at 95 % confidence" });
  return assumed;
}
