import { atOnce, eachInSteps, type Steps } from "@/lib/science/in-steps";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { Pedigree } from "@/lib/science/lineage/pedigree";
import type { LineageSpan, LineageSpanInput, LotSpan } from "@/lib/science/lineage/span-lots";
import type { Outcome } from "@/lib/science/outcome";
import { growOutAsKnown, lotAsKnown, mixAsKnown, type NodeAsKnown, sownNode } from "./as-known";
import { foundersOfSpan } from "./founders-of-span";
import { inTurns } from "./in-turns";
import { type LineageNode, lotNode } from "./lineage-nodes";
import type { FigureRecords } from "./records";
import { SpanGround } from "./span-ground";
import type { LineBegins, NarrowingRecord, SpanOfLot } from "./span-of-lot";

/**
 * What the records allow of each lot whose line of descent is not known throughout, by lot id; lots whose line is known have none, and so have
 * lots of crops kept by division. Only lines with a gap are worked through, each with all its ancestors.
 */
export function spansOfRecords(
  records: FigureRecords,
  nodes: readonly LineageNode[],
  pedigree: Pedigree,
): ReadonlyMap<string, SpanOfLot> {
  const work = atOnce(spanWorkInSteps(records, nodes, pedigree));
  return work === null ? new Map() : work.read(lineageSpan(work.input));
}

/** The spans of some records as one calculation, which may be worked out elsewhere, and how its answer is read. */
export interface SpanWork {
  readonly input: LineageSpanInput;
  read(answer: Outcome<LineageSpan>): ReadonlyMap<string, SpanOfLot>;
}

/** What `spansOfRecords` has to be worked out from, laid down now and then; null where every line is known throughout. */
export function* spanWorkInSteps(
  records: FigureRecords,
  nodes: readonly LineageNode[],
  pedigree: Pedigree,
): Steps<SpanWork | null> {
  const founders = foundersOfSpan(records, nodes);
  const seed = nodes.map(
    ({ unknown, at }) => unknown !== null || founders.within.has(at[0] === "lots" ? String(at[1]) : ""),
  );
  const moved = descendants(pedigree, seed);
  if (!moved.some(Boolean)) return null;
  const wanted = ancestors(pedigree, moved);
  const known = yield* knownNodes(records, nodes, wanted, founders.within);
  const inIt = new Set(known.keys());
  const pairs = founders.pairs.filter(({ a, b }) => inIt.has(a) && inIt.has(b));
  const ground = new SpanGround(known, pairs);
  const clonal = new Set(records.varieties.flatMap((variety) => (variety.clonal ? [variety.id] : [])));
  const read = (answer: Outcome<LineageSpan>): ReadonlyMap<string, SpanOfLot> => {
    if (!answer.ok) return new Map();
    const spans = new Map(answer.value.lots.map((span) => [span.id, span]));
    return new Map(
      records.lots.flatMap(({ id, varietyId }, place) => {
        const span = spans.get(lotNode(id));
        if (!moved[place] || !span || clonal.has(varietyId)) return [];
        return [[id, spanOf(span, sizeOf(nodes[place], spans), ground)] as const];
      }),
    );
  };
  return { input: ground.input(), read };
}

/** A node by place and its name, as far as it is known. */
export interface KnownNode extends NodeAsKnown {
  readonly name: string;
  /** its record; null: it only stands for seed of which no record is */
  readonly record: { readonly kind: "lot" | "grow-out"; readonly id: string } | null;
}

/** Nodes by name, those that are wanted, each as far as it is known; laid down now and then. */
export function* knownNodes(
  records: FigureRecords,
  nodes: readonly LineageNode[],
  wanted: readonly boolean[],
  within: ReadonlyMap<string, number>,
): Steps<Map<string, KnownNode>> {
  const varieties = new Map(records.varieties.map((variety) => [variety.id, variety]));
  const growOuts = new Map(records.growOuts.map((growOut) => [growOut.id, growOut]));
  const known = new Map<string, KnownNode>();
  yield* eachInSteps(nodes, (node, place) => {
    if (!wanted[place]) return;
    const { name, lot } = node;
    const record = records.lots[place];
    if (record) {
      const made = lotAsKnown(node, record, within.get(record.id) ?? 0);
      known.set(lot.id, { ...made, name, record: { kind: "lot", id: record.id } });
      return;
    }
    if (node.side) {
      known.set(lot.id, { ...mixAsKnown(lot.id, node.side), name, record: null });
      return;
    }
    const growOut = growOuts.get(String(node.at[1]));
    const variety = growOut && varieties.get(growOut.varietyId);
    if (!growOut || !variety) return;
    if (growOut.parents.length === 0) {
      const id = sownNode(growOut.id);
      known.set(id, { lot: { id, kind: "founder" }, assumed: [], name: `what was sown in ${name}`, record: null });
    }
    known.set(lot.id, {
      ...growOutAsKnown(node, growOut, variety),
      name,
      record: { kind: "grow-out", id: growOut.id },
    });
  });
  return known;
}

/** By place: the nodes that are meant, and all that descend from them. */
function descendants({ placeOf, firstParent, parentRank }: Pedigree, meant: readonly boolean[]): boolean[] {
  const found = [...meant];
  placeOf.forEach((place, rank) => {
    for (let link = firstParent[rank] ?? 0; link < (firstParent[rank + 1] ?? 0) && !found[place]; link += 1)
      found[place] = found[placeOf[parentRank[link] ?? -1] ?? -1] === true;
  });
  return found;
}

/** By place: the nodes that are meant, and all that they descend from. */
function ancestors({ placeOf, firstParent, parentRank }: Pedigree, meant: readonly boolean[]): boolean[] {
  const found = [...meant];
  for (let rank = placeOf.length - 1; rank >= 0; rank -= 1) {
    if (!found[placeOf[rank] ?? -1]) continue;
    for (let link = firstParent[rank] ?? 0; link < (firstParent[rank + 1] ?? 0); link += 1)
      found[placeOf[parentRank[link] ?? -1] ?? -1] = true;
  }
  return found;
}

/** A harvest is a split of its grow-out, whose size it shows. */
function sizeOf(node: LineageNode | undefined, spans: ReadonlyMap<string, LotSpan>): SpanOfLot["effectiveSize"] {
  if (node?.lot.kind !== "split") return null;
  return spans.get(node.lot.parents[0]?.id ?? "")?.effectiveSize ?? null;
}

function spanOf(span: LotSpan, effectiveSize: SpanOfLot["effectiveSize"], ground: SpanGround): SpanOfLot {
  const { diversityRetained, coancestry, inbreeding, generations } = span;
  let narrows: NarrowingRecord | null | undefined;
  const since = span.since.flatMap((id): LineBegins[] => {
    const node = ground.known.get(id);
    return node?.record ? [{ growOutId: node.record.id, name: node.name }] : [];
  });
  return {
    ...{ diversityRetained, coancestry, inbreeding, effectiveSize, generations, since },
    get assumed() {
      return ground.assumedFor(span.id);
    },
    get narrows() {
      if (narrows === undefined) narrows = atOnce(ground.narrowsFor(span.id));
      return narrows;
    },
    narrowsAtHand: async () => {
      if (narrows === undefined) narrows = await inTurns(ground.narrowsFor(span.id));
    },
  };
}
