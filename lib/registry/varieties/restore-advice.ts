import type { MixGround } from "@/lib/science/blend/ground-of-mix";
import { leastMixWithin } from "@/lib/science/blend/least-mix-within";
import { type MixFigures, mixFigures } from "@/lib/science/blend/mix-figures";
import type { LotToRestoreWith, RestoreGround } from "./read-restore";

/** A lot that goes in: its share of the living seeds, how many of them, and what they weigh. */
export interface PartOfAdvice {
  readonly lot: LotToRestoreWith;
  readonly share: number;
  readonly seeds: number;
  readonly grams: number | null;
}

/** Why no mix is better than what is there. */
export type NothingHelps =
  | "no lot can be used"
  | "one lot can be used"
  | "all are one pool"
  | "nothing is added"
  | "no lineage";

export interface RestoreAdvice {
  /** the lots among which it was chosen */
  readonly among: readonly LotToRestoreWith[];
  /** Θ among them, in their order: by the native genes where some are foreign; null where no lineage can be followed */
  readonly near: readonly (readonly number[])[] | null;
  readonly parts: readonly PartOfAdvice[];
  /** of the mix; null where none can be told */
  readonly figures: MixFigures | null;
  /** the lot that keeps most by itself, of those among which it was chosen */
  readonly best: { readonly lot: LotToRestoreWith; readonly kept: number } | null;
  /** what the mix keeps, by the native genes where there are foreign ones */
  readonly kept: number | null;
  /** living seeds that it was reckoned for, and the most that all can give together */
  readonly seeds: number;
  readonly mostSeeds: number;
  readonly nothing: NothingHelps | null;
}

/** Less than this is no gain: a twentieth of a point. */
const NO_GAIN = 0.0005;

/** What of that which stands against lots does not count. */
export interface Overruled {
  /** lots of which a reason overrules it */
  readonly lots: ReadonlySet<string>;
  /** foreign pollen, of all of them: they are then compared by their native genes alone */
  readonly foreign: boolean;
}

/** The lots against which nothing stands, and those whose objections are overruled. */
export function usable(lots: readonly LotToRestoreWith[], overruled: Overruled): LotToRestoreWith[] {
  return lots.filter(({ id, against }) =>
    against.every(
      ({ code, overridable }) =>
        (code === "foreign-pollen" && overruled.foreign) || (overridable && overruled.lots.has(id)),
    ),
  );
}

/** The lots that nothing but foreign pollen keeps out. */
export function keptOutByForeignAlone(lots: readonly LotToRestoreWith[]): LotToRestoreWith[] {
  return lots.filter(({ against }) => against.length > 0 && against.every(({ code }) => code === "foreign-pollen"));
}

/**
 * The mix of lots that keeps most for so many living seeds, of no jar more than its holder can part with. Where a lot with foreign genes is
 * among them native kinship decides, for foreign genes make kin look strange. `overruled` is what goes in against what stands there.
 */
export function restoreAdvice({ lots, ground }: RestoreGround, wanted: number, overruled: Overruled): RestoreAdvice {
  const among = usable(lots, overruled).filter(({ canGive, living }) => (canGive ?? living ?? 0) > 0);
  const mostSeeds = among.reduce((sum, { canGive }) => sum + (canGive ?? 0), 0);
  const seeds = Math.max(1, Math.min(Math.round(wanted), mostSeeds));
  const places = among.map((lot) => lots.indexOf(lot));
  const foreign = among.some((lot) => lot.foreign);
  const gram = ground && gramOf(ground, places, foreign);
  const none = { among, near: gram, parts: [], figures: null, best: null, kept: null, seeds, mostSeeds };
  if (ground === null || gram === null) return { ...none, nothing: "no lineage" };
  if (among.length === 0) return { ...none, nothing: "no lot can be used" };
  const kept = (shares: readonly number[]) => keptOf(mixFigures(ground, shares), foreign);
  const best = among.reduce<RestoreAdvice["best"]>((found, lot, i) => {
    const own = kept(lots.map((_, k) => (k === places[i] ? 1 : 0)));
    return own !== null && (found === null || own > found.kept) ? { lot, kept: own } : found;
  }, null);
  if (among.length === 1) return { ...none, best, kept: best?.kept ?? null, nothing: "one lot can be used" };
  const mix = leastMixWithin(
    gram,
    among.map(({ canGive }) => (canGive ?? 0) / seeds),
  );
  if (mix === null || best === null) return { ...none, best, nothing: "no lot can be used" };
  const shares = new Map(among.map((lot, i) => [lot.id, mix[i] ?? 0]));
  const figures = mixFigures(
    ground,
    lots.map(({ id }) => shares.get(id) ?? 0),
  );
  const parts = among.flatMap((lot): PartOfAdvice[] => {
    const share = shares.get(lot.id) ?? 0;
    if (share * seeds < 0.5) return [];
    const living = Math.round(share * seeds);
    return [{ lot, share, seeds: living, grams: lot.livingPerGram ? living / lot.livingPerGram : null }];
  });
  const gain = (keptOf(figures, foreign) ?? 0) - best.kept;
  // A lot that keeps most but cannot give so much seed is no answer by itself.
  const helps = gain >= NO_GAIN || (best.lot.canGive ?? 0) < seeds;
  const nothing =
    helps && parts.length > 1 && !onePool(gram) ? null : onePool(gram) ? "all are one pool" : "nothing is added";
  return { ...none, parts, figures, best, kept: keptOf(figures, foreign), nothing };
}

/** By the kinship that decides: 1 − θ, its founders at the cautious end; 1 − t/k where foreign genes are among them. */
function keptOf(figures: MixFigures | null, foreign: boolean): number | null {
  return (foreign ? figures?.nativeDiversityRetained : figures?.diversityRetained) ?? null;
}

/** Θ among some of the lots; t/k where foreign genes are among them. */
function gramOf({ coancestry, natives, lots }: MixGround, places: readonly number[], foreign: boolean): number[][] {
  return places.map((a) =>
    places.map((b) => {
      if (!foreign || natives === null) return coancestry[a]?.[b] ?? 0;
      const both = (lots[a]?.native ?? 1) * (lots[b]?.native ?? 1) + (natives.excess[a]?.[b] ?? 0);
      return both <= 0 ? 1 : (natives.identical[a]?.[b] ?? 0) / both;
    }),
  );
}

/** Every lot is to every other what it is to itself: splits of one pool. */
function onePool(gram: readonly (readonly number[])[]): boolean {
  const first = gram[0]?.[0] ?? 0;
  return gram.every((row) => row.every((theta) => Math.abs(theta - first) < 1e-12));
}
