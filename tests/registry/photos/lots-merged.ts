import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { accepted } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";

/** Says that two records are one lot, of which the second leads. */
export async function lotsMerged(db: Database, other: string, leading: string): Promise<void> {
  const outcome = await perform(db, ownerHere(), { action: "correct", title: "one lot" }, async (change) => {
    await change.update("Lot", other, { sameAsId: leading });
    return accepted(null);
  });
  granted(outcome);
}
