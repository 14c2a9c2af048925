import { accepted, type Outcome } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { applyGrowOuts } from "./apply-grow-outs";
import { applyLedger } from "./apply-ledger";
import { applyLots } from "./apply-lots";
import { applyPlants } from "./apply-plants";
import { applyStewards } from "./apply-stewards";
import { applyTests } from "./apply-tests";
import { applyVarieties } from "./apply-varieties";
import type { Difference } from "./difference";
import type { FurtherRow } from "./further/further-table";
import { Ids } from "./ids";

/** What further files say of plants: what is written before them, and the rows that say more of their scores. */
export interface FurtherOfPlants {
  readonly beforePlants: () => Promise<Outcome<null>>;
  readonly scores: readonly FurtherRow[];
}

/**
 * Writes what a checked folder adds and changes, in the order in which records build on one another. The folder was checked as a whole
 * together with the registry, so nothing is refused here but by a further file; a database constraint that still breaks rolls everything back.
 */
export async function applyDifference(
  change: ChangeWriter,
  difference: Difference,
  { beforePlants, scores }: FurtherOfPlants,
): Promise<Outcome<{ written: number }>> {
  const ids = await Ids.of(change.tx);
  await applyStewards(change, difference.stewards, ids);
  await applyVarieties(change, difference.varieties, ids);
  await applyGrowOuts(change, difference.growOuts, ids);
  await applyLots(change, difference.lots, difference.growOuts, ids);
  const ready = await beforePlants();
  if (!ready.ok) return ready;
  await applyPlants(change, difference.plants, ids, scores);
  await applyTests(change, difference.tests, ids);
  await applyLedger(change, difference.ledger, ids);
  change.touchAll();
  return accepted({ written: change.size });
}
