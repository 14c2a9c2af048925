import { sameName } from "@/lib/registry/names/fold-name";
import { daysBetween } from "@/lib/science/dates/civil-day";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { refusal } from "@/lib/science/outcome";
import type { Check } from "./check";
import type { DraftRow } from "./draft";

/** One lot or grow-out that names what it came from. */
interface Node {
  readonly name: string;
  readonly date: FuzzyDate | null;
  readonly column: "from" | "parents";
  readonly draft: DraftRow<object> | null;
  readonly parents: string[];
}

/**
 * A lot is never its own ancestor. Each ring is reported once, at the line that most likely closed it: the one that names
 * something later than itself as its parent. That line is marked, so that nothing more is made of it.
 */
export function checkCycles(check: Check): void {
  const nodes = nodesOf(check);
  for (let ring = ringMembers(nodes); ring.size > 0; ring = ringMembers(nodes)) {
    const edge = closingEdge(nodes, ring);
    if (edge === null) return;
    const { node, parent } = edge;
    node.parents.splice(node.parents.indexOf(parent), 1);
    const named = nodes.get(parent)?.name ?? parent;
    const wrong = "descends from what this line makes of it";
    const fault = refusal("own-ancestor", [], named, wrong, "a lot is never its own ancestor: write what it came from");
    if (!node.draft) continue;
    node.draft.faulty.add(node.column);
    check.findings.fault({ ...node.draft.origin, column: node.column }, fault);
  }
}

const lotKey = (name: string) => `lot ${sameName(name)}`;
const growOutKey = (name: string) => `grow-out ${sameName(name)}`;

function nodesOf(check: Check): Map<string, Node> {
  const nodes = new Map<string, Node>();
  for (const { cells, draft } of check.entries.lots.bearers()) {
    if (cells.lot === null) continue;
    const from = cells.from;
    const growOut = from !== null && "growOut" in from ? [growOutKey(from.growOut)] : [];
    const lots = from !== null && "lots" in from ? from.lots.map(({ lot }) => lotKey(lot)) : [];
    const parents = [...growOut, ...lots];
    nodes.set(lotKey(cells.lot), { name: cells.lot, date: cells.year, column: "from", draft, parents });
  }
  for (const { cells, draft } of check.entries.growOuts.bearers()) {
    if (cells.grow_out === null) continue;
    const parents = (cells.parents ?? []).map(({ lot }) => lotKey(lot));
    nodes.set(growOutKey(cells.grow_out), {
      name: cells.grow_out,
      date: cells.sown,
      column: "parents",
      draft,
      parents,
    });
  }
  return nodes;
}

/** What neither stands above all rings nor below them. */
function ringMembers(nodes: ReadonlyMap<string, Node>): Set<string> {
  const left = new Set(nodes.keys());
  const children = new Map<string, string[]>();
  for (const [key, { parents }] of nodes) {
    for (const parent of parents) {
      const list = children.get(parent);
      if (list) list.push(key);
      else children.set(parent, [key]);
    }
  }
  peel(
    left,
    (key) => nodes.get(key)?.parents ?? [],
    (key) => children.get(key) ?? [],
  );
  peel(
    left,
    (key) => children.get(key) ?? [],
    (key) => nodes.get(key)?.parents ?? [],
  );
  return left;
}

/** Takes away, again and again, what has nothing left before it. */
function peel(left: Set<string>, before: (key: string) => string[], after: (key: string) => string[]): void {
  const waiting = new Map([...left].map((key) => [key, before(key).filter((each) => left.has(each)).length]));
  const free = [...left].filter((key) => waiting.get(key) === 0);
  for (let key = free.pop(); key !== undefined; key = free.pop()) {
    left.delete(key);
    for (const next of after(key)) {
      const count = (waiting.get(next) ?? 0) - 1;
      waiting.set(next, count);
      if (count === 0 && left.has(next)) free.push(next);
    }
  }
}

interface Edge {
  readonly node: Node;
  readonly parent: string;
}

function closingEdge(nodes: ReadonlyMap<string, Node>, ring: ReadonlySet<string>): Edge | null {
  const edges = [...ring].flatMap((key) => {
    const node = nodes.get(key);
    const parents = node?.parents.filter((parent) => ring.has(parent)) ?? [];
    return node ? parents.map((parent) => ({ key, node, parent, weight: weightOf(node, parent, key, nodes) })) : [];
  });
  edges.sort((one, other) => other.weight - one.weight);
  return edges.find(({ key, parent }) => reaches(nodes, parent, key)) ?? null;
}

/** How many days the parent is later than what is made of it; lines of the folder before records of the registry. */
function weightOf(node: Node, parent: string, key: string, nodes: ReadonlyMap<string, Node>): number {
  const mine = node.draft === null ? -1e9 : 0;
  if (parent === key) return mine + 1e8;
  const above = nodes.get(parent)?.date;
  return mine + (above && node.date ? daysBetween(node.date.last, above.first) : -1e7);
}

function reaches(nodes: ReadonlyMap<string, Node>, from: string, to: string): boolean {
  const reached = new Set([from]);
  for (const key of reached) {
    if (key === to) return true;
    for (const parent of nodes.get(key)?.parents ?? []) reached.add(parent);
  }
  return false;
}
