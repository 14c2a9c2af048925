export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A cubic curve by its four points. */
export type Curve = readonly [Point, Point, Point, Point];

/**
 * The way of a stem from one point to another: level at both ends where there is room; where it must fall far in a short time it leaves its
 * parent sideways, like a shoot, and comes in level.
 */
export function curveBetween(from: Point, to: Point): Curve {
  const across = to.x - from.x;
  const down = to.y - from.y;
  if (Math.abs(down) < 0.5) {
    const end = { x: to.x, y: from.y };
    return [from, between(from, end, 1 / 3), between(from, end, 2 / 3), end];
  }
  const slope = Math.max(0, across) / Math.abs(down);
  const level = Math.min(1, slope / 0.9);
  const bend = Math.max(0, across) * 0.55;
  return [
    from,
    { x: from.x + bend * level, y: from.y + down * 0.55 * (1 - level) },
    { x: to.x - Math.max(bend, Math.min(14, Math.abs(down) / 2)), y: to.y },
    to,
  ];
}

function between(from: Point, to: Point, at: number): Point {
  return { x: from.x + (to.x - from.x) * at, y: from.y + (to.y - from.y) * at };
}

export function along([a, b, c, d]: Curve, at: number): Point {
  const rest = 1 - at;
  const [p, q, r, s] = [rest ** 3, 3 * rest ** 2 * at, 3 * rest * at ** 2, at ** 3];
  return { x: p * a.x + q * b.x + r * c.x + s * d.x, y: p * a.y + q * b.y + r * c.y + s * d.y };
}

/** The way on at a place of a curve, of length 1. */
export function direction([a, b, c, d]: Curve, at: number): Point {
  const rest = 1 - at;
  const [p, q, r] = [rest ** 2, 2 * rest * at, at ** 2];
  const x = p * (b.x - a.x) + q * (c.x - b.x) + r * (d.x - c.x);
  const y = p * (b.y - a.y) + q * (c.y - b.y) + r * (d.y - c.y);
  const length = Math.sqrt(x * x + y * y);
  return length < 1e-9 ? { x: 1, y: 0 } : { x: x / length, y: y / length };
}

/** The line along the middle. */
export function middleOf([a, b, c, d]: Curve): string {
  if (a.y === d.y) return `M${coordinates(a.x, a.y)}H${tenth(d.x)}`;
  return `M${coordinates(a.x, a.y)}C${coordinates(b.x, b.y)} ${coordinates(c.x, c.y)} ${coordinates(d.x, d.y)}`;
}

/** How wide a stem is on its way: `start` until `turn`, then changing to `end`, gently. */
export interface Swelling {
  readonly start: number;
  readonly end: number;
  readonly turn: number;
}

export function widthAt({ start, end, turn }: Swelling, at: number): number {
  if (at <= turn) return start;
  if (at >= 1) return end;
  const share = (at - turn) / (1 - turn);
  return start + (end - start) * share * share * (3 - 2 * share);
}

const pieces = 18;

/** The outline of a stem along a part of a curve, its width measured across the stem. */
export function outlineOf(curve: Curve, swelling: Swelling, from = 0, to = 1): string {
  const straight = curve[0].y === curve[3].y;
  let upper = "";
  let lower = "";
  for (const place of straight ? placesOf(swelling, from, to) : even(from, to)) {
    const half = widthAt(swelling, place) / 2;
    const point = along(curve, place);
    const way = straight ? level : direction(curve, place);
    upper += `${upper === "" ? "M" : "L"}${coordinates(point.x + way.y * half, point.y - way.x * half)}`;
    lower = `L${coordinates(point.x - way.y * half, point.y + way.x * half)}${lower}`;
  }
  return `${upper}${lower}Z`;
}

const level: Point = { x: 1, y: 0 };

/** On a level stem only the part that swells needs more than its ends. */
function placesOf({ start, end, turn }: Swelling, from: number, to: number): readonly number[] {
  if (start === end || turn >= to) return [from, to];
  const places = [from];
  const begin = Math.max(from, turn);
  for (let piece = begin > from ? 0 : 1; piece <= 8; piece += 1) places.push(begin + ((to - begin) * piece) / 8);
  return places;
}

function even(from: number, to: number): readonly number[] {
  const places: number[] = [];
  for (let piece = 0; piece <= pieces; piece += 1) places.push(from + ((to - from) * piece) / pieces);
  return places;
}

function coordinates(x: number, y: number): string {
  return `${tenth(x)} ${tenth(y)}`;
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
