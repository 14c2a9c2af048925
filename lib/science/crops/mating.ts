/** What the numbers need of a crop's mating system. */
export interface Mating {
  readonly matingSystem: string | null;
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
}

/** Males and females are different plants (dioecious). */
export function separateSexes(profile: Pick<Mating, "matingSystem">): boolean {
  return profile.matingSystem === "dioecious";
}

/** A plant's own pollen sets no seed on it. "partial" is not counted as incompatible. */
export function selfIncompatible(profile: Mating): boolean {
  return !separateSexes(profile) && (profile.selfIncompatible ?? "").startsWith("yes");
}

/** Kept by division, not by seed: no lineage figures. */
export function clonal(profile: Mating): boolean {
  return profile.matingSystem === "clonal";
}

/**
 * The rate of self-fertilisation to assume where nobody recorded one: s = 1 − (outcrossing min + max)/200 for a selfing or mixed crop,
 * 0 for any other, for separate sexes and for self-incompatible crops. Unitless, 0..1.
 */
export function defaultSelfingRate(profile: Mating): number {
  if (separateSexes(profile) || selfIncompatible(profile)) return 0;
  if (profile.matingSystem !== "selfing" && profile.matingSystem !== "mixed") return 0;
  if (profile.outcrossingPctMin === null || profile.outcrossingPctMax === null) return 0;
  return 1 - (profile.outcrossingPctMin + profile.outcrossingPctMax) / 200;
}

/** Between which two rates of self-fertilisation a crop usually lies: 1 − outcrossing/100 at both ends; 0 where defaultSelfingRate is 0. */
export function selfingRateEnds(profile: Mating): { low: number; high: number } {
  const { outcrossingPctMin: min, outcrossingPctMax: max } = profile;
  if (defaultSelfingRate(profile) === 0 || min === null || max === null) return { low: 0, high: 0 };
  return { low: 1 - max / 100, high: 1 - min / 100 };
}

/** Inbreeding at selfing equilibrium, F = s/(2 − s) (Pollak 1987). Unitless, 0..1. */
export function equilibriumInbreeding(selfingRate: number): number {
  return selfingRate / (2 - selfingRate);
}
