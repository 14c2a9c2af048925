import type { CoatPattern } from "./coat";
import { numberStream } from "./number-stream";

/** A drawn piece of a pattern on the field of 48: a filled path, or a line of a `width`. */
export interface Piece {
  readonly path: string;
  readonly width?: number;
}

const middle = 24;

/**
 * The pieces of a pattern, fixed by `start`. `coarse` draws fewer and larger ones for small sizes. `scar` is where an eye
 * lies. Stripes, the two tones and the marbling run along the seed before it is turned to its lie.
 */
export function scatter(
  pattern: CoatPattern,
  start: number,
  coarse: boolean,
  scar: readonly [number, number],
): readonly Piece[] {
  const next = numberStream(start);
  if (pattern === "speckle") return specks(next, coarse ? 16 : 42, coarse ? 1.9 : 0.75, coarse ? 2.9 : 1.75);
  if (pattern === "splash") return specks(next, coarse ? 4 : 6, 4.5, 8.5);
  if (pattern === "stripe") return stripes(next, coarse ? 3 : 5, coarse ? 4.6 : 2.8);
  if (pattern === "marbled") return stripes(next, coarse ? 4 : 7, coarse ? 3.2 : 2, 5);
  if (pattern === "two tones") return [{ path: half(next) }];
  if (pattern === "eye") return [{ path: blot(next, scar[0], scar[1], 12.5) }];
  return [];
}

function specks(next: () => number, many: number, small: number, large: number): Piece[] {
  // turned by the golden angle from one to the next, so that they lie evenly and yet not in rows
  return Array.from({ length: many }, (_, index) => {
    const turn = index * 2.399963 + next() * 0.7;
    const away = 21 * Math.sqrt((index + 0.35 + next() * 0.5) / many);
    const size = small + (large - small) * next() ** 1.6;
    return { path: blot(next, middle + away * Math.cos(turn), middle + away * Math.sin(turn), size) };
  });
}

/** A spot that is not quite round. */
function blot(next: () => number, x: number, y: number, size: number): string {
  const corners = Array.from({ length: 6 }, (_, index) => {
    const turn = (index / 6) * 2 * Math.PI;
    const away = size * (0.82 + next() * 0.36);
    return [x + away * Math.cos(turn), y + away * Math.sin(turn) * 0.88] as const;
  });
  const between = corners.map((corner, index) => {
    const other = corners[(index + 1) % corners.length] as readonly [number, number];
    return [(corner[0] + other[0]) / 2, (corner[1] + other[1]) / 2] as const;
  });
  const last = between[between.length - 1] as readonly [number, number];
  const curves = corners.map((corner, index) => {
    const end = between[index] as readonly [number, number];
    return `Q${place(corner)} ${place(end)}`;
  });
  return `M${place(last)}${curves.join("")}Z`;
}

function stripes(next: () => number, many: number, width: number, wander = 1.6): Piece[] {
  return Array.from({ length: many }, (_, index) => {
    const y = 48 * ((index + 0.5) / many) + (next() - 0.5) * 2;
    const bends = [0, 12, 24, 36, 48].map((x) => [x, y + (next() - 0.5) * 2 * wander] as const);
    const [first, ...rest] = bends as [readonly [number, number], ...(readonly [number, number])[]];
    const path = rest.map((to, at) => {
      const from = bends[at] as readonly [number, number];
      return `C${place([from[0] + 5, from[1]])} ${place([to[0] - 5, to[1]])} ${place(to)}`;
    });
    return { path: `M${place(first)}${path.join("")}`, width: width * (0.75 + next() * 0.5) };
  });
}

function half(next: () => number): string {
  const level = 25 + (next() - 0.5) * 6;
  const up = (next() - 0.5) * 10;
  return `M-4 ${round(level)}C10 ${round(level - 5 + up)} 20 ${round(level + 5 + up)} 30 ${round(level)}S46 ${round(level - 4)} 52 ${round(level + 2)}V60H-4Z`;
}

function place(at: readonly [number, number]): string {
  return `${round(at[0])} ${round(at[1])}`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
