import storageLife from "@/lib/science/seed-life/storage-life.json";
import rowOfCrop from "@/lib/science/seed-life/storage-life-of-crop.json";

/** How long seed of a crop is usually good on a cool, dry shelf: years, a range. */
export interface UsualLife {
  readonly low: number;
  readonly high: number;
  /** author, year, where */
  readonly source: string;
  /** whether the figure was read in its source */
  readonly verified: boolean;
}

export interface UsualLifeInput {
  /** the crop's key in the crop list, as `bean-common` */
  readonly cropKey?: string | null;
  /** what the crop is called, where it has no key in the list */
  readonly commonName?: string | null;
  /** the seed life of the crop's own profile, for a crop that the table does not have; source as the profile gives it */
  readonly profile?: { readonly low: number | null; readonly high: number | null; readonly source?: string | null };
}

/**
 * The usual seed life of a crop: from the table of storage lives where that has the crop, else from the crop's profile,
 * else null (not known, which is not zero).
 *
 * These are ages at which seed is likely still fine, not half-lives, and lists differ: a range, never a date. Test it.
 * Source: university extension lists of 2009 to 2018 and an early manual, as named in the table; the profile's own otherwise.
 */
export function usualLife({ cropKey, commonName, profile }: UsualLifeInput): UsualLife | null {
  const named = cropKey ? (rowOfCrop as Readonly<Record<string, string>>)[cropKey] : undefined;
  const sought = folded(named ?? commonName ?? "");
  const row = storageLife.rows.find(({ crop }) => folded(crop) === sought);
  if (row) return { low: row.low, high: row.high, source: storageLife.source, verified: storageLife.verified };
  if (!profile) return null;
  const low = profile.low ?? profile.high;
  const high = profile.high ?? profile.low;
  if (low === null || high === null) return null;
  return { low, high, source: profile.source ?? "the crop's profile", verified: false };
}

function folded(name: string): string {
  return name.normalize("NFC").trim().toLowerCase();
}
