import { countFault, faultsAmong, shareAboveZeroFault } from "@/lib/science/limits";
import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageLot } from "@/lib/science/lineage/lots";
import { pedigree } from "@/lib/science/lineage/pedigree";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { poolsOfRun } from "./pools-of-run";
import { sameGene } from "./seed-pool";
import { SeededDraws } from "./seeded-draws";

export interface OutcomeSpreadInput {
  /** as in `lineage`, without foreign pollen */
  readonly lots: readonly LineageLot[];
  /** the grow-out lot whose seed is looked at */
  readonly of: string;
  /** p: how many of the founders' genes are the rare form, above 0 to 1 */
  readonly frequency: number;
  /** R: places in the genome that are followed, 2 or more */
  readonly replicates: number;
  readonly seed: number;
}

export interface OutcomeSpread {
  /** diversity kept at one place in the genome, 0 to 1: on average, and at the 5 %, 50 % and 95 % of the places in their order */
  readonly retained: {
    readonly mean: number;
    readonly standardError: number;
    readonly low: number;
    readonly median: number;
    readonly high: number;
  };
  /** chance that the rare form of a gene is still there */
  readonly rareKept: { readonly probability: number; readonly standardError: number };
  readonly assumed: readonly Assumption[];
}

/** Plants grown in all runs together, as in gene-drop. */
const MOST_PLANTS = 50_000_000;

/**
 * What chance makes of a lineage: the spread behind its expected figures, by dropping genes down it R times, each time at another place in
 * the genome.
 *
 *     kept at one place = 1 − Σ f²          f: shares of the founders' genes in the pool
 *     rare form kept = mean of 1 − (1 − p)^k          k: founders' genes still there
 *
 * The mean of the first is the lineage's diversity retained. Refused: what `lineage` refuses, a lot that is no grow-out, foreign pollen (its
 * genes are none of the founders'), fewer than two runs, more than fifty million plants in all. `watch` hears how many runs are done.
 * Example: two plants that share alike in pollen and seed: four genes, 0.75 kept at every place; a form of 1 in 20 is kept with 0.185.
 * Source: MacCluer, VandeBerg, Read & Ryder 1986, Zoo Biol. 5:147-160 (gene dropping).
 */
export function outcomeSpread(
  input: OutcomeSpreadInput,
  watch?: (done: number, of: number) => void,
): Outcome<OutcomeSpread> {
  const { lots, of, frequency, replicates, seed } = input;
  const faults = faultsOf(input);
  if (faults.length > 0) return refused(...faults);
  const checked = lineage({ lots });
  if (!checked.ok) return checked;
  const built = pedigree(lots);
  if (!built.ok) return built;
  const rank = built.value.rankOf.get(of) as number;
  const draws = new SeededDraws(seed);
  const kept = new Float64Array(replicates);
  const rare = new Float64Array(replicates);
  for (let run = 0; run < replicates; run++) {
    const pool = poolsOfRun(built.value, draws)[rank];
    if (!pool) continue;
    kept[run] = 1 - sameGene(pool, pool);
    rare[run] = 1 - (1 - frequency) ** pool.genes.size;
    watch?.(run + 1, replicates);
  }
  const order = kept.toSorted();
  const at = (share: number) => order[Math.min(replicates - 1, Math.floor(share * replicates))] as number;
  const { mean, standardError } = meanOf(kept);
  const form = meanOf(rare);
  return accepted({
    retained: { mean, standardError, low: at(0.05), median: at(0.5), high: at(0.95) },
    rareKept: { probability: form.mean, standardError: form.standardError },
    assumed: checked.value.assumed,
  });
}

function faultsOf({ lots, of, frequency, replicates, seed }: OutcomeSpreadInput): Refusal[] {
  const faults = faultsAmong(
    countFault([], "replicates", replicates, 2),
    shareAboveZeroFault([], "frequency", frequency),
    Number.isSafeInteger(seed)
      ? undefined
      : refusal("seed", ["seed"], seed, "is no whole number", "a whole number is needed"),
  );
  if (lots.find(({ id }) => id === of)?.kind !== "grow-out")
    faults.push(
      refusal("no-grow-out", ["of"], of, "is no grow-out of this lineage", "name one of the lots that was grown"),
    );
  lots.forEach((lot, place) => {
    if (lot.kind !== "grow-out" || (lot.foreignPollen ?? 0) === 0) return;
    const path = ["lots", place, "foreignPollen"];
    const needed = "leave it out: foreign genes are none of the founders' and cannot be followed back to them";
    faults.push(refusal("foreign-pollen", path, lot.foreignPollen, "cannot be followed here", needed));
  });
  const plants = lots.reduce(
    (sum, lot) => sum + (lot.kind === "grow-out" ? lot.pollenParents + lot.seedParents : 1),
    0,
  );
  if (faults.length === 0 && replicates * plants > MOST_PLANTS) {
    const needed = `fewer runs, so that at most ${MOST_PLANTS} plants are grown in all`;
    faults.push(
      refusal("too-many-plants", ["replicates"], replicates, `runs grow ${replicates * plants} plants`, needed),
    );
  }
  return faults;
}

function meanOf(values: Float64Array) {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, standardError: Math.sqrt(squares / (values.length * (values.length - 1))) };
}
