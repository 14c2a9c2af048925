import { kindOfCrop } from "@/lib/science/germination/kind-of-crop";
import minima from "@/lib/science/germination/vegetable-minima.json";
import { type OwnInTable, type OwnOfRow, ownAmong, withOwn } from "@/lib/science/tables/own-in-table";

/** A line for vegetable seed in trade; for seed shared outside trade it is orientation only. */
export interface VegetableMinimum {
  readonly kind: string;
  /** share from 0 to 1, to be held against normal seedlings and hard seed together */
  readonly minimum: number;
  readonly source: string;
  readonly verified: boolean;
  /** the steward's own values among them */
  readonly own: readonly OwnOfRow[];
}

/**
 * The minimum for a crop of the crop list, or null. A steward's own value stands in its place where `own` has one.
 * Source: 7 CFR 201.31, edition of 2015.
 */
export function vegetableMinimum(cropKey: string, own: readonly OwnInTable[] = []): VegetableMinimum | null {
  const kind = kindOfCrop(cropKey);
  const row = minima.rows.find((each) => each.kind === kind);
  if (!row) return null;
  const { minimumPercent } = row;
  const instead = ownAmong(own, "vegetable-minima", row.kind, { minimumPercent });
  return {
    kind: row.kind,
    minimum: withOwn({ minimumPercent }, instead).minimumPercent / 100,
    source: minima.source,
    verified: minima.verified,
    own: instead,
  };
}
