import { countFault, faultsAmong, shareFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

export interface OffTypeFrequencyInput {
  /** q: share of the genes that are the unwanted form, 0 to below 1 */
  readonly frequency: number;
  /** t: grow-outs with roguing */
  readonly generations: number;
  readonly kind: "recessive" | "dominant";
  /** off-types taken out before they shed pollen, or after: then only the seed side is freed */
  readonly rogued: "before-pollen" | "after-pollen";
}

export interface OffTypeFrequency {
  /** q₀ to q_t */
  readonly alleleFrequency: readonly number[];
  /** share of the plants that show it, each generation before roguing */
  readonly offTypeShare: readonly number[];
  readonly assumed: readonly Assumption[];
}

/** A million generations fill no memory, and outlast every variety. */
const MOST_GENERATIONS = 1_000_000;

/**
 * How fast roguing brings an off-type down, in a large population that mates at random.
 *
 *     recessive: seed side q_f = (Aa/2)/(1 − aa); pollen side q_m = q_f before pollen, aa + Aa/2 after
 *                aa' = q_f q_m,  Aa' = q_f (1 − q_m) + q_m (1 − q_f)
 *     dominant:  before pollen none is left; after pollen the share of carriers is q_m, and q' = q_m/2
 *
 * Refused: a frequency of 1 (no plant would be left), generations that are not whole.
 * Limits: every off-type is seen and taken; nothing comes in from outside. Roguing holds a recessive down and does not remove it.
 * Example: recessive 0.2, before pollen, 15 grow-outs: 0.05, off-types 0.25 %.
 * Source: Crow & Kimura 1970, An Introduction to Population Genetics Theory, on selection against a recessive (q₀/(1 + t·q₀)).
 */
export function offTypeFrequency(input: OffTypeFrequencyInput): Outcome<OffTypeFrequency> {
  const faults = frequencyFaults(input);
  if (faults.length > 0) return refused(...faults);
  const path = input.kind === "recessive" ? recessive(input) : dominant(input);
  return accepted({ ...path, assumed: [] });
}

type Path = Omit<OffTypeFrequency, "assumed">;

function recessive({ frequency: q, generations, rogued }: OffTypeFrequencyInput): Path {
  let shown = q * q;
  let carried = 2 * q * (1 - q);
  const alleleFrequency = [q];
  const offTypeShare = [shown];
  for (let t = 0; t < generations; t++) {
    const seedSide = carried / 2 / (1 - shown);
    const pollenSide = rogued === "before-pollen" ? seedSide : shown + carried / 2;
    shown = seedSide * pollenSide;
    carried = seedSide * (1 - pollenSide) + pollenSide * (1 - seedSide);
    alleleFrequency.push(shown + carried / 2);
    offTypeShare.push(shown);
  }
  return { alleleFrequency, offTypeShare };
}

function dominant({ frequency, generations, rogued }: OffTypeFrequencyInput): Path {
  let q = frequency;
  const alleleFrequency = [q];
  const offTypeShare = [q * (2 - q)];
  for (let t = 0; t < generations; t++) {
    const pollenSide = rogued === "before-pollen" ? 0 : q;
    q = pollenSide / 2;
    alleleFrequency.push(q);
    offTypeShare.push(pollenSide);
  }
  return { alleleFrequency, offTypeShare };
}

function frequencyFaults({ frequency, generations }: OffTypeFrequencyInput): Refusal[] {
  const faults = faultsAmong(shareFault([], "frequency", frequency), countFault([], "generations", generations));
  if (frequency === 1) {
    const needed = "below 1: where every plant is an off-type, roguing leaves none";
    faults.push(refusal("nothing-left", ["frequency"], 1, "leaves no plant to keep", needed));
  }
  if (generations > MOST_GENERATIONS && faults.length === 0) {
    const needed = `at most ${MOST_GENERATIONS}`;
    faults.push(refusal("too-many-generations", ["generations"], generations, "generations are too many", needed));
  }
  return faults;
}
