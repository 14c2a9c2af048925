import { countFault, faultsAmong } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface ReserveInput {
  /** S: seeds to sow for one population */
  readonly seedsPerGrowOut: number;
  /** default 1; a genebank keeps 3 */
  readonly growOuts?: number;
  /** germination tests until then; default 2 */
  readonly tests?: number;
  /** default 50 */
  readonly seedsPerTest?: number;
  /** sowings kept for another place; default 1, and 0 where two other places are confirmed */
  readonly duplicates?: number;
  /** seeds never to be touched; default 50 */
  readonly archive?: number;
}

export interface Reserve {
  readonly seeds: number;
  readonly parts: {
    readonly growOuts: number;
    readonly tests: number;
    readonly duplicates: number;
    readonly archive: number;
  };
  readonly assumed: readonly Assumption[];
}

/**
 * What a holder keeps back of one variety, over all its good lots, in seeds.
 *
 *     seeds = growOuts·S + tests·seedsPerTest + duplicates·S + archive
 *
 * Refused: counts that are not whole or below 0; a grow-out or a test of no seed; more seeds than can be counted exactly.
 * Limits: S rises as germination falls, so the reserve is worked out anew with each test.
 * Example: S 97, 3 grow-outs, 4 tests of 50, 1 duplicate, 50 archived: 638.
 * Source: FAO Genebank Standards 2014 (three sowings, reference sample of 50 seeds); Hanson 1985; a home holder's one grow-out is
 * this registry's own choice.
 */
export function reserve(input: ReserveInput): Outcome<Reserve> {
  const { seedsPerGrowOut, growOuts = 1, tests = 2, seedsPerTest = 50, duplicates = 1, archive = 50 } = input;
  const faults = faultsAmong(
    countFault([], "seedsPerGrowOut", seedsPerGrowOut, 1),
    countFault([], "growOuts", growOuts),
    countFault([], "tests", tests),
    countFault([], "seedsPerTest", seedsPerTest, 1),
    countFault([], "duplicates", duplicates),
    countFault([], "archive", archive),
  );
  if (faults.length > 0) return refused(...faults);
  const parts = {
    growOuts: growOuts * seedsPerGrowOut,
    tests: tests * seedsPerTest,
    duplicates: duplicates * seedsPerGrowOut,
    archive,
  };
  const seeds = parts.growOuts + parts.tests + parts.duplicates + parts.archive;
  if (!Number.isSafeInteger(seeds)) {
    const needed = "fewer grow-outs, tests or seeds";
    return refused(
      refusal(
        "too-many-seeds",
        ["seedsPerGrowOut"],
        seedsPerGrowOut,
        "leads to more seeds than can be counted",
        needed,
      ),
    );
  }
  return accepted({ seeds, parts, assumed: assumedOf(input, parts) });
}

function assumedOf(input: ReserveInput, parts: Reserve["parts"]): Assumption[] {
  const assumed: Assumption[] = [];
  if (input.growOuts === undefined) assumed.push({ code: "one-grow-out", text: "seed for one grow-out is kept" });
  if (input.tests === undefined) assumed.push({ code: "two-tests", text: "two more germination tests will be needed" });
  if (input.seedsPerTest === undefined && parts.tests > 0) {
    assumed.push({ code: "tests-of-50", text: "each test takes 50 seeds" });
  }
  if (input.duplicates === undefined) {
    assumed.push({ code: "one-duplicate", text: "one sowing is kept for a second place" });
  }
  if (input.archive === undefined) assumed.push({ code: "archive-of-50", text: "50 seeds are archived" });
  return assumed;
}
