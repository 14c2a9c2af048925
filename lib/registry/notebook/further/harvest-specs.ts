import { type FurtherSpec, joined, nameOf, number, text } from "./spec";

/** What each seed parent of a harvest gave, and what was lost. They follow the harvests that they name. */
export const harvestFiles: readonly FurtherSpec[] = [
  {
    file: "harvest_seed_parents.csv",
    table: "HarvestSeedParent",
    noun: "seed parent of a harvest",
    identity: { by: "lines" },
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
