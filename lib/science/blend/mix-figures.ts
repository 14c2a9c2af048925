import type { MixGround } from "./ground-of-mix";
import { mixed } from "./least-mix";

/** What a mix of lots comes to, before a seed of it is moved. Probabilities and shares 0 to 1. */
export interface MixFigures {
  /** θ */
  readonly coancestry: number;
  /** 1 − θ */
  readonly diversityRetained: number;
  /** 1 − t/k; null where nothing native is left to compare */
  readonly nativeDiversityRetained: number | null;
  /** F */
  readonly inbreeding: number;
  /** share of the genes from foreign pollen */
  readonly foreignAncestry: number;
  /** grow-outs along the shortest and the longest line of the lots that go in */
  readonly shortestLine: number;
  readonly longestLine: number;
  /** part of the genes by founder, the greatest first */
  readonly founders: readonly { readonly id: string; readonly part: number }[];
}

/**
 * The figures of a blend from those of its parts and their coancestries, by shares w of the living seeds (scaled to sum 1).
 *
 *     θ = ΣΣ w w' Θ,  F = Σ w F,  n = Σ w n,  founder parts Σ w g;  native: 1 − ΣΣ w w' t / (n² + ΣΣ w w' e)
 *
 * The same as `lineage` gives for a blend lot. No self term: two seeds of a blend are distinct seeds. Null for shares that are all 0.
 * Source: group coancestry, Cockerham 1967, Genetics 56:89-104.
 */
export function mixFigures(ground: MixGround, shares: readonly number[]): MixFigures | null {
  const all = shares.reduce((sum, share) => sum + share, 0);
  if (!(all > 0)) return null;
  const w = shares.map((share) => share / all);
  const mean = (of: (lot: MixGround["lots"][number]) => number) =>
    ground.lots.reduce((sum, lot, i) => sum + (w[i] as number) * of(lot), 0);
  const inside = ground.lots.filter((_, i) => (w[i] as number) > 0);
  const theta = mixed(ground.coancestry, w);
  const native = mean((lot) => lot.native);
  return {
    coancestry: theta,
    diversityRetained: 1 - theta,
    nativeDiversityRetained: ground.natives ? nativeKept(ground.natives, native, w) : 1 - theta,
    inbreeding: mean((lot) => lot.inbreeding),
    foreignAncestry: ground.natives ? 1 - native : 0,
    shortestLine: Math.min(...inside.map((lot) => lot.shortestLine)),
    longestLine: Math.max(...inside.map((lot) => lot.longestLine)),
    founders: founderParts(ground, w),
  };
}

function nativeKept({ identical, excess }: NonNullable<MixGround["natives"]>, native: number, w: readonly number[]) {
  const bothNative = native ** 2 + mixed(excess, w);
  return bothNative <= 0 ? null : 1 - mixed(identical, w) / bothNative;
}

function founderParts({ lots }: MixGround, w: readonly number[]) {
  const parts = new Map<string, number>();
  lots.forEach(({ founders }, i) => {
    for (const [id, part] of Object.entries(founders)) parts.set(id, (parts.get(id) ?? 0) + (w[i] as number) * part);
  });
  return [...parts]
    .filter(([, part]) => part > 0)
    .map(([id, part]) => ({ id, part }))
    .sort((a, b) => b.part - a.part);
}
