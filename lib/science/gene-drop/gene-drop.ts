import { countFault, faultsAmong } from "@/lib/science/limits";
import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageInput, LineageLot } from "@/lib/science/lineage/lots";
import { pedigree } from "@/lib/science/lineage/pedigree";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { poolsOfRun } from "./pools-of-run";
import { type SeedPool, sameGene } from "./seed-pool";
import { SeededDraws } from "./seeded-draws";

export interface GeneDropInput extends LineageInput {
  /** R, 2 or more */
  readonly replicates: number;
  /** a whole number that fixes what chance does */
  readonly seed: number;
}

export interface Simulated {
  readonly mean: number;
  readonly standardError: number;
}

export interface GeneDrop {
  readonly lots: readonly { readonly id: string; readonly coancestry: Simulated; readonly inbreeding: Simulated }[];
  readonly pairs: readonly { readonly a: string; readonly b: string; readonly coancestry: Simulated }[];
  readonly assumed: readonly Assumption[];
}

/** Plants grown in all runs together: beyond, a browser or a server would stand still for minutes. */
const MOST_PLANTS = 50_000_000;

/**
 * The lineage by simulation: founders' genes are dropped down the tree through every single plant, R times over.
 *
 *     mean = Σ x_r/R;  standard error = √(Σ (x_r − mean)²/(R(R − 1)))
 *
 * Each plant's parent lot is drawn with its share; seed parents, fathers, selfing and foreign pollen are drawn seed by seed. Shares of which
 * only the spread is known fall on one heavier plant, drawn anew each time. The lineage's figures must lie within a few standard errors.
 * Refused: what `lineage` refuses, fewer than two runs, a seed that is no whole number, more than fifty million plants in all.
 * `watch` hears after every run how many of the R are done.
 * Source: MacCluer, VandeBerg, Read & Ryder 1986, Zoo Biol. 5:147-160 (gene dropping).
 */
export function geneDrop(input: GeneDropInput, watch?: (done: number, of: number) => void): Outcome<GeneDrop> {
  const { replicates, seed } = input;
  const faults = faultsAmong(
    countFault([], "replicates", replicates, 2),
    Number.isSafeInteger(seed)
      ? undefined
      : refusal("seed", ["seed"], seed, "is no whole number", "a whole number is needed"),
  );
  if (faults.length > 0) return refused(...faults);
  const checked = lineage(input);
  if (!checked.ok) return checked;
  const built = pedigree(input.lots);
  if (!built.ok) return built;
  const plants = replicates * input.lots.reduce((sum, lot) => sum + plantsOf(lot), 0);
  if (plants > MOST_PLANTS) {
    const needed = `fewer runs, so that at most ${MOST_PLANTS} plants are grown in all`;
    return refused(refusal("too-many-plants", ["replicates"], replicates, `runs grow ${plants} plants`, needed));
  }
  const draws = new SeededDraws(seed);
  const coancestry = input.lots.map(() => new Sums());
  const inbreeding = input.lots.map(() => new Sums());
  const between = (input.pairs ?? []).map(() => new Sums());
  const rank = (id: string) => built.value.rankOf.get(id) ?? 0;
  for (let run = 0; run < replicates; run++) {
    const pools = poolsOfRun(built.value, draws);
    const at = (id: string) => pools[rank(id)] as SeedPool;
    input.lots.forEach(({ id }, place) => {
      coancestry[place]?.add(sameGene(at(id), at(id)));
      inbreeding[place]?.add(at(id).inbreeding);
    });
    input.pairs?.forEach(([a, b], place) => {
      between[place]?.add(sameGene(at(a), at(b)));
    });
    watch?.(run + 1, replicates);
  }
  return accepted({
    lots: input.lots.map(({ id }, place) => ({
      id,
      coancestry: (coancestry[place] as Sums).simulated(),
      inbreeding: (inbreeding[place] as Sums).simulated(),
    })),
    pairs: (input.pairs ?? []).map(([a, b], place) => ({ a, b, coancestry: (between[place] as Sums).simulated() })),
    assumed: checked.value.assumed,
  });
}

function plantsOf(lot: LineageLot): number {
  if (lot.kind !== "grow-out") return 1;
  return lot.pollenParents + (lot.sexes === "separate" ? lot.seedParents : 0);
}

/** Mean and spread in one pass. Source: Welford 1962, Technometrics 4:419-420. */
class Sums {
  #runs = 0;
  #mean = 0;
  #squares = 0;

  add(value: number): void {
    this.#runs += 1;
    const difference = value - this.#mean;
    this.#mean += difference / this.#runs;
    this.#squares += difference * (value - this.#mean);
  }

  simulated(): Simulated {
    return { mean: this.#mean, standardError: Math.sqrt(this.#squares / (this.#runs * (this.#runs - 1))) };
  }
}
