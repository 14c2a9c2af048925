import { yearTicks } from "@/components/charts/points";
import { widthOfSize } from "../stem-chart/layout/width-of-size";
import { byDescent, type LineageLot, placedYears } from "./lots";
import { stemOutline } from "./stem-outline";

/** Where a lot stands. Its mark is drawn out from `left` to `right` where its year is not sharp. */
export interface PlacedLot {
  readonly lot: LineageLot;
  readonly x: number;
  readonly y: number;
  readonly left: number;
  readonly right: number;
  readonly lane: number;
  /** whether the name stands above the mark, because below there is no room */
  readonly above: boolean;
}

/** A stem from a parent to a child. `core` is surely that thick, `sleeve` at most; unknown is open, told is a dotted line. */
export interface PlacedStem {
  readonly from: string;
  readonly to: string;
  readonly kind: "known" | "unknown" | "told";
  readonly core: string;
  readonly sleeve: string | null;
  readonly middle: string;
}

export interface LineageLayout {
  readonly width: number;
  readonly height: number;
  readonly lots: readonly PlacedLot[];
  readonly stems: readonly PlacedStem[];
  readonly years: readonly { readonly year: number; readonly x: number }[];
}

const margin = { left: 40, right: 26, top: 68, bottom: 46 };
const laneGap = 74;
const leastStep = 30;
const letter = 7.2;

/**
 * Lays a handful of lots out: years from left to right, a lane for each line of descent, children in the lane of the parent
 * that gave most where it is free, else in a lane opened beside it. The same lots give the same drawing.
 */
export function layLineage(lots: readonly LineageLot[], width: number): LineageLayout {
  const order = byDescent(lots);
  const years = placedYears(order);
  const ends = [...years.values()];
  const first = Math.min(...ends.map((each) => each.first));
  const last = Math.max(first + 1, ...ends.map((each) => each.last));
  const longest = Math.max(0, ...lots.map((lot) => halfName(lot)));
  const leftEdge = Math.max(margin.left, longest);
  const right = Math.max(margin.right, longest);
  const inner = Math.max(leastStep, width - leftEdge - right);
  const across = (year: number) => leftEdge + ((year - first) / (last - first)) * inner;
  const placed = new Map<string, Omit<PlacedLot, "y" | "lane"> & { readonly lane: Lane }>();
  const lanes: Lane[] = [];
  for (const lot of order) {
    const span = years.get(lot.id) ?? { first, last: first };
    const parents = lot.parents.flatMap((parent) => placed.get(parent.id) ?? []);
    const after = Math.max(Number.NEGATIVE_INFINITY, ...parents.map((parent) => parent.x + leastStep));
    const x = Math.max(across((span.first + span.last) / 2), after);
    const { lane, above } = findLane(lanes, lot, x, (id) => placed.get(id)?.lane);
    const half = (span.last - span.first) / 2;
    const reach = (half / (last - first)) * inner;
    placed.set(lot.id, { lot, x, left: x - reach, right: x + reach, lane, above });
  }
  const place = new Map(
    [...placed].map(([id, each]): [string, PlacedLot] => {
      const lane = lanes.indexOf(each.lane);
      return [id, { ...each, lane, y: margin.top + lane * laneGap }];
    }),
  );
  const farthest = Math.max(width, ...[...place.values()].map((each) => each.x + right));
  return {
    width: farthest,
    height: margin.top + Math.max(0, lanes.length - 1) * laneGap + margin.bottom,
    lots: order.flatMap((lot) => place.get(lot.id) ?? []),
    stems: order.flatMap((lot) => stemsTo(lot, place)),
    years: yearTicks(first, last, Math.max(2, Math.floor(inner / 64)))
      .map((year) => ({ year, x: across(year) }))
      .filter((tick) => tick.x >= leftEdge - 1 && tick.x <= width),
  };
}

/** The width of a stem of 200 here; the rule of widths is the stem chart's. */
const full = 21;

interface Lane {
  tail: string;
  /** how far to the right the names below and above reach already */
  below: number;
  over: number;
}

/** Half the room that a lot's name takes. */
function halfName(lot: LineageLot): number {
  return (Math.max(lot.name.length, 9) * letter) / 2;
}

function findLane(
  lanes: Lane[],
  lot: LineageLot,
  x: number,
  laneOf: (id: string) => Lane | undefined,
): { lane: Lane; above: boolean } {
  const reach = halfName(lot);
  const main = [...lot.parents].sort((a, b) => (b.share ?? 0) - (a.share ?? 0))[0];
  const free = lanes.find((lane) => main && lane.tail === main.id);
  if (free) {
    const fitsBelow = free.below + 6 <= x - reach;
    const fitsAbove = free.over + 6 <= x - reach;
    if (fitsBelow || fitsAbove) {
      free.tail = lot.id;
      if (fitsBelow) free.below = x + reach;
      else free.over = x + reach;
      return { lane: free, above: !fitsBelow };
    }
  }
  const lane: Lane = { tail: lot.id, below: x + reach, over: Number.NEGATIVE_INFINITY };
  const beside = lot.parents.flatMap((parent) => {
    const lane = laneOf(parent.id);
    return lane ? [lanes.indexOf(lane)] : [];
  });
  const at = beside.length > 0 ? Math.max(...beside) + 1 : lanes.length;
  lanes.splice(at, 0, lane);
  return { lane, above: false };
}

function stemsTo(lot: LineageLot, place: ReadonlyMap<string, PlacedLot>): PlacedStem[] {
  const to = place.get(lot.id);
  if (!to) return [];
  return lot.parents.flatMap((parent) => {
    const from = place.get(parent.id);
    if (!from) return [];
    const share = parent.share ?? 1 / lot.parents.length;
    const size = lot.effectiveSize;
    const start = from.lot.effectiveSize;
    const outline = (end: "low" | "high") =>
      stemOutline(
        from,
        to,
        widthOfSize(start ? start[end] : size ? size[end] : 10, full) * share,
        widthOfSize(size ? size[end] : 10, full) * share,
      );
    const low = outline("low");
    const known = lot.kind === "split" || lot.kind === "blend" ? start !== null || size !== null : size !== null;
    return [
      {
        from: parent.id,
        to: lot.id,
        kind: lot.told ? ("told" as const) : known ? ("known" as const) : ("unknown" as const),
        core: low.path,
        sleeve: size && size.high > size.low ? outline("high").path : null,
        middle: low.middle,
      },
    ];
  });
}
