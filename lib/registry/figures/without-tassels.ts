import { listed, type PlotParents } from "@/lib/science/effective-size/plot-parents";
import type { Assumption } from "@/lib/science/outcome";
import type { GrowOutRecord } from "./records";

type Taken = Pick<GrowOutRecord, "detasselled" | "seedParentsDetasselled">;

/**
 * The parents of a grow-out in which tassels were taken before they shed (D plants, d of them seed parents, of N plants with n seed
 * parents). A seed parent without its tassel has pollen share 0; another plant without it is no parent at all and is left out:
 *
 *     pollen parents = N − (D − d)        pollen shares = 1 for n − d seed parents, 0 for d, 1 for the others
 *
 * Where only one of the two numbers is written, the other is read so that Ne comes out low: no other plant without its tassel, or as few
 * seed parents as can be. Of unequal seed parents those that kept their tassels count as the heaviest, for the same reason.
 * Source: the definition of the pollen shares in effectiveSize; Wright 1931, Genetics 16:97-159, for rows that only give seed.
 */
export function withoutTassels(
  plot: PlotParents,
  { detasselled, seedParentsDetasselled }: Taken,
): { parents: PlotParents; assumed: readonly Assumption[] } {
  if (detasselled == null && seedParentsDetasselled == null) return { parents: plot, assumed: [] };
  const { pollenParents: n, seedParents } = plot;
  const taken = Math.max(detasselled ?? 0, seedParentsDetasselled ?? 0);
  if (taken === 0) return { parents: plot, assumed: [] };
  const assumed: Assumption[] = [];
  const fewest = Math.max(0, taken - Math.max(0, n - seedParents));
  const ofSeedParents = seedParentsDetasselled ?? fewest;
  if (detasselled == null)
    assumed.push({ code: "only-seed-parents-detasselled", text: "no plant but the seed parents had its tassel taken" });
  if (seedParentsDetasselled == null) {
    const text = `as few seed parents as can be were without their tassels (${ofSeedParents})`;
    assumed.push({ code: "fewest-seed-parents-detasselled", text });
  }
  const pollenParents = n - (taken - ofSeedParents);
  if (ofSeedParents === 0) return { parents: { ...plot, pollenParents }, assumed };
  const kept = seedParents - ofSeedParents;
  const shares = listed(plot.seedShares);
  if (shares && kept > 0 && shares.some((share) => share !== shares[0]))
    assumed.push({
      code: "heaviest-kept-tassels",
      text: "the seed parents that kept their tassels gave the most seed",
    });
  if (plot.selfingRate !== 1)
    assumed.push({ code: "pollen-shares-equal", text: "every pollen parent fathered the same amount of seed" });
  return {
    parents: {
      ...plot,
      pollenParents,
      pollenShares: [...each(kept, 1), ...each(ofSeedParents, 0), ...each(pollenParents - seedParents, 1)],
      ...(shares ? { seedShares: shares.toSorted((one, other) => other - one) } : {}),
    },
    assumed,
  };
}

/** Counts that cannot be (more than there are) give a list that does not fit, and that is refused with its place. */
function each(plants: number, share: number): number[] {
  return new Array<number>(Math.max(0, plants)).fill(share);
}
