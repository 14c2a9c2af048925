import { defaultSelfingRate, equilibriumInbreeding, type Mating } from "@/lib/science/crops/mating";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import { assumedOfLot } from "@/lib/science/lineage/lineage-assumed";
import type { LineageLot, ParentShare } from "@/lib/science/lineage/lots";
import type { Assumption, Path, Refusal } from "@/lib/science/outcome";
import { plotParentsOfRecord } from "./plot-parents-of-record";
import type { FigureRecords, GrowOutRecord, LotRecord, ParentRecord, VarietyRecord } from "./records";

/** A lot or a grow-out in the lineage. All lots of one grow-out are one pool: each is a split of it. */
export interface LineageNode {
  readonly lot: LineageLot;
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

/** Stands in where the numbers of plants are not known: what they would move is then not given. */
const ANY_SIZE = { pollenParents: 2, seedParents: 1, seedShares: "equal" } as const;

/** The records as lots of a lineage, in the order of the records, grow-outs last. */
export function lineageNodes({ varieties, lots, growOuts }: FigureRecords): LineageNode[] {
  const varietyOf = new Map(varieties.map((variety) => [variety.id, variety]));
  const harvested = new Set(lots.flatMap((lot) => (lot.kind === "harvest" && lot.growOutId ? [lot.growOutId] : [])));
  return [
    ...lots.map((lot) => nodeOfLot(lot, varietyOf.get(lot.varietyId))),
    ...growOuts
      .filter(({ id }) => harvested.has(id))
      .map((growOut) => nodeOfGrowOut(growOut, varietyOf.get(growOut.varietyId))),
  ];
}

function nodeOfLot(lot: LotRecord, variety: VarietyRecord | undefined): LineageNode {
  const id = lotNode(lot.id);
  const common = { at: ["lots", lot.id], name: lot.number, plot: null, assumed: [], impossible: [] };
  const clonal = variety === undefined || variety.clonal;
  if (lot.kind === "harvest" && lot.growOutId !== null) {
    const parents = [{ id: growOutNode(lot.growOutId), share: 1 }];
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

function nodeOfGrowOut(growOut: GrowOutRecord, variety: VarietyRecord | undefined): LineageNode {
  const id = growOutNode(growOut.id);
  const at = ["growOuts", growOut.id];
  const { parents, known } = sharesOf(growOut.parents);
  const { parents: plot, mating, assumed } = plotParentsOfRecord(growOut, variety?.profile ?? NOTHING_KNOWN);
  const impossible = plotParentsFaults(plot ?? { ...mating, ...ANY_SIZE }, at);
  const foreign = growOut.foreignPollen === null ? {} : { foreignPollen: growOut.foreignPollen };
  const counted = impossible.length > 0 ? ANY_SIZE : (plot ?? { ...mating, ...ANY_SIZE });
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
