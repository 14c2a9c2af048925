import type { Transaction } from "@/lib/db";
import { readDescent, wayUp } from "../lots/descent";

/** Which of the lots come from a grow-out, by however many steps: harvested from it, or from what was sown or mixed of its seed. Four statements. */
export async function descendingFrom(
  tx: Transaction,
  cropId: string,
  growOutId: string,
  lotIds: readonly string[],
): Promise<string[]> {
  const descent = await readDescent(tx, cropId, { claims: false });
  return lotIds.filter((lotId) => wayUp(descent, lotId, growOutId) !== null);
}
