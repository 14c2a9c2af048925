import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import { lineageOfPedigree } from "@/lib/science/lineage/lineage";
import type { LotLineage } from "@/lib/science/lineage/lots";
import { parentsOf } from "@/lib/science/lineage/lots";
import { type Pedigree, pedigree } from "@/lib/science/lineage/pedigree";
import { type Assumption, accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { type LineageNode, lineageNodes, lotNode } from "./lineage-nodes";
import type { FigureRecords } from "./records";

/** What the lineage says of one lot; null: not known, because the plants or shares of an ancestor are not. */
export interface LotFigures {
  /** of the grow-out that made it; null for another origin */
  readonly effectiveSize: number | null;
  readonly inbreeding: number | null;
  readonly coancestry: number | null;
  readonly diversityRetained: number | null;
  readonly nativeDiversityRetained: number | null;
  readonly foreignAncestry: number | null;
  readonly generations: number | null;
}

export interface LineageOfRecords {
  /** by lot id */
  readonly figures: ReadonlyMap<string, LotFigures>;
  /** counts of plants that cannot be, with the place of their grow-out: what descends from it has no figures */
  readonly impossible: readonly Refusal[];
  /** ids of the founder lots that a lot's ancestry reaches, in the order of the records; one list for all lots of one descent */
  foundersOf(lotId: string): readonly string[];
  /** every default that moves a lot's figures, each with the grow-outs or lots it was taken for */
  assumedFor(lotId: string): Assumption[];
}

/**
 * The lineage of all lots of some records, with the defaults of the crop's profile where nothing was recorded: sexes,
 * self-incompatibility, selfing rate, a founder's inbreeding; foreign pollen that nobody assessed is computed as 0 and said so.
 * All lots of one grow-out are one pool. Whatever descends from plants that were not counted has no inbreeding, coancestry or
 * diversity here; what foreign pollen brought and the generations are given all the same.
 *
 * Counts that `effectiveSize` refuses of a grow-out stand in `impossible` with their place (`["growOuts", id, "seedParents"]`).
 * Refused as a whole: parents that are not among the records, shares not of sum 1, a cycle (path `["lots"]`).
 */
export function lineageOfRecords(records: FigureRecords): Outcome<LineageOfRecords> {
  const nodes = lineageNodes(records);
  const lots = nodes.map(({ lot }) => lot);
  const ordered = pedigree(lots);
  if (!ordered.ok) return refused(...ordered.refusals.map((each) => placed(each, nodes)));
  const followed = lineageOfPedigree(ordered.value, lots);
  const graph = new Graph(nodes, ordered.value);
  const known = graph.known();
  const sizes = graph.sizes(followed, known);
  const figures = new Map<string, LotFigures>();
  for (const record of records.lots) {
    const place = graph.placeOf(lotNode(record.id));
    const found = followed[place];
    const unknown = known[place];
    if (found && unknown !== undefined) figures.set(record.id, figuresOf(found, unknown, sizes.get(place) ?? null));
  }
  const lotIds = records.lots.map(({ id }) => id);
  const ids = new Map<readonly number[], readonly string[]>();
  const idsAt = (places: readonly number[]) => {
    const known = ids.get(places) ?? places.map((place) => lotIds[place] ?? "");
    ids.set(places, known);
    return known;
  };
  return accepted({
    figures,
    impossible: nodes.flatMap((node) => node.impossible),
    foundersOf: (lotId) => idsAt(graph.foundersOf(lotNode(lotId))),
    assumedFor: (lotId) => graph.assumedFor(lotNode(lotId)),
  });
}

/** What cannot be known of a node: nothing, what drift moves, or all. */
type Unknown = "sizes" | "all" | null;

function figuresOf(found: LotLineage, unknown: Unknown, size: number | null): LotFigures {
  const drift = unknown === null;
  const rest = unknown !== "all";
  return {
    effectiveSize: drift ? size : null,
    inbreeding: drift ? found.inbreeding : null,
    coancestry: drift ? found.coancestry : null,
    diversityRetained: drift ? found.diversityRetained : null,
    nativeDiversityRetained: drift ? found.nativeDiversityRetained : null,
    foreignAncestry: rest ? found.foreignAncestry : null,
    generations: rest ? found.generations : null,
  };
}

class Graph {
  readonly #places: ReadonlyMap<string, number>;
  /** places with every parent before its offspring */
  readonly #order: readonly number[];
  /** of each node, once it was asked for */
  readonly #parents: (readonly { place: number; share: number }[] | undefined)[] = [];
  #founders: (readonly number[])[] | null = null;

  constructor(
    private readonly nodes: readonly LineageNode[],
    { lots }: Pedigree,
  ) {
    this.#places = new Map(nodes.map(({ lot }, place) => [lot.id, place]));
    this.#order = lots.map(({ id }) => this.placeOf(id));
  }

  placeOf(id: string): number {
    return this.#places.get(id) ?? -1;
  }

  #parentsAt(place: number): readonly { place: number; share: number }[] {
    let parents = this.#parents[place];
    if (parents === undefined) {
      const lot = this.nodes[place]?.lot;
      parents = lot ? parentsOf(lot).map(({ id, share }) => ({ place: this.placeOf(id), share })) : [];
      this.#parents[place] = parents;
    }
    return parents;
  }

  /** What is not known of an ancestor is not known of what descends from it. */
  known(): Unknown[] {
    const known: Unknown[] = this.nodes.map(({ unknown }) => unknown);
    for (const place of this.#order) {
      const above = this.#parentsAt(place).map((parent) => known[parent.place]);
      if (above.includes("all") || known[place] === "all") known[place] = "all";
      else if (above.includes("sizes")) known[place] = "sizes";
    }
    return known;
  }

  /** The effective size of the grow-out behind each harvest, with the mean inbreeding of its parents. */
  sizes(figures: readonly LotLineage[], known: readonly Unknown[]): Map<number, number | null> {
    const sizes = new Map<number, number | null>();
    for (const [place, { plot }] of this.nodes.entries()) {
      if (plot === null || known[place] !== null) continue;
      const parents = this.#parentsAt(place);
      const whole = parents.reduce((sum, { share }) => sum + share, 0);
      const inbreeding = parents.reduce(
        (sum, parent) => sum + (parent.share / whole) * (figures[parent.place]?.inbreeding ?? 0),
        0,
      );
      const size = effectiveSize({ ...plot, inbreeding });
      if (size.ok) sizes.set(place, size.value.effectiveSize);
    }
    for (const [place, { lot, at }] of this.nodes.entries()) {
      if (lot.kind !== "split" || at[0] !== "lots") continue;
      const from = this.#parentsAt(place)[0]?.place ?? -1;
      if (this.nodes[from]?.lot.kind === "grow-out") sizes.set(place, sizes.get(from) ?? null);
    }
    return sizes;
  }

  /** Places of a node and all its ancestors, in the order of the records. */
  #ancestry(id: string): readonly number[] {
    const reached = new Set<number>([this.placeOf(id)]);
    for (const place of reached) for (const parent of this.#parentsAt(place)) reached.add(parent.place);
    return [...reached].sort((one, other) => one - other);
  }

  /** Places of the founders that a node's ancestry reaches, in the order of the records; the same list for all nodes of one descent. */
  foundersOf(id: string): readonly number[] {
    this.#founders ??= this.#foundersOfAll();
    return this.#founders[this.placeOf(id)] ?? [];
  }

  #foundersOfAll(): (readonly number[])[] {
    const founders: (readonly number[])[] = [];
    for (const place of this.#order) {
      if (this.nodes[place]?.lot.kind === "founder") founders[place] = [place];
      else
        founders[place] = this.#parentsAt(place).reduce<readonly number[]>(
          (all, parent) => joined(all, founders[parent.place] ?? []),
          [],
        );
    }
    return founders;
  }

  assumedFor(id: string): Assumption[] {
    const takenFor = new Map<string, { code: string; text: string; names: string[] }>();
    const ancestry = this.#ancestry(id);
    for (const place of ancestry) {
      for (const { code, text } of this.nodes[place]?.assumed ?? []) {
        const taken = takenFor.get(text) ?? { code, text, names: [] };
        taken.names.push(this.nodes[place]?.name ?? "");
        takenFor.set(text, taken);
      }
    }
    const assumed = [...takenFor.values()].map(({ code, text, names }) => ({
      code,
      text: `${text}: ${names.join(", ")}`,
    }));
    const founders = this.foundersOf(id);
    if (founders.length < 2) return assumed;
    const names = founders.map((place) => this.nodes[place]?.name);
    const text = `founder lots were unrelated to each other: ${names.join(", ")}`;
    return [...assumed, { code: "founders-unrelated", text }];
  }
}

/** Two ascending lists as one, without repeats; one of the two itself where it holds the other. */
function joined(one: readonly number[], other: readonly number[]): readonly number[] {
  if (one === other || other.length === 0) return one;
  if (one.length === 0) return other;
  const all = [...new Set([...one, ...other])].sort((a, b) => a - b);
  return all.length === one.length ? one : all.length === other.length ? other : all;
}

/** Turns `["lots", 7, "seedParents"]` into the place of the record that the seventh node stands for. */
function placed(each: Refusal, nodes: readonly LineageNode[]): Refusal {
  const [first, place, ...field] = each.path;
  const node = first === "lots" && typeof place === "number" ? nodes[place] : undefined;
  return node === undefined ? each : { ...each, path: [...node.at, ...field] };
}
