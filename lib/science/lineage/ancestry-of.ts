import { type LineageLot, parentsOf } from "@/lib/science/lineage/lots";

/** Some lots with all that their ancestry reaches, in the order given; the figures of those lots follow from these alone. Unknown ids are left out. */
export function ancestryOf(lots: readonly LineageLot[], ids: readonly string[]): LineageLot[] {
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  const reached = new Set(ids);
  // A set that grows is walked to its end.
  for (const id of reached) for (const parent of parentsOf(byId.get(id) ?? NOTHING)) reached.add(parent.id);
  return lots.filter(({ id }) => reached.has(id));
}

const NOTHING: LineageLot = { id: "", kind: "founder" };
