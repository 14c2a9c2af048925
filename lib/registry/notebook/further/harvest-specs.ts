import type { Client, Transaction } from "@/lib/db";
import { type FurtherSpec, joined, nameOf, number, type Stored, text } from "./spec";

/** What each seed parent of a harvest gave, and what was lost. They follow the harvests that they name. */
export const harvestFiles: readonly FurtherSpec[] = [
  {
    file: "harvest_seed_parents.csv",
    table: "HarvestSeedParent",
    noun: "seed parent of a harvest",
    identity: { by: "lines" },
    chosen: ofStandingHarvests,
    columns: [
      nameOf("harvest", { needed: true }),
      ...joined("plant"),
      number("share"),
      number("grams"),
      number("seeds"),
      text("lost"),
    ],
  },
];

/** What was said of a harvest that a later entry put right goes out no more than that harvest does. */
async function ofStandingHarvests(db: Client | Transaction): Promise<(record: Stored) => boolean> {
  const later = await db.harvest.findMany({ where: { replacesId: { not: null } }, select: { replacesId: true } });
  const replaced = new Set(later.map(({ replacesId }) => replacesId));
  return ({ harvestId }) => !replaced.has(String(harvestId));
}
