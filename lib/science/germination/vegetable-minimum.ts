import { kindOfCrop } from "@/lib/science/germination/kind-of-crop";
import minima from "@/lib/science/germination/vegetable-minima.json";

/** A line for vegetable seed in trade; for seed shared outside trade it is orientation only. */
export interface VegetableMinimum {
  readonly kind: string;
  /** share from 0 to 1, to be held against normal seedlings and hard seed together */
  readonly minimum: number;
  readonly source: string;
  readonly verified: boolean;
}

/** The minimum for a crop of the crop list, or null. Source: 7 CFR 201.31, edition of 2015. */
export function vegetableMinimum(cropKey: string): VegetableMinimum | null {
  const kind = kindOfCrop(cropKey);
  const row = minima.rows.find((each) => each.kind === kind);
  if (!row) return null;
  return { kind: row.kind, minimum: row.minimumPercent / 100, source: minima.source, verified: minima.verified };
}
