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
import { Ids } from "./ids";

/**
 * Writes what a checked folder adds and changes, in the order in which records build on one another. The folder was checked as a whole
 * together with the registry, so nothing is refused here; a database constraint that still breaks rolls everything back.
 */
export async function applyDifference(
  change: ChangeWriter,
  difference: Difference,
): Promise<Outcome<{ written: number }>> {
  const ids = await Ids.of(change.tx);
  await applyStewards(change, difference.stewards, ids);
  await applyVarieties(change, difference.varieties, ids);
  await applyGrowOuts(change, difference.growOuts, ids);
  await applyLots(change, difference.lots, difference.growOuts, ids);
  await applyPlants(change, difference.plants, ids);
  await applyTests(change, difference.tests, ids);
  await applyLedger(change, difference.ledger, ids);
  change.touchAll();
  return accepted({ written: change.size });
}
