import { sameName } from "@/lib/registry/names/fold-name";
import { notebookTables } from "@/lib/schemas/notebook/columns";
import { refusal } from "@/lib/science/outcome";
import type { DraftNotebook } from "./draft";
import type { NamedEntries, NamedTable, Nameless } from "./entries";
import { namedTables } from "./entries";
import type { Findings, Spot } from "./finding";

/** A name that a line refers to and nothing bears. */
export interface UnknownName {
  readonly table: NamedTable;
  readonly name: string;
  readonly spot: Spot;
  /** the variety of the line that refers, where it has one */
  readonly variety: string | null;
}

const nouns: Readonly<Record<NamedTable, string>> = {
  stewards: "steward",
  varieties: "variety",
  growOuts: "grow-out",
  lots: "lot",
};

/**
 * Names each line that refers to nothing. What only follows from another fault is left out: names of a file that could
 * not be read whole, and the names that rows without one have probably lost.
 */
export function reportUnknownNames(
  unknown: readonly UnknownName[],
  drafts: DraftNotebook,
  entries: NamedEntries,
  nameless: Nameless,
  findings: Findings,
): void {
  for (const table of namedTables) {
    if (!drafts[table].complete) continue;
    const ofTable = unknown.filter((one) => one.table === table);
    const lost = probablyLost(ofTable, nameless[table], (name) => entries[table].suggestion(name) !== null);
    for (const { name, spot } of ofTable) {
      if (lost.has(sameName(name))) continue;
      const meant = entries[table].suggestion(name);
      const first = `write the name of a ${nouns[table]} of ${notebookTables[table].file} or of the registry`;
      const needed = meant === null ? first : `did you mean ${meant}?`;
      findings.fault(spot, refusal("name-unknown", [], name, `is no ${nouns[table]} here`, needed));
    }
  }
}

/**
 * One name for each row without a name: the ones most lines refer to, first those of the row's own variety, then those that
 * look like the names of the others.
 */
function probablyLost(
  unknown: readonly UnknownName[],
  nameless: readonly { readonly cells: object }[],
  looksAlike: (name: string) => boolean,
): ReadonlySet<string> {
  const lost = new Set<string>();
  for (const row of nameless) {
    const variety = "variety" in row.cells && typeof row.cells.variety === "string" ? row.cells.variety : null;
    const weights = new Map<string, number>();
    for (const one of unknown) {
      const key = sameName(one.name);
      if (lost.has(key)) continue;
      const alike = variety !== null && one.variety !== null && sameName(variety) === sameName(one.variety);
      const first = weights.get(key) ?? (looksAlike(one.name) ? 5 : 0);
      weights.set(key, first + (alike ? 1000 : 1));
    }
    const [best] = [...weights].sort(([, one], [, other]) => other - one);
    // Where several names are looked for, a single mention is more likely a slip of its own.
    if (best !== undefined && (best[1] > 1 || weights.size === 1)) lost.add(best[0]);
  }
  return lost;
}
