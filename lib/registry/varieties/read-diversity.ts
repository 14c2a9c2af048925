import { type Database, readRows, type Selection, sql } from "@/lib/db";
import type { SizeSpan } from "@/lib/science/effective-size/harmonic-mean-size";
import { type CostOfSize, costsOfSize } from "@/lib/science/lineage/cost-of-size";
import { type LineageLot, parentsOf } from "@/lib/science/lineage/lots";
import { growOutOfNode, type LineageNode, lineageNodes, lotNode } from "../figures/lineage-nodes";
import { figuresOfCropOf, type LotFigures } from "../figures/read-figures";
import { readLineage } from "../figures/read-records";
import { mayHoldSeed } from "./holders";
import { type PlannedSize, plannedSize, type SizeAskedFor } from "./planned-size";
import type { LotOfVariety, VarietyRead } from "./read-variety";
import { type GrowOutInLine, type Stretch, stretchesOf } from "./stretches";

/** A grow-out that a lot descends from, and what its size cost that lot. */
export interface GrowOutBehind extends GrowOutInLine {
  readonly name: string;
  readonly sown: string | null;
  readonly sownFirst: string | null;
  readonly steward: string | null;
  /** plants that shed pollen, and plants whose seed was kept; null not known */
  readonly pollenParents: number | null;
  readonly seedParents: number | null;
  /** what it was planned at; null where neither plan, variety nor crop says */
  readonly planned: PlannedSize | null;
  /** null where a size in the lot's ancestry is not known, or nobody says what was planned */
  readonly cost: CostOfSize | null;
}

/** A lot of the variety in the chart: the lots of the variety that it came of, the nearest ones. */
export interface LineBetween {
  readonly from: string;
  readonly to: string;
}

export interface DiversityRead {
  /** the lot that the page speaks of; null where the variety has none */
  readonly lot: LotOfVariety | null;
  /** of that lot's ancestry, in the order of sowing */
  readonly growOuts: readonly GrowOutBehind[];
  readonly stretches: readonly Stretch<GrowOutBehind>[];
  readonly lines: readonly LineBetween[];
}

/**
 * What a variety's lots keep of its diversity, and what cost it. `asked` is a lot's id; without it the page speaks of the newest lot that may
 * hold seed and whose lineage is known. Two statements beside those of `read` where the figures of the crop are at hand.
 */
export async function readDiversity(db: Database, read: VarietyRead, asked: string | null): Promise<DiversityRead> {
  const lot = lotSpokenOf(read.lots, asked);
  if (lot === null || read.crop.clonal) return { lot, growOuts: [], stretches: [], lines: [] };
  const nodes = lineageNodes(await readLineage(db, [read.crop.id]));
  const told = new Map((await readRows(db, growOutsOfCrop(read.crop.id))).map((each) => [each.id, each]));
  const figures = await figuresOfCropOf(db, read.variety.id);
  const growOuts = growOutsBehind({ lot, nodes, told, figures, cropFewest: read.crop.plantsMin });
  return { lot, growOuts, stretches: stretchesOf(growOuts), lines: linesBetween(read.lots, nodes) };
}

/** The lot that is asked for; else the newest that may hold seed with a figure, else the newest with one, else the newest. */
function lotSpokenOf(lots: readonly LotOfVariety[], asked: string | null): LotOfVariety | null {
  const named = lots.find(({ id, number }) => id === asked || number === asked);
  if (named) return named;
  const newest = [...lots].sort((a, b) => ((a.yearLast ?? "") < (b.yearLast ?? "") ? 1 : -1));
  const counted = newest.filter(({ standing }) => standing === "counted" || standing === "uniform");
  return counted.find(mayHoldSeed) ?? newest.find(mayHoldSeed) ?? counted[0] ?? newest[0] ?? null;
}

interface ToldOfGrowOut extends Omit<SizeAskedFor, "cropFewest"> {
  readonly id: string;
  readonly sown: string | null;
  readonly sownFirst: string | null;
  readonly steward: string | null;
}

function growOutsOfCrop(cropId: string): Selection<ToldOfGrowOut> {
  return {
    columns: {
      id: "text",
      sown: "text",
      sownFirst: "text",
      steward: "text",
      plantsPlanned: "number",
      seedParentsPlanned: "number",
      plantsWanted: "number",
      seedParentsWanted: "number",
    },
    rows: sql`
      SELECT g."id", g."sown", g."sownFirst", p."name" AS "steward", g."plantsPlanned", g."seedParentsPlanned", v."plantsWanted",
        v."seedParentsWanted"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" LEFT JOIN "Person" p ON p."stewardId" = g."stewardId"
      WHERE v."cropId" = ${cropId} ORDER BY COALESCE(g."sownFirst", ''), g."id"`,
  };
}

interface Ground {
  readonly lot: LotOfVariety;
  readonly nodes: readonly LineageNode[];
  readonly told: ReadonlyMap<string, ToldOfGrowOut>;
  readonly figures: ReadonlyMap<string, LotFigures>;
  readonly cropFewest: number | null;
}

function growOutsBehind({ lot, nodes, told, figures, cropFewest }: Ground): GrowOutBehind[] {
  const byId = new Map(nodes.map((node) => [node.lot.id, node]));
  const behind = ancestry(byId, lotNode(lot.id));
  const sizes = sizesOfGrowOuts(nodes, figures);
  const grownBehind = new Map(
    nodes.flatMap((node) => {
      const growOutId = behind.has(node.lot.id) ? growOutOfNode(node) : null;
      return growOutId === null ? [] : [[growOutId, node] as const];
    }),
  );
  const grown = [...told.values()].flatMap((each) => {
    const node = grownBehind.get(each.id);
    if (!node) return [];
    const separate = node.lot.kind === "grow-out" && node.lot.sexes === "separate";
    return [{ told: each, node, planned: plannedSize({ ...each, cropFewest }, separate) }];
  });
  const costs = costsFor(nodes, byId, behind, lot, grown);
  return grown.map(({ told: each, node, planned }) => ({
    id: each.id,
    before: growOutBefore(byId, node),
    size: sizes.get(each.id) ?? null,
    name: node.name,
    sown: each.sown,
    sownFirst: each.sownFirst,
    steward: each.steward,
    pollenParents: node.plot?.pollenParents ?? null,
    seedParents: node.plot?.seedParents ?? null,
    planned,
    cost: costs.get(node.lot.id) ?? null,
  }));
}

/** Costs by node; none where something in the ancestry is not known: a figure that rests on a stand-in would be a false one. */
function costsFor(
  nodes: readonly LineageNode[],
  byId: ReadonlyMap<string, LineageNode>,
  behind: ReadonlySet<string>,
  lot: LotOfVariety,
  grown: readonly { readonly node: LineageNode; readonly planned: PlannedSize | null }[],
): ReadonlyMap<string, CostOfSize> {
  if (lot.standing !== "counted" || [...behind].some((id) => byId.get(id)?.unknown !== null)) return new Map();
  const others = grown.flatMap(({ node, planned }) => (planned ? [{ id: node.lot.id, ...planned }] : []));
  const found = costsOfSize(
    nodes.map((node) => node.lot),
    lotNode(lot.id),
    others,
  );
  return new Map(found.ok ? found.value.costs.map((cost) => [cost.id, cost]) : []);
}

/** A node and all that its ancestry reaches. */
function ancestry(byId: ReadonlyMap<string, LineageNode>, id: string): ReadonlySet<string> {
  const reached = new Set([id]);
  for (const each of reached) for (const parent of parentsAt(byId, each)) reached.add(parent);
  return reached;
}

function parentsAt(byId: ReadonlyMap<string, LineageNode>, id: string): readonly string[] {
  const node = byId.get(id);
  return node ? parentsOf(node.lot).map((parent) => parent.id) : [];
}

/** The grow-out that gave the one lot that was sown, through splits; null where several lots were, where one was mixed, or none came before. */
function growOutBefore(byId: ReadonlyMap<string, LineageNode>, { lot }: LineageNode): string | null {
  let above: LineageLot | undefined = lot;
  do {
    const parents = parentsOf(above);
    above = parents.length === 1 ? byId.get(parents[0]?.id ?? "")?.lot : undefined;
  } while (above?.kind === "split");
  const node = above?.kind === "grow-out" ? byId.get(above.id) : undefined;
  return node ? growOutOfNode(node) : null;
}

/** The effective size of each grow-out that gave a lot: a point, or the span of what its records allow. */
function sizesOfGrowOuts(nodes: readonly LineageNode[], figures: ReadonlyMap<string, LotFigures>) {
  const sizes = new Map<string, SizeSpan>();
  const growOutOf = new Map(nodes.map((node) => [node.lot.id, growOutOfNode(node)]));
  for (const { lot, at } of nodes) {
    const growOutId = lot.kind === "split" ? growOutOf.get(lot.parents[0]?.id ?? "") : undefined;
    const own = growOutId == null ? undefined : figures.get(String(at[1]));
    if (!own || growOutId == null) continue;
    const { effectiveSize, span } = own;
    const size = effectiveSize === null ? (span?.effectiveSize ?? null) : { low: effectiveSize, high: effectiveSize };
    if (size) sizes.set(growOutId, size);
  }
  return sizes;
}

/** From each lot of a variety to the nearest lots of it that came of it. */
function linesBetween(lots: readonly LotOfVariety[], nodes: readonly LineageNode[]): LineBetween[] {
  const byId = new Map(nodes.map((node) => [node.lot.id, node]));
  const own = new Map(lots.map((lot) => [lotNode(lot.id), lot.id]));
  return lots.flatMap((lot) => {
    const reached = new Set(parentsAt(byId, lotNode(lot.id)));
    const from: string[] = [];
    for (const id of reached) {
      const found = own.get(id);
      if (found !== undefined) from.push(found);
      else for (const parent of parentsAt(byId, id)) reached.add(parent);
    }
    return from.map((each) => ({ from: each, to: lot.id }));
  });
}
