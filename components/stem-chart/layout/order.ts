import { compareCodePoints } from "@/lib/science/code-point-order";
import type { StemBand } from "../stem";
import type { Generations, Grown } from "./generation";

/** Lots of one band that stand on one line, each the heir of the one before. */
export interface Run {
  readonly band: string;
  readonly lots: readonly string[];
  readonly from: number;
  readonly to: number;
}

/** A band with its lanes from top to bottom, each with the runs that follow one another in it. */
export interface OrderedBand {
  readonly band: StemBand;
  readonly lanes: readonly (readonly Run[])[];
}

/** So many years lie at least between two runs of one lane. */
const apart = 1.5;

/**
 * The second step: which lots share a line and how the lines of a band lie under one another. It does not look at any width in
 * pixels, so that a picture keeps its order at every zoom. Bands stand by their first lot.
 */
export function order(grown: Generations, bands: readonly StemBand[]): readonly OrderedBand[] {
  const runs = runsOf(grown);
  const firstYear = new Map<string, number>();
  for (const { lot, year } of grown.lots) {
    firstYear.set(lot.band, Math.min(firstYear.get(lot.band) ?? Number.POSITIVE_INFINITY, year));
  }
  const named = new Map(bands.map((band) => [band.key, band]));
  const ordered = [...firstYear]
    .sort(([one, a], [other, b]) => a - b || compareCodePoints(one, other))
    .map(([key]) => named.get(key) ?? { key, name: key, place: null });
  const rank = new Map(ordered.map(({ key }, place) => [key, place]));
  const laneOf = new Map<string, Run[]>();
  const lanes = new Map<string, Run[][]>(ordered.map(({ key }) => [key, []]));
  for (const run of runs) {
    const of = lanes.get(run.band) ?? [];
    const lane = laneFor(run, of, grown, rank, laneOf);
    lane.push(run);
    for (const id of run.lots) laneOf.set(id, lane);
  }
  return ordered.map((band) => ({ band, lanes: lanes.get(band.key) ?? [] }));
}

/** The lane of a run: a free one near its parent's, else a new one beside that, else towards the band its parent stands in. */
function laneFor(
  run: Run,
  lanes: Run[][],
  { byId }: Generations,
  rank: ReadonlyMap<string, number>,
  laneOf: ReadonlyMap<string, Run[]>,
): Run[] {
  const head = byId.get(run.lots[0] ?? "");
  const parent = head && byId.get(mainParent(head) ?? "");
  const parentLane = parent ? laneOf.get(parent.lot.id) : undefined;
  // A stem must not lie over those of a sister: the lane in which a parent stands is free for its child only where it ends with that parent.
  const ends = (lane: Run[]) => lane !== parentLane || lane.at(-1)?.lots.at(-1) === parent?.lot.id;
  const beside = parentLane ? lanes.indexOf(parentLane) : -1;
  const own = rank.get(run.band) ?? 0;
  const fromBelow = parent !== undefined && (rank.get(parent.lot.band) ?? own) > own;
  const want = beside >= 0 ? beside : fromBelow ? lanes.length - 1 : 0;
  const free = lanes
    .map((lane, place) => ({ lane, place }))
    .filter(({ lane }) => (lane.at(-1)?.to ?? Number.NEGATIVE_INFINITY) + apart <= run.from && ends(lane))
    .sort((a, b) => Math.abs(a.place - want) - Math.abs(b.place - want) || a.place - b.place);
  if (free[0]) return free[0].lane;
  const lane: Run[] = [];
  lanes.splice(beside >= 0 ? beside + 1 : fromBelow ? lanes.length : lanes.length, 0, lane);
  return lane;
}

/** The parent that gave most; of equals the later one. */
function mainParent({ links }: Grown): string | undefined {
  return [...links].sort((a, b) => b.share - a.share)[0]?.parent;
}

const heirRank = { harvest: 0, blend: 1, split: 2, growing: 3, failed: 4, founder: 5 } as const;

/** Each lot is in one run. Its heir is the child in the same band that was grown from it, the earliest; a stub only where nothing else came. */
function runsOf(grown: Generations): Run[] {
  const heir = new Map<string, string>();
  for (const each of grown.lots) {
    const own = each.children
      .flatMap((id) => grown.byId.get(id) ?? [])
      .filter((child) => child.lot.band === each.lot.band && mainParent(child) === each.lot.id)
      .sort(
        (a, b) =>
          heirRank[a.lot.kind] - heirRank[b.lot.kind] ||
          Number(b.children.length > 0) - Number(a.children.length > 0) ||
          a.year - b.year ||
          compareCodePoints(a.lot.id, b.lot.id),
      )[0];
    if (own) heir.set(each.lot.id, own.lot.id);
  }
  const heirs = new Set(heir.values());
  const runs = grown.lots
    .filter(({ lot }) => !heirs.has(lot.id))
    .map((head): Run => {
      const lots: Grown[] = [];
      for (let at: Grown | undefined = head; at; at = grown.byId.get(heir.get(at.lot.id) ?? "")) lots.push(at);
      return {
        band: head.lot.band,
        lots: lots.map(({ lot }) => lot.id),
        from: Math.min(head.year, head.fuzzy?.first ?? head.year) - (head.links.length === 0 ? 1.5 : 0),
        to: Math.max(...lots.map((each) => Math.max(each.year, each.fuzzy?.last ?? each.year))),
      };
    });
  return runs.sort((a, b) => a.from - b.from || compareCodePoints(a.lots[0] ?? "", b.lots[0] ?? ""));
}
