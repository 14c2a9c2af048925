import type { SeasonGrowOut, SeasonLot } from "../season/records";

/** A steward who kept a variety, and from what their years are known: lots in their hand and grow-outs that they sowed. */
export interface KeeperThroughYears {
  readonly stewardId: string;
  /** first and last year that anything of theirs tells of; null: no date is on record */
  readonly from: number | null;
  readonly to: number | null;
  readonly lots: number;
  readonly growOuts: number;
  /** there is seed in their hand now, as far as the ledgers tell */
  readonly hasSeed: boolean;
}

/**
 * Who kept a variety when, the earliest first, those of whom no year is known last. The years are those of harvest of their lots (of a date told as a
 * span its first and last year) and of sowing of their grow-outs: a keeper may have had seed before and after.
 */
export function keepersThroughYears(
  lots: readonly Pick<SeasonLot, "holderId" | "yearFirst" | "yearLast" | "gramsOnHand">[],
  growOuts: readonly Pick<SeasonGrowOut, "stewardId" | "sownFirst" | "sownLast">[],
): KeeperThroughYears[] {
  const keepers = new Map<string, KeeperThroughYears>();
  const note = (stewardId: string | null, days: readonly (string | null)[], more: Partial<KeeperThroughYears>) => {
    if (stewardId === null) return;
    const before = keepers.get(stewardId) ?? { stewardId, from: null, to: null, lots: 0, growOuts: 0, hasSeed: false };
    const years = [before.from, before.to, ...days.map((day) => (day === null ? null : Number(day.slice(0, 4))))];
    const known = years.filter((year): year is number => year !== null);
    keepers.set(stewardId, {
      stewardId,
      from: known.length > 0 ? Math.min(...known) : null,
      to: known.length > 0 ? Math.max(...known) : null,
      lots: before.lots + (more.lots ?? 0),
      growOuts: before.growOuts + (more.growOuts ?? 0),
      hasSeed: before.hasSeed || (more.hasSeed ?? false),
    });
  };
  for (const { holderId, yearFirst, yearLast, gramsOnHand } of lots)
    note(holderId, [yearFirst, yearLast], { lots: 1, hasSeed: (gramsOnHand ?? 0) > 0 });
  for (const { stewardId, sownFirst, sownLast } of growOuts) note(stewardId, [sownFirst, sownLast], { growOuts: 1 });
  const when = ({ from }: KeeperThroughYears) => from ?? Number.POSITIVE_INFINITY;
  return [...keepers.values()].sort((left, right) =>
    when(left) < when(right) ? -1 : when(left) > when(right) ? 1 : 0,
  );
}
