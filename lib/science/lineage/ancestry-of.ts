/** A lot as far as its ancestry goes. */
interface InLineage {
  readonly id: string;
  readonly kind: string;
  readonly parents?: readonly { readonly id: string }[];
}

/** Some lots with all that their ancestry reaches, in the order given; the figures of those lots follow from these alone. Unknown ids are left out. */
export function ancestryOf<L extends InLineage>(lots: readonly L[], ids: readonly string[]): L[] {
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  const reached = new Set(ids);
  // A set that grows is walked to its end.
  for (const id of reached) for (const parent of byId.get(id)?.parents ?? []) reached.add(parent.id);
  return lots.filter(({ id }) => reached.has(id));
}
