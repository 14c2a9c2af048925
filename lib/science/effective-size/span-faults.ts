import type { CountBounds, EffectiveSizeSpanInput } from "@/lib/science/effective-size/effective-size-span";
import { mayBeApart } from "@/lib/science/effective-size/ends-of-terms";
import { isCv, listed, type Shares } from "@/lib/science/effective-size/plot-parents";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import { sumOfSquaresBounds } from "@/lib/science/effective-size/sum-of-squares-bounds";
import { countFault, faultsAmong, shareFault } from "@/lib/science/limits";
import { type Refusal, refusal } from "@/lib/science/outcome";

/** Everything about a span's counts that cannot be, each with its place. */
export function spanFaults(input: EffectiveSizeSpanInput): Refusal[] {
  const faults = [
    ...boundsFaults("pollenParents", input.pollenParents),
    ...boundsFaults("seedParents", input.seedParents),
    ...faultsAmong(shareFault([], "selfingRate", input.selfingRate), shareFault([], "inbreeding", input.inbreeding)),
  ];
  if (faults.length > 0) return faults;
  return [...notBounded(input), ...atTheBestEnd(input)];
}

function boundsFaults(key: "pollenParents" | "seedParents", { low, high }: CountBounds): Refusal[] {
  const faults = faultsAmong(countFault([key], "low", low, 1), countFault([key], "high", high ?? undefined, 1));
  if (faults.length > 0 || high === null || high >= low) return faults;
  return [refusal("bounds-crossed", [key, "high"], high, `is less than the ${low} it cannot fall below`, "write both")];
}

function notBounded({ pollenParents, seedParents, sexes }: EffectiveSizeSpanInput): Refusal[] {
  const seedBounded = seedParents.high !== null || (sexes !== "separate" && pollenParents.high !== null);
  if (seedBounded || seedParents.low > 1) return [];
  const needed = "count the plants that stand, or those that give seed";
  return [refusal("not-bounded", ["seedParents"], null, "bounds the number of parents", needed)];
}

/** What effectiveSize refuses of the most plants that there can be, it refuses of all. */
function atTheBestEnd(input: EffectiveSizeSpanInput): Refusal[] {
  const { sexes, selfingRate, selfIncompatible, seedShares = "unknown" } = input;
  const separate = sexes === "separate";
  const apart = mayBeApart(input);
  const fewest = input.seedParents.low;
  // Any number will do for one without bound, as long as no rule is broken by it alone.
  const counted = input.pollenParents.high ?? Math.max(fewest, input.seedParents.high ?? fewest, 2);
  // Seed parents that shed no pollen are none of the pollen parents.
  const pollenParents = apart ? Math.max(counted, fewest, input.seedParents.high ?? fewest) : counted;
  const most = input.seedParents.high ?? Math.max(fewest, separate ? fewest : pollenParents);
  const seedParents = separate ? most : Math.max(fewest, Math.min(most, pollenParents));
  const known = sharesToJudge(seedShares);
  const faults = plotParentsFaults({
    pollenParents,
    seedParents: listed(known) ? Math.max(fewest, Math.min(seedParents, listed(known)?.length ?? 0)) : seedParents,
    sexes,
    selfingRate,
    selfIncompatible,
    seedShares: input.seedParents.high === null && isCv(known) ? "equal" : known,
  });
  if (typeof seedShares === "object" && "largest" in seedShares && input.seedParents.high !== null) {
    const bounds = sumOfSquaresBounds({ plants: seedParents, largest: seedShares.largest });
    if (!bounds.ok) faults.push(...bounds.refusals.map((each) => ({ ...each, path: ["seedShares", "largest"] })));
  }
  return faults;
}

function sharesToJudge(shares: Exclude<EffectiveSizeSpanInput["seedShares"], undefined>): Shares {
  return shares === "unknown" || (typeof shares === "object" && "largest" in shares) ? "equal" : shares;
}
