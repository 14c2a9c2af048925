import { panelPoints } from "./gauss-legendre";

const deepest = 40;

/**
 * ∫ f over from..to by halving until twelve points of Gauss–Legendre over a panel and over its two halves agree within
 * `relative` of the whole so far or `absolute`. `cuts` are places where f turns sharply: no panel lies across one.
 * Not finite where f is not finite somewhere: halving would find no end.
 */
export function adaptiveIntegral(
  f: (x: number) => number,
  from: number,
  to: number,
  cuts: readonly number[] = [],
  { relative = 1e-10, absolute = 1e-15 } = {},
): number {
  const inside = cuts.filter((cut) => cut > from && cut < to).sort((a, b) => a - b);
  const bounds = [from, ...inside, to];
  const panels = bounds.slice(1).map((end, index) => [bounds[index] as number, end] as const);
  const rough = panels.map(([start, end]) => overPanel(f, start, end));
  const scale = rough.reduce((sum, value) => sum + Math.abs(value), 0);
  const allowed = Math.max(absolute, relative * scale) / Math.max(1, panels.length);
  return panels.reduce(
    (sum, [start, end], index) => sum + halved(f, start, end, rough[index] as number, allowed, 0),
    0,
  );
}

function halved(
  f: (x: number) => number,
  from: number,
  to: number,
  whole: number,
  allowed: number,
  depth: number,
): number {
  const middle = (from + to) / 2;
  const left = overPanel(f, from, middle);
  const right = overPanel(f, middle, to);
  if (depth >= deepest || !Number.isFinite(left + right) || Math.abs(left + right - whole) <= allowed)
    return left + right;
  return halved(f, from, middle, left, allowed / 2, depth + 1) + halved(f, middle, to, right, allowed / 2, depth + 1);
}

function overPanel(f: (x: number) => number, from: number, to: number): number {
  return panelPoints(from, to, 1).reduce((sum, { x, weight }) => sum + weight * f(x), 0);
}
