import type { ReplicateCounts } from "@/lib/science/germination/test-counts";
import tolerated from "@/lib/science/germination/tolerated-ranges.json";

/** What the published table says of the replicates of an official-sized test. */
export interface PublishedTolerance {
  readonly plan: "4 × 100" | "2 × 100";
  /** percent, as the replicates give it */
  readonly averagePercent: number;
  /** percent, whole, as the table is entered */
  readonly roundedPercent: number;
  /** highest less lowest, percent points */
  readonly rangePercent: number;
  /** percent points; null where the table has no value */
  readonly toleratedPercent: number | null;
  /** the range exceeds the tolerated one: test again; null where the table has no value */
  readonly exceeded: boolean | null;
  readonly source: string;
  readonly verified: boolean;
}

/**
 * The published maximum range of replicates of 100 seeds: shipped as printed, for the formula behind it differs in 13 of 49 rows.
 *
 * Takes the replicates of one test; null unless they are four or two of 100 seeds each. The mean is rounded to a whole percent
 * first; "exceeds" means more than, never the same. None or all germinated, or a blank in the table: no value.
 * Example: 98, 85, 92, 90: mean 91, tolerated 11, range 13: exceeded. Source: 7 CFR 201.55, edition of 2015.
 */
export function publishedTolerance(replicates: readonly ReplicateCounts[]): PublishedTolerance | null {
  if (replicates.some(({ sown }) => sown !== 100)) return null;
  const four = replicates.length === 4;
  if (!four && replicates.length !== 2) return null;
  const normals = replicates.map(({ normal }) => normal);
  const averagePercent = normals.reduce((sum, normal) => sum + normal, 0) / normals.length;
  const roundedPercent = Math.floor(averagePercent + 0.5);
  const rangePercent = Math.max(...normals) - Math.min(...normals);
  const row = tolerated.rows.find(
    ({ averageHigh, averageLow }) => averageHigh === roundedPercent || averageLow === roundedPercent,
  );
  const toleratedPercent = (four ? row?.fourReplicates : row?.twoReplicates) ?? null;
  return {
    plan: four ? "4 × 100" : "2 × 100",
    averagePercent,
    roundedPercent,
    rangePercent,
    toleratedPercent,
    exceeded: toleratedPercent === null ? null : rangePercent > toleratedPercent,
    source: tolerated.source,
    verified: tolerated.verified,
  };
}
