import { sameName } from "@/lib/registry/names/fold-name";
import type { Notebook } from "@/lib/schemas/notebook/rows";
import type { CropProfile } from "@/lib/science/crops/crop-profile";
import type { Refusal } from "@/lib/science/outcome";
import type { DraftNotebook } from "./draft";
import type { Entry, NamedEntries } from "./entries";
import type { Findings } from "./finding";
import type { LineTable } from "./join-lines";

/** What the checks of the whole look at: the folder laid over the registry. */
export interface Check {
  readonly drafts: DraftNotebook;
  readonly existing: Notebook;
  readonly entries: NamedEntries;
  readonly lines: { readonly [Table in LineTable]: readonly Entry<Table>[] };
  /** of each variety, by its name for matching; null where its crop has a fault */
  readonly profiles: ReadonlyMap<string, CropProfile | null>;
  readonly findings: Findings;
}

/** The profile of a variety's crop; null where the variety or its crop is not known. */
export function profileOf(check: Check, variety: string | null): CropProfile | null {
  return variety === null ? null : (check.profiles.get(sameName(variety)) ?? null);
}

/** Reports a fault at the first of these entries that the folder has; an entry of the registry alone has no line. */
export function faultAt(
  check: Check,
  candidates: readonly (Pick<Entry<"lots" | LineTable | "growOuts">, "draft"> | undefined)[],
  column: string | null,
  refusal: Refusal,
): void {
  const [first] = candidates;
  for (const entry of candidates) {
    if (!entry?.draft) continue;
    check.findings.fault({ ...entry.draft.origin, column: entry === first ? column : null }, refusal);
    return;
  }
}

/** Groups by a name for matching; what has none is left out. */
export function grouped<Item>(items: readonly Item[], nameOf: (item: Item) => string | null): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  // The same spelling comes again and again; it is folded once.
  const bySpelling = new Map<string, Item[]>();
  for (const item of items) {
    const name = nameOf(item);
    if (name === null) continue;
    let group = bySpelling.get(name);
    if (group === undefined) {
      const key = sameName(name);
      group = groups.get(key) ?? [];
      groups.set(key, group);
      bySpelling.set(name, group);
    }
    group.push(item);
  }
  return groups;
}
