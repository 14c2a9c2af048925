import { kindOfCrop } from "@/lib/science/germination/kind-of-crop";
import table from "@/lib/science/seed-weight/seeds-per-gram.json";

/** How many seeds of a kind usually go to a gram; a lot's own weight always goes first. */
export interface UsualSeedsPerGram {
  readonly kind: string;
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly verified: boolean;
}

/** Seeds per gram of a crop of the crop list, or null where the source has none. Source: 7 CFR 201.46, table 1, edition of 2015. */
export function usualSeedsPerGram(cropKey: string): UsualSeedsPerGram | null {
  const kind = kindOfCrop(cropKey);
  const row = table.rows.find((each) => each.kind === kind);
  if (!row || row.low === null || row.high === null) return null;
  return { kind: row.kind, low: row.low, high: row.high, source: table.source, verified: table.verified };
}
