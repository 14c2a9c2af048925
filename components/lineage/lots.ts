/** A lot as the lineage drawing needs it. */
export interface LineageLot {
  readonly id: string;
  readonly name: string;
  /** first and last possible year; null where no year is known */
  readonly years: { readonly first: number; readonly last: number } | null;
  readonly parents: readonly { readonly id: string; readonly share: number | null }[];
  /** where no parents stand here: that it has some on record, which are not drawn */
  readonly parentsLeftOut?: boolean;
  readonly kind: "founder" | "harvest" | "blend" | "split";
  /** of the grow-out that made it: a figure is low = high; null is unknown */
  readonly effectiveSize: { readonly low: number; readonly high: number } | null;
  /** only told: drawn dotted */
  readonly told?: boolean;
  readonly href?: string;
}

/** The lots ordered so that each stands after its parents; what would be a ring is left in the order it came. */
export function byDescent(lots: readonly LineageLot[]): readonly LineageLot[] {
  const known = new Map(lots.map((lot) => [lot.id, lot]));
  const done = new Set<string>();
  const order: LineageLot[] = [];
  function take(lot: LineageLot, above: ReadonlySet<string>) {
    if (done.has(lot.id) || above.has(lot.id)) return;
    const path = new Set(above).add(lot.id);
    for (const parent of lot.parents) {
      const found = known.get(parent.id);
      if (found) take(found, path);
    }
    done.add(lot.id);
    order.push(lot);
  }
  const early = [...lots].sort((a, b) => (a.years?.first ?? 9999) - (b.years?.first ?? 9999));
  for (const lot of early) take(lot, new Set());
  return order;
}

/** A year for every lot: its own, or one after its latest parent, or two before its earliest child, or the earliest of all. */
export function placedYears(order: readonly LineageLot[]): ReadonlyMap<string, { first: number; last: number }> {
  const years = new Map<string, { first: number; last: number }>();
  for (const lot of order) if (lot.years) years.set(lot.id, lot.years);
  for (const lot of order) {
    if (years.has(lot.id)) continue;
    const parents = lot.parents.flatMap((parent) => years.get(parent.id)?.last ?? []);
    if (parents.length > 0) years.set(lot.id, { first: Math.max(...parents) + 1, last: Math.max(...parents) + 1 });
  }
  for (const lot of [...order].reverse()) {
    if (years.has(lot.id)) continue;
    const children = order.filter((other) => other.parents.some((parent) => parent.id === lot.id));
    const starts = children.flatMap((child) => years.get(child.id)?.first ?? []);
    const all = [...years.values()].map((each) => each.first);
    const year = starts.length > 0 ? Math.min(...starts) - 2 : all.length > 0 ? Math.min(...all) : 0;
    years.set(lot.id, { first: year, last: year });
  }
  return years;
}
