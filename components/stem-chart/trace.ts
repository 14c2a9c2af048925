import type { StemTree } from "./stem";

/** Which way a lot is followed. */
export type Way = "back" | "forward" | "shared";
export const ways: readonly Way[] = ["back", "forward", "shared"];

/** Kin of the lots of a tree, both ways, ready to be asked. */
export interface Kin {
  readonly parents: ReadonlyMap<string, readonly string[]>;
  readonly children: ReadonlyMap<string, readonly string[]>;
}

export function kinOf({ lots }: StemTree): Kin {
  const children = new Map<string, string[]>(lots.map(({ id }) => [id, []]));
  const parents = new Map<string, readonly string[]>();
  for (const { id, parents: from } of lots) {
    const known = from.flatMap((parent) => (children.has(parent.id) && parent.id !== id ? [parent.id] : []));
    parents.set(id, known);
    for (const parent of known) children.get(parent)?.push(id);
  }
  return { parents, children };
}

/** A lot and all that it comes from, or all that came of it; nearest first. */
export function followed(id: string, links: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const reached = new Set([id]);
  for (const each of reached) for (const next of links.get(each) ?? []) reached.add(next);
  return reached;
}

/** The lots that two lots both come from (one of them may be among these), and the nearest of them: those from which no other of them comes. */
export function sharedAncestors(
  { parents, children }: Kin,
  one: string,
  other: string,
): { all: ReadonlySet<string>; nearest: readonly string[] } {
  const [a, b] = [followed(one, parents), followed(other, parents)];
  const all = new Set([...a].filter((id) => b.has(id)));
  const nearest = [...all].filter((id) => !(children.get(id) ?? []).some((child) => all.has(child)));
  return { all, nearest };
}

/** What the picture keeps in full while the rest grows faint: nothing asked, nothing kept. */
export function traced(
  kin: Kin,
  selected: string | null,
  way: Way,
  compared: string | null,
): ReadonlySet<string> | null {
  if (selected === null || !kin.parents.has(selected)) return null;
  if (way === "forward") return followed(selected, kin.children);
  if (way === "back" || compared === null || !kin.parents.has(compared)) return followed(selected, kin.parents);
  const { all, nearest } = sharedAncestors(kin, selected, compared);
  const both = new Set([...followed(selected, kin.parents), ...followed(compared, kin.parents)]);
  if (all.size === 0) return both;
  const below = new Set(nearest.flatMap((id) => [...followed(id, kin.children)]));
  return new Set([...all, ...[...both].filter((id) => below.has(id))]);
}
