import { sizeOfSoundParents } from "@/lib/science/effective-size/effective-size";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { atOnce, ITEMS_A_STEP, type Steps } from "@/lib/science/in-steps";
import { lineageInSteps } from "@/lib/science/lineage/lineage";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { LotLineage } from "@/lib/science/lineage/lots";
import { type Pedigree, pedigreeInSteps } from "@/lib/science/lineage/pedigree";
import { united } from "@/lib/science/lineage/united";
import { type Assumption, accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { type LineageNode, nodesInSteps } from "./lineage-nodes";
import type { FigureRecords } from "./records";
import type { SpanOfLot } from "./span-of-lot";
import { type SpanWork, spanWorkInSteps } from "./spans-of-records";

/**
 * What the lineage says of one lot; null: not known, because the plants or shares of an ancestor are not. A class, so that what is told of
 * a lot beside it takes no more room than its fields: an object with a getter of its own is several times as large, and pages ask for thousands.
 */
export class LotFigures {
  /** of the grow-out that made it; null for another origin */
  readonly effectiveSize: number | null;
  readonly inbreeding: number | null;
  readonly coancestry: number | null;
  readonly diversityRetained: number | null;
  readonly nativeDiversityRetained: number | null;
  readonly foreignAncestry: number | null;
  readonly generations: number | null;

  constructor(of: LotFigures) {
    this.effectiveSize = of.effectiveSize;
    this.inbreeding = of.inbreeding;
    this.coancestry = of.coancestry;
    this.diversityRetained = of.diversityRetained;
    this.nativeDiversityRetained = of.nativeDiversityRetained;
    this.foreignAncestry = of.foreignAncestry;
    this.generations = of.generations;
  }
}

export interface LineageOfRecords {
  /** by lot id */
  readonly figures: ReadonlyMap<string, LotFigures>;
  /** counts of plants that cannot be, with the place of their grow-out: what descends from it has no figures */
  readonly impossible: readonly Refusal[];
  /** ids of the founder lots that a lot's ancestry reaches, in the order of the records; one list for all lots of one descent */
  foundersOf(lotId: string): readonly string[];
  /** what the records allow of a lot whose line is not known throughout; null where its figures are points, or it has none */
  spanOf(lotId: string): SpanOfLot | null;
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
  const followed = atOnce(followedInSteps(records));
  if (!followed.ok) return followed;
  const { spans, whole } = followed.value;
  return accepted(whole(spans === null ? new Map() : spans.read(lineageSpan(spans.input))));
}

/** The lineage of some records but for its spans, which may be worked out elsewhere, and how both become one. */
export interface FollowedRecords {
  /** null where every line is known throughout */
  readonly spans: SpanWork | null;
  whole(spans: ReadonlyMap<string, SpanOfLot>): LineageOfRecords;
}

/** `lineageOfRecords` in two parts: what follows from points, laid down now and then, and the spans. Refused alike. */
export function* followedInSteps(records: FigureRecords): Steps<Outcome<FollowedRecords>> {
  const nodes = yield* nodesInSteps(records);
  const ordered = yield* pedigreeInSteps(nodes.map(({ lot }) => lot));
  if (!ordered.ok) return refused(...ordered.refusals.map((each) => placed(each, nodes)));
  const followed = yield* lineageInSteps(ordered.value);
  const graph = new Graph(nodes, ordered.value);
  const known = graph.known();
  yield;
  const sizes = yield* graph.sizes(followed, known);
  yield;
  // Lots stand first among the nodes, in the order of the records.
  const lotIds = records.lots.map(({ id }) => id);
  const ranks = new Map(lotIds.map((id, place) => [id, graph.rankAt(place)]));
  const figures = new Map<string, LotFigures>();
  for (const [id, rank] of ranks) {
    const found = followed[rank];
    if (found) figures.set(id, figuresOf(found, known[rank] ?? null, sizes[rank] ?? null));
  }
  yield;
  const ids = new Map<readonly number[], readonly string[]>();
  const idsAt = (places: readonly number[]) => {
    const kept = ids.get(places) ?? places.map((place) => lotIds[place] ?? "");
    ids.set(places, kept);
    return kept;
  };
  return accepted({
    spans: yield* spanWorkInSteps(records, nodes, ordered.value),
    whole: (spans) => ({
      figures,
      impossible: nodes.flatMap((node) => node.impossible),
      foundersOf: (lotId) => idsAt(graph.foundersOf(ranks.get(lotId) ?? -1)),
      spanOf: (lotId) => spans.get(lotId) ?? null,
      assumedFor: (lotId) => graph.assumedFor(ranks.get(lotId) ?? -1),
    }),
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

/** So many are named in a sentence before the rest is only counted: a line of forty years would fill the page. */
const mostNamed = 8;

/** The nodes in the order of a pedigree: parents have lower ranks than their offspring. */
class Graph {
  readonly #rankOfPlace: Int32Array;
  #founders: (readonly number[])[] | null = null;

  constructor(
    private readonly nodes: readonly LineageNode[],
    private readonly pedigree: Pedigree,
  ) {
    this.#rankOfPlace = new Int32Array(nodes.length);
    for (const [rank, place] of pedigree.placeOf.entries()) this.#rankOfPlace[place] = rank;
  }

  /** The rank of the node at a place of the records. */
  rankAt(place: number): number {
    return this.#rankOfPlace[place] ?? -1;
  }

  #placeOf(rank: number): number {
    return this.pedigree.placeOf[rank] ?? -1;
  }

  #node(rank: number): LineageNode | undefined {
    return this.nodes[this.#placeOf(rank)];
  }

  #firstParent(rank: number): number {
    return this.pedigree.firstParent[rank] ?? 0;
  }

  #parentRank(link: number): number {
    return this.pedigree.parentRank[link] ?? -1;
  }

  /** By rank. What is not known of an ancestor is not known of what descends from it. */
  known(): Unknown[] {
    const known: Unknown[] = [];
    for (let rank = 0; rank < this.pedigree.lots.length; rank += 1) {
      let unknown = this.#node(rank)?.unknown ?? null;
      for (let link = this.#firstParent(rank); link < this.#firstParent(rank + 1) && unknown !== "all"; link += 1)
        unknown = known[this.#parentRank(link)] ?? unknown;
      known.push(unknown);
    }
    return known;
  }

  /** By rank: the effective size of the grow-out behind each harvest, with the mean inbreeding of its parents; null where there is none. */
  *sizes(figures: readonly LotLineage[], known: readonly Unknown[]): Steps<(number | null)[]> {
    const sizes: (number | null)[] = [];
    for (let rank = 0; rank < this.pedigree.lots.length; rank += 1) {
      if (rank % ITEMS_A_STEP === 0) yield;
      const node = this.#node(rank);
      const from = this.#parentRank(this.#firstParent(rank));
      const fromGrowOut = node?.lot.kind === "split" && this.#node(from)?.lot.kind === "grow-out";
      if (fromGrowOut && node.at[0] === "lots") sizes.push(sizes[from] ?? null);
      else sizes.push(node?.plot && known[rank] === null ? this.#sizeOf(rank, node.plot, figures) : null);
    }
    return sizes;
  }

  #sizeOf(rank: number, plot: PlotParents, figures: readonly LotLineage[]): number | null {
    let inbreeding = 0;
    for (let link = this.#firstParent(rank); link < this.#firstParent(rank + 1); link += 1) {
      const share = this.pedigree.parentShare[link] ?? 0;
      inbreeding += share * (figures[this.#parentRank(link)]?.inbreeding ?? 0);
    }
    return sizeOfSoundParents(plot, inbreeding);
  }

  /** Places of a node and all its ancestors, the nearest first. */
  #ancestry(rank: number): readonly number[] {
    const reached = new Set<number>([rank]);
    for (const each of reached) {
      for (let link = this.#firstParent(each); link < this.#firstParent(each + 1); link += 1)
        reached.add(this.#parentRank(link));
    }
    return [...reached].map((each) => this.#placeOf(each));
  }

  /** Places of the founders that a node's ancestry reaches, in the order of the records; the same list for all nodes of one descent. */
  foundersOf(rank: number): readonly number[] {
    this.#founders ??= this.#foundersOfAll();
    return this.#founders[rank] ?? [];
  }

  #foundersOfAll(): (readonly number[])[] {
    const founders: (readonly number[])[] = [];
    for (let rank = 0; rank < this.pedigree.lots.length; rank += 1) {
      let reached: readonly number[] = this.#node(rank)?.lot.kind === "founder" ? [this.#placeOf(rank)] : [];
      for (let link = this.#firstParent(rank); link < this.#firstParent(rank + 1); link += 1)
        reached = ascending(reached, founders[this.#parentRank(link)] ?? []);
      founders.push(reached);
    }
    return founders;
  }

  /** Names in the order of the records; of many the nearest, and how many more there are. */
  #named(places: readonly number[], nearest: readonly number[]): string {
    const name = (place: number) => this.nodes[place]?.name ?? "";
    if (places.length <= mostNamed) return places.map(name).join(", ");
    const taken = new Set(places);
    const near = nearest.filter((place) => taken.has(place)).slice(0, mostNamed);
    return `${near.map(name).join(", ")} and ${places.length - mostNamed} before them`;
  }

  assumedFor(rank: number): Assumption[] {
    const nearest = this.#ancestry(rank);
    const takenFor = new Map<string, { code: string; text: string; places: number[] }>();
    for (const place of [...nearest].sort((one, other) => one - other)) {
      for (const { code, text } of this.nodes[place]?.assumed ?? []) {
        const taken = takenFor.get(text) ?? { code, text, places: [] };
        taken.places.push(place);
        takenFor.set(text, taken);
      }
    }
    const assumed = [...takenFor.values()].map(({ code, text, places }) => ({
      code,
      text: `${text}: ${this.#named(places, nearest)}`,
    }));
    const founders = this.foundersOf(rank);
    if (founders.length < 2) return assumed;
    const names = founders.map((place) => this.nodes[place]?.name);
    const text = `founder lots were unrelated to each other: ${names.join(", ")}`;
    return [...assumed, { code: "founders-unrelated", text }];
  }
}

/** Two ascending lists as one that ascends; one of the two itself where it holds the other. */
function ascending(one: readonly number[], other: readonly number[]): readonly number[] {
  const all = united(one, other);
  return all === one || all === other ? all : [...all].sort((a, b) => a - b);
}

/** Turns `["lots", 7, "seedParents"]` into the place of the record that the seventh node stands for. */
function placed(each: Refusal, nodes: readonly LineageNode[]): Refusal {
  const [first, place, ...field] = each.path;
  const node = first === "lots" && typeof place === "number" ? nodes[place] : undefined;
  return node === undefined ? each : { ...each, path: [...node.at, ...field] };
}
