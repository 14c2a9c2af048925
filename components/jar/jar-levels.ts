import type { Grade } from "@/components/doubt/grade";

/** An amount of seeds with its span and how it is known; null where nothing bounds it. */
export interface Amount {
  readonly value: number | null;
  readonly low?: number | null;
  readonly high?: number | null;
  readonly grade: Grade;
}

/** What the jar shows. Seeds throughout, but for the weight; null is unknown. */
export interface JarContents {
  readonly grams: number | null;
  readonly seeds: Amount | null;
  readonly alive: Amount | null;
  readonly reserved: number | null;
  readonly free: Amount | null;
}

/** Heights on the drawing, in its own units, measured from its top. */
export interface JarLevels {
  readonly onHand: number | null;
  readonly alive: number | null;
  /** full width up to here, drawn to a point from here ... */
  readonly aliveLow: number | null;
  /** ... to here */
  readonly aliveHigh: number | null;
  readonly reserved: number | null;
  /** more is to be kept back than is alive */
  readonly short: boolean;
}

/**
 * Where each level stands between `bottom` (nothing) and `top` (all the glass holds). The glass is a ninth larger than the
 * largest amount to be shown. With a weight alone, the fill stands at six tenths and nothing else is drawn.
 */
export function jarLevels(contents: JarContents, top: number, bottom: number): JarLevels {
  const { grams, seeds, alive, reserved } = contents;
  const onHand = middle(seeds);
  const living = middle(alive);
  const most = Math.max(onHand ?? 0, seeds?.high ?? 0, alive?.high ?? 0, living ?? 0, reserved ?? 0);
  if (most <= 0) {
    const full = grams !== null && grams > 0 ? bottom - (bottom - top) * 0.6 : null;
    const empty = onHand === 0 || grams === 0 ? bottom : null;
    return { onHand: full ?? empty, alive: null, aliveLow: null, aliveHigh: null, reserved: null, short: false };
  }
  const height = (amount: number) => bottom - ((bottom - top) * amount * 9) / (most * 10);
  const level = (amount: number | null | undefined) =>
    amount === null || amount === undefined ? null : height(amount);
  return {
    onHand: level(onHand),
    alive: level(living),
    aliveLow: level(alive?.low ?? living),
    aliveHigh: level(alive?.high ?? living),
    reserved: level(reserved),
    short: reserved !== null && living !== null && reserved > living,
  };
}

function middle(amount: Amount | null): number | null {
  if (amount === null) return null;
  if (amount.value !== null) return amount.value;
  if (amount.low === null || amount.low === undefined || amount.high === null || amount.high === undefined) return null;
  return (amount.low + amount.high) / 2;
}

/** Moves labels apart: at least `gap` between one and the next, as near to where they belong as that allows, above `last`. */
export function partLabels(wanted: readonly number[], gap: number, last: number): number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const places = [...wanted];
  let before = Number.NEGATIVE_INFINITY;
  for (const index of order) {
    places[index] = Math.max(wanted[index] ?? 0, before + gap);
    before = places[index] ?? 0;
  }
  let after = last;
  for (const index of order.toReversed()) {
    places[index] = Math.min(places[index] ?? 0, after);
    after = (places[index] ?? 0) - gap;
  }
  return places;
}
