import type { BlendCandidate, BlendGround } from "@/lib/registry/lots/read-blend-ground";
import { type LineageStanding, lineageStanding } from "@/lib/registry/varieties/lineage-standing";
import { adviseMix } from "@/lib/science/blend/advise-mix";
import { type MixFigures, mixFigures } from "@/lib/science/blend/mix-figures";
import type { Outcome } from "@/lib/science/outcome";

/** What is kept of the diversity: the variety's own where foreign pollen came in, since that makes plain diversity rise. */
export interface Kept {
  readonly figures: MixFigures;
  /** 0 to 1; null where nothing native is left to compare */
  readonly share: number | null;
  readonly native: boolean;
}

/**
 * Lines, founders and what foreign pollen brought, by lot and share; the rest of the figures stands for nothing where the plants of an
 * ancestor are not known. Null where not even the shares up a line are, or no share stands.
 */
export function descentOfMix(
  { lots, ground }: BlendGround,
  shareOf: (lot: BlendCandidate) => number,
): MixFigures | null {
  const shares = lots.map(shareOf);
  if (ground === null || lots.some((lot, i) => (shares[i] ?? 0) > 0 && lot.foreignAncestry === null)) return null;
  return mixFigures(ground, shares);
}

/** The figures of a mix by lot and share. Null where the lineage of a lot is not known, or no share stands. */
export function keptOfMix(ground: BlendGround, shareOf: (lot: BlendCandidate) => number, native: boolean): Kept | null {
  if (ground.lots.some((lot) => shareOf(lot) > 0 && !lot.lineageKnown)) return null;
  const figures = descentOfMix(ground, shareOf);
  if (figures === null) return null;
  return { figures, native, share: native ? figures.nativeDiversityRetained : figures.diversityRetained };
}

/** Whether foreign pollen came into one of the lots. */
export function isForeign(lot: BlendCandidate): boolean {
  return (lot.foreignAncestry ?? 0) > 1e-9;
}

/** The one of some lots that keeps most by itself, by the same measure; of equals the first. Null where of none it is known. */
export function bestSingle(ground: BlendGround, lots: readonly BlendCandidate[], native: boolean) {
  return lots.reduce<{ readonly lot: BlendCandidate; readonly kept: Kept } | null>((best, lot) => {
    const kept = keptOfMix(ground, (each) => (each.id === lot.id ? 1 : 0), native);
    if (kept === null || kept.share === null) return best;
    return best === null || kept.share > (best.kept.share ?? 0) ? { lot, kept } : best;
  }, null);
}

/** How far the lineage of a mix can be put in a figure. */
export function standingOfMix(
  { founderLines }: Pick<BlendGround, "founderLines">,
  lots: readonly BlendCandidate[],
  matingSystem: string | null,
): LineageStanding {
  const founders = [...new Set(lots.flatMap((lot) => lot.founders))];
  const known = lots.every((lot) => lot.lineageKnown);
  return lineageStanding(
    { lineageFigures: true, diversityRetained: known ? 1 : null, founders },
    matingSystem,
    founderLines,
  );
}

/**
 * Lots that can be advised: nothing stands against them, their amount, seed weight and lineage are known and something of them lives.
 * Those with foreign pollen only where they are asked for.
 */
export function advisable(lots: readonly BlendCandidate[], foreignToo: boolean): BlendCandidate[] {
  return lots.filter(
    (lot) =>
      lot.objections.length === 0 &&
      lot.lineageKnown &&
      lot.thousandSeedGrams !== null &&
      (lot.grams ?? 0) > 0 &&
      (lot.test?.germination ?? 0) > 0 &&
      (foreignToo || !isForeign(lot)),
  );
}

/** Choices that are looked through while somebody waits at the screen. */
const workAtScreen = 2_000_000;

/** The mix of some lots that keeps most. */
export function adviceFor(
  { lots, ground }: BlendGround,
  among: readonly BlendCandidate[],
  minShare: number,
): Outcome<{ readonly lot: BlendCandidate; readonly share: number }[]> | null {
  if (ground === null || among.length < 2) return null;
  const places = among.map((lot) => lots.indexOf(lot));
  const gram = places.map((i) => places.map((j) => ground.coancestry[i]?.[j] ?? 0));
  const advice = adviseMix(
    among.map((lot) => lot.id),
    gram,
    minShare,
    workAtScreen,
  );
  if (!advice.ok) return advice;
  const shares = new Map(advice.value.shares.map(({ id, share }) => [id, share]));
  return {
    ok: true,
    value: among.flatMap((lot) => (shares.has(lot.id) ? [{ lot, share: shares.get(lot.id) ?? 0 }] : [])),
  };
}
