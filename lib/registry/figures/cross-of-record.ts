import type { Mating } from "@/lib/science/crops/mating";
import { separateSexes } from "@/lib/science/crops/mating";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import type { Assumption } from "@/lib/science/outcome";
import type { GrowOutRecord, ParentRecord } from "./records";

/** The lots of a cross by what their plants were. */
export interface SidesOfCross {
  readonly seed: readonly ParentRecord[];
  readonly pollen: readonly ParentRecord[];
}

/** Null where no lot has a role; "untold" where some have none, or all have one and the same: then nobody knows who gave what. */
export function sidesOfCross({ parents }: Pick<GrowOutRecord, "parents">): SidesOfCross | "untold" | null {
  if (parents.every(({ role }) => !role)) return null;
  const of = (role: ParentRecord["role"]) => parents.filter((parent) => parent.role === role);
  const [seed, pollen] = [of("seed parent"), of("pollen parent")];
  return seed.length > 0 && pollen.length > 0 && seed.length + pollen.length === parents.length
    ? { seed, pollen }
    : "untold";
}

/** The lots of one side with their shares of its plants alone. */
export function withinSide(parents: readonly ParentRecord[]): ParentRecord[] {
  const sum = parents.reduce<number | null>(
    (total, { share }) => (total === null || share === null ? null : total + share),
    0,
  );
  return parents.map(({ id, share }) => ({ id, share: sum === null || share === null ? null : share / sum }));
}

/**
 * The parents of a cross as the calculations take them: seed parents that shed nothing, and pollen parents that are other plants.
 *
 *     pollen parents = N − R − D        N standing, R rogued before pollen shed, D tassels taken; D not written: the seed side's share of N
 *     separate sexes: the males
 *
 * Null where they were not counted. Source: q = 0 for the pollen side and p = 0 for the seed side, as growCross.
 */
export function plotOfCross(
  growOut: GrowOutRecord,
  profile: Mating,
  { seed }: SidesOfCross,
): { readonly parents: PlotParents | null; readonly assumed: readonly Assumption[] } {
  const { seedParents, seedShares, plantsStanding, malesStanding, roguedBeforePollen, detasselled } = growOut;
  const assumed: Assumption[] = [];
  if (seedParents === null || seedShares === null) return { parents: null, assumed };
  const of = (pollenParents: number) =>
    ({ pollenParents, seedParents, seedShares, sexes: "separate", selfingRate: 0 }) as const;
  if (separateSexes(profile)) return { parents: malesStanding === null ? null : of(malesStanding), assumed };
  if (plantsStanding === null) return { parents: null, assumed };
  if (roguedBeforePollen === null)
    assumed.push({ code: "rogues-not-recorded", text: "no plant was rogued before pollen shed" });
  const standing = plantsStanding - (roguedBeforePollen ?? 0);
  if (detasselled != null && detasselled > 0) return { parents: of(standing - detasselled), assumed };
  const share = seed.reduce<number | null>(
    (sum, parent) => (sum === null || parent.share === null ? null : sum + parent.share),
    0,
  );
  if (share === null) return { parents: null, assumed };
  const taken = Math.round(share * standing);
  assumed.push({
    code: "seed-side-by-share",
    text: `the lot of the seed parents stood in its share of the plants (${taken} of ${standing})`,
  });
  return { parents: of(standing - taken), assumed };
}
