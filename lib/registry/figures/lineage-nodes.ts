import { defaultSelfingRate, equilibriumInbreeding, type Mating } from "@/lib/science/crops/mating";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import { atOnce, eachInSteps, type Steps } from "@/lib/science/in-steps";
import { assumedOfLot } from "@/lib/science/lineage/lineage-assumed";
import type { LineageLot, ParentShare, SownShare } from "@/lib/science/lineage/lots";
import { type Assumption, type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { plotOfCross, type SidesOfCross, sidesOfCross, withinSide } from "./cross-of-record";
import { plotParentsOfRecord } from "./plot-parents-of-record";
import type { FigureRecords, GrowOutRecord, HarvestRecord, LotRecord, ParentRecord, VarietyRecord } from "./records";

/**
 * A lot or a grow-out in the lineage. A lot is a split of its grow-out, of which all lots are one pool; where each lot is a harvest of which it
 * is known what every plant gave, it is a split of that harvest, and the harvests share their plants. Several lots on one side of a cross stand
 * as a mix of them.
 */
export interface LineageNode {
  readonly lot: LineageLot;
  /** of the mix on one side of a cross: its lots, with the shares that are known */
  readonly side?: readonly ParentRecord[];
  /** the record it stands for, to say where a refusal lies */
  readonly at: Path;
  /** its name for people */
  readonly name: string;
  /** the plants, where their numbers are known */
  readonly plot: PlotParents | null;
  /** `sizes`: drift cannot be followed; `all`: not even the shares of the parents are known, or the crop is clonal */
  readonly unknown: "sizes" | "all" | null;
  readonly assumed: readonly Assumption[];
  /** counts of plants that cannot be: the node then counts as unknown */
  readonly impossible: readonly Refusal[];
}

export const lotNode = (id: string) => `lot ${id}`;
export const growOutNode = (id: string) => `grow-out ${id}`;
const harvestNode = (growOutId: string, lotId: string) => `${growOutNode(growOutId)} into ${lotId}`;
const sideNode = (growOutId: string, side: "seed" | "pollen") => `${growOutNode(growOutId)} ${side} parents`;

/** The grow-out that a node stands for, itself or one harvest of it; null for any other. */
export function growOutOfNode({ lot, at }: Pick<LineageNode, "lot" | "at">): string | null {
  return at[0] === "growOuts" && lot.kind !== "blend" ? String(at[1]) : null;
}

/** Stands in where the numbers of plants are not known: what they would move is then not given. */
const ANY_SIZE = { pollenParents: 2, seedParents: 1, seedShares: "equal" } as const;

/** The records as lots of a lineage, in the order of the records, grow-outs behind the lots. */
export function lineageNodes(records: FigureRecords): LineageNode[] {
  return atOnce(nodesInSteps(records));
}

/** The same, laid down now and then. */
export function* nodesInSteps({ varieties, lots, growOuts }: FigureRecords): Steps<LineageNode[]> {
  const varietyOf = new Map(varieties.map((variety) => [variety.id, variety]));
  const ofGrowOut = new Map<string, string[]>();
  for (const lot of lots) {
    if (lot.kind !== "harvest" || lot.growOutId === null) continue;
    const known = ofGrowOut.get(lot.growOutId);
    if (known) known.push(lot.id);
    else ofGrowOut.set(lot.growOutId, [lot.id]);
  }
  const ofEach = yield* eachInSteps(growOuts, (growOut): readonly LineageNode[] => {
    const own = ofGrowOut.get(growOut.id);
    return own ? nodesOfGrowOut(growOut, varietyOf.get(growOut.varietyId), own) : [];
  });
  const grown = ofEach.flat();
  const harvests = new Set(grown.map(({ lot }) => lot.id));
  const ofLots = yield* eachInSteps(lots, (lot) => nodeOfLot(lot, varietyOf.get(lot.varietyId), harvests));
  return [...ofLots, ...grown];
}

function nodeOfLot(lot: LotRecord, variety: VarietyRecord | undefined, grown: ReadonlySet<string>): LineageNode {
  const id = lotNode(lot.id);
  const common = { at: ["lots", lot.id], name: lot.number, plot: null, assumed: [], impossible: [] };
  const clonal = variety === undefined || variety.clonal;
  if (lot.kind === "harvest" && lot.growOutId !== null) {
    const own = harvestNode(lot.growOutId, lot.id);
    const parents = [{ id: grown.has(own) ? own : growOutNode(lot.growOutId), share: 1 }];
    return { lot: { id, kind: "split", parents }, unknown: clonal ? "all" : null, ...common };
  }
  if ((lot.kind === "blend" || lot.kind === "split") && lot.parents.length > 0) {
    const { parents, known } = sharesOf(lot.parents);
    const kind = lot.kind === "split" && parents.length === 1 ? "split" : "blend";
    return { lot: { id, kind, parents }, unknown: clonal || !known ? "all" : null, ...common };
  }
  return { ...common, ...founder(id, lot, variety), unknown: clonal ? "all" : null };
}

/** A lot whose parents are not on record; its inbreeding, where nobody knows it, is that of a long-selfed crop at its balance. */
function founder(id: string, lot: LotRecord, variety: VarietyRecord | undefined) {
  const rate = variety === undefined ? 0 : defaultSelfingRate(variety.profile);
  const inbreeding = lot.inbreeding ?? equilibriumInbreeding(rate);
  const made: LineageLot = { id, kind: "founder", inbreeding };
  const assumed: Assumption[] = [...assumedOfLot(made)];
  if (lot.inbreeding === null) {
    const text = `the founder lot was inbred as the crop usually is (${Number(inbreeding.toPrecision(6))})`;
    assumed.push({ code: "founder-inbreeding-of-crop", text });
  }
  return { lot: made, assumed };
}

/** The grow-out as one pool; or one node for each of its harvests; and the sides of a cross that are of several lots. */
function nodesOfGrowOut(
  growOut: GrowOutRecord,
  variety: VarietyRecord | undefined,
  lotIds: readonly string[],
): readonly LineageNode[] {
  const told = sidesOfCross(growOut);
  const cross = told === "untold" ? null : told;
  const whole = nodeOfGrowOut(growOut, variety, cross);
  const pool =
    told === "untold" ? { ...whole, unknown: "all" as const, assumed: [...whole.assumed, SIDES_NOT_TOLD] } : whole;
  if (cross) return [pool, ...nodesOfSides(growOut, cross)];
  const harvests = growOut.harvests ?? [];
  const own = new Map(harvests.map((harvest) => [harvest.lotId, harvest]));
  const plot = pool.plot;
  const whose = lotIds.length > 1 && own.size === lotIds.length && lotIds.every((id) => own.has(id));
  if (!whose || !plot || plot.pollenShares !== undefined || pool.lot.kind !== "grow-out") return [pool];
  const { lot } = pool;
  const nodes = harvests.map((harvest): LineageNode => nodeOfHarvest(pool, lot, plot, harvest));
  return nodes.every(({ plot: each, lot: one }) => each && plotParentsFaults({ ...lot, ...each, ...one }).length === 0)
    ? nodes
    : [pool];
}

function nodeOfHarvest(
  pool: LineageNode,
  lot: Extract<LineageLot, { kind: "grow-out" }>,
  plot: PlotParents,
  { lotId, seedShares }: HarvestRecord,
): LineageNode {
  const own = { ...plot, seedParents: seedShares.length, seedShares };
  const id = harvestNode(String(pool.at[1]), lotId);
  return { ...pool, lot: { ...lot, ...own, id, plants: String(pool.at[1]) }, plot: own };
}

function nodesOfSides({ id, name }: GrowOutRecord, { seed, pollen }: SidesOfCross): LineageNode[] {
  return (
    [
      ["seed", seed],
      ["pollen", pollen],
    ] as const
  ).flatMap(([which, lots]): LineageNode[] => {
    if (lots.length < 2) return [];
    const side = withinSide(lots);
    const { parents, known } = sharesOf(side);
    const lot: LineageLot = { id: sideNode(id, which), kind: "blend", parents };
    const common = {
      at: ["growOuts", id],
      name: `${which} parents of ${name}`,
      plot: null,
      assumed: [],
      impossible: [],
    };
    return [{ lot, side, unknown: known ? null : "all", ...common }];
  });
}

/** Half of the genes from each side of a cross. */
function halves(id: string, { seed, pollen }: SidesOfCross): SownShare[] {
  const of = (side: readonly ParentRecord[], which: "seed" | "pollen", role: SownShare["role"]): SownShare => {
    const [only] = side;
    return { id: only && side.length === 1 ? lotNode(only.id) : sideNode(id, which), share: 0.5, role };
  };
  return [of(seed, "seed", "seed parent"), of(pollen, "pollen", "pollen parent")];
}

function nodeOfGrowOut(
  growOut: GrowOutRecord,
  variety: VarietyRecord | undefined,
  cross: SidesOfCross | null,
): LineageNode {
  const id = growOutNode(growOut.id);
  const at = ["growOuts", growOut.id];
  const mixed = sharesOf(growOut.parents);
  const { parents, known } = cross ? { parents: halves(growOut.id, cross), known: true } : mixed;
  const profile = variety?.profile ?? NOTHING_KNOWN;
  const ofRecord = plotParentsOfRecord(growOut, profile);
  const { parents: plot, assumed } = cross ? plotOfCross(growOut, profile, cross) : ofRecord;
  const mating = cross ? CROSSED : ofRecord.mating;
  const impossible = [
    ...plotParentsFaults(plot ?? { ...mating, ...ANY_SIZE }, at),
    ...(cross && (growOut.selfingRate ?? 0) > 0 ? [selfedCross(growOut, at)] : []),
  ];
  const foreign = growOut.foreignPollen === null ? {} : { foreignPollen: growOut.foreignPollen };
  const counted = impossible.length > 0 || !plot ? { ...mating, ...ANY_SIZE } : plot;
  // What was sown is not on record: the line begins here, and of what it holds nothing is known.
  const sown = parents.length > 0;
  const lot: LineageLot = sown ? { id, kind: "grow-out", parents, ...counted, ...foreign } : { id, kind: "founder" };
  const sound = plot !== null && impossible.length === 0 && sown;
  const ofScience = assumedOfLot(lot).filter(({ code }) => sound || code === "foreign-pollen-not-assessed");
  return {
    lot,
    at,
    name: growOut.name,
    plot: sound ? plot : null,
    unknown:
      variety === undefined || variety.clonal || !known || !sown || impossible.length > 0
        ? "all"
        : sound
          ? null
          : "sizes",
    assumed: [...assumed, ...ofScience, ...(sown ? (sound ? [] : [PLANTS_NOT_KNOWN]) : [NOTHING_SOWN])],
    impossible,
  };
}

/** In a cross no plant that gives seed sheds pollen. */
const CROSSED = { sexes: "separate", selfingRate: 0 } as const;

function selfedCross({ selfingRate }: GrowOutRecord, at: Path): Refusal {
  const needed = "in a cross no seed is of its own plant’s pollen: leave the rate out, or the roles of the lots";
  return refusal("selfed-cross", [...at, "selfingRate"], selfingRate, "stands beside lots with roles", needed);
}

const SIDES_NOT_TOLD: Assumption = {
  code: "sides-not-told",
  text: "of the lots of a cross not all are said to be seed or pollen parents",
};

const PLANTS_NOT_KNOWN: Assumption = {
  code: "plants-not-known",
  text: "the plants, seed parents or seed shares are not recorded, or cannot be",
};

const NOTHING_SOWN: Assumption = {
  code: "parents-not-known",
  text: "which lot was sown is not on record",
};

const NOTHING_KNOWN: Mating = {
  matingSystem: null,
  selfIncompatible: null,
  outcrossingPctMin: null,
  outcrossingPctMax: null,
};

/** Where a share of several is not known, any will do: the figures that it moves are then not given. */
function sharesOf(parents: readonly ParentRecord[]): { parents: ParentShare[]; known: boolean } {
  const known = parents.length === 1 || parents.every(({ share }) => share !== null);
  const even = 1 / parents.length;
  return {
    parents: parents.map(({ id, share }) => ({
      id: lotNode(id),
      share: parents.length === 1 ? (share ?? 1) : known && share !== null ? share : even,
    })),
    known,
  };
}
