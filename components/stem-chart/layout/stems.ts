import type { StemClaim } from "../stem";
import type { Widths } from "./carried";
import { along, type Curve, curveBetween, direction, middleOf, outlineOf } from "./curve";
import type { Grown } from "./generation";
import type { PlacedLot } from "./position";
import { stalkWay } from "./stalk-way";

/** One drawn piece of a stem: sure, at most, or not counted. */
export interface Piece {
  readonly kind: "core" | "sleeve" | "open";
  readonly path: string;
}

/** A stem from a lot to one that came of it. */
export interface PlacedStem {
  readonly parent: string;
  readonly child: string;
  /** grown through plants, or moved by hand (a split's stalk, the way to a stub) */
  readonly way: "grown" | "stalk";
  /** none: a stalk of one width, drawn along its middle */
  readonly pieces: readonly Piece[];
  readonly middle: string;
  readonly curve: Curve;
  /** in a cross it brought the pollen alone */
  readonly pollen: boolean;
  /** in pixels, for certain, at its wider end */
  readonly widest: number;
  /** steps of the tone at both ends; null: not known */
  readonly tones: readonly [number | null, number | null];
}

/** A thorn on a stem: foreign pollen came in at the grow-out that made `lot`. */
export interface Thorn {
  readonly lot: string;
  readonly path: string;
  readonly tip: { readonly x: number; readonly y: number };
  /** no rate was written */
  readonly open: boolean;
}

/** What is only told: a dotted way between two lots, or a dotted root. */
export interface ToldWay {
  readonly claim: StemClaim;
  readonly path: string;
}

/** How wide a stalk is. */
export const stalk = 2.6;
const bud = 20;

/** The stems that lead to a lot, side by side where several parents gave their part. */
export function stemsTo(
  own: PlacedLot,
  place: ReadonlyMap<string, PlacedLot>,
  widths: Widths,
  full: number,
  pixelsAYear: number,
): { stems: PlacedStem[]; curves: Curve[] } {
  const links = own.grown.links
    .flatMap((link) => {
      const from = place.get(link.parent);
      return from ? [{ ...link, from }] : [];
    })
    .sort((a, b) => a.from.y - b.from.y);
  const end = widths.get(own.grown.lot.id) ?? null;
  const nominal = full * 0.4;
  const whole = end?.high ?? nominal;
  let beside = 0;
  const curves: Curve[] = [];
  const stems = links.map(({ parent, share, pollen, from }): PlacedStem => {
    const offset = links.length > 1 ? (beside + share / 2 - 0.5) * whole : 0;
    beside += share;
    const [foot, tip] = [
      { x: from.x, y: from.y },
      { x: own.x, y: own.y + offset },
    ];
    const curve = own.grown.lot.kind === "split" ? stalkWay(foot, tip, place.values()) : curveBetween(foot, tip);
    curves.push(curve);
    const common = {
      parent,
      child: own.grown.lot.id,
      middle: middleOf(curve),
      curve,
      pollen,
      tones: [from.tone, own.tone] as const,
    };
    if (own.grown.lot.kind === "split" || own.grown.lot.kind === "failed") {
      if (own.grown.children.length === 0 || end === null)
        return { ...common, widest: stalk, way: "stalk", pieces: [] };
      const length = Math.max(bud, Math.hypot(own.x - from.x, own.y - from.y));
      const swelling = { start: stalk, end: end.low, turn: 1 - bud / length };
      return { ...common, widest: stalk, way: "stalk", pieces: [{ kind: "core", path: outlineOf(curve, swelling) }] };
    }
    const start = widths.get(parent) ?? null;
    const blended = own.grown.lot.kind === "blend";
    const turn = blended ? 0 : 1 - Math.min(0.85, Math.max(0.2, (0.8 * pixelsAYear) / Math.max(1, own.x - from.x)));
    const widest = {
      start: (start?.high ?? end?.high ?? nominal) * share,
      end: (end?.high ?? nominal) * share,
      turn,
    };
    const pieces: Piece[] = [];
    if (end === null) pieces.push({ kind: "open", path: outlineOf(curve, widest) });
    else {
      const known = start === null ? turn : 0;
      if (start === null && turn > 0) pieces.push({ kind: "open", path: outlineOf(curve, widest, 0, turn) });
      const spans = end.high > end.low || (start !== null && start.high > start.low);
      if (spans) pieces.push({ kind: "sleeve", path: outlineOf(curve, widest, known, 1) });
      const sure = { start: (start ?? end).low * share, end: end.low * share, turn };
      pieces.push({ kind: "core", path: outlineOf(curve, sure, known, 1) });
    }
    const certain = Math.max(start?.low ?? 0, end?.low ?? 0) * share;
    return { ...common, widest: certain, way: "grown", pieces };
  });
  return { stems, curves };
}

/** A thorn just before the lot, on the upper side of its first stem, longer the more came in. */
export function thornOf(grown: Grown, curve: Curve | undefined, width: number): Thorn | null {
  const foreign = grown.lot.foreign;
  if (!foreign || !curve || foreign.rate === 0) return null;
  const length = Math.hypot(curve[3].x - curve[0].x, curve[3].y - curve[0].y);
  const back = Math.min(0.5, 16 / Math.max(16, length));
  const foot = along(curve, 1 - back);
  const way = direction(curve, 1 - back);
  const up = way.x >= 0 ? { x: way.y, y: -way.x } : { x: -way.y, y: way.x };
  const long = 10 + Math.min(8, 36 * Math.sqrt(foreign.rate ?? 0));
  const edge = width / 2 - 1;
  const point = (out: number, onward: number) => ({
    x: foot.x + up.x * out + way.x * onward,
    y: foot.y + up.y * out + way.y * onward,
  });
  const [left, right, tip] = [point(edge, -4.5), point(edge, 4.5), point(edge + long, -3)];
  const path = `M${text(left)}Q${text(point(edge + long * 0.4, -1.5))} ${text(tip)}Q${text(point(edge + long * 0.4, 2))} ${text(right)}Z`;
  return { lot: grown.lot.id, path, tip, open: foreign.rate === null };
}

/** The dotted way of a claim; rival claims of one lot lie apart. Null where its lots are not in the picture. */
export function toldWay(claim: StemClaim, turn: number, place: ReadonlyMap<string, PlacedLot>): ToldWay | null {
  const own = place.get(claim.lotId);
  if (!own) return null;
  const from = claim.parentId === null ? undefined : place.get(claim.parentId);
  if (!from) {
    // A lot that is not here is shown by a root of its own: rival stories fan out, and that nothing is known goes straight on.
    const fan = claim.kind === "unknown before" ? 0 : (turn % 2 === 0 ? -1 : 1) * (9 + 8 * Math.floor(turn / 2));
    const start = { x: own.left - 36, y: own.y + fan };
    return {
      claim,
      path: `M${text(start)}Q${text({ x: own.left - 18, y: own.y + fan })} ${text({ x: own.left - 8, y: own.y })}`,
    };
  }
  const lift = (turn % 2 === 0 ? -1 : 1) * (14 + 12 * Math.floor(turn / 2));
  const level = Math.abs(from.y - own.y) < 4;
  const middle = { x: (from.x + own.x) / 2, y: (from.y + own.y) / 2 + (level ? 2 * lift : lift) };
  const path = `M${text(from)}Q${text(middle)} ${text(own)}`;
  return { claim, path };
}

function text({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;
}
