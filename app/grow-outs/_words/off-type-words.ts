import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber } from "@/lib/display/numbers";
import type { OffTypesPulled } from "@/lib/registry/grow-outs/walks";
import { type OffTypesFound, offTypesFound } from "@/lib/science/off-types/off-types-found";

/** The off-type share of a grow-out with its exact upper bound; `atMost` where the reasons of some do not tell. */
export interface OffTypeReading {
  readonly looked: number;
  readonly found: number;
  readonly foundAtMost: number;
  readonly share: number;
  readonly shareAtMost: number;
  readonly upperBound: number;
}

/** Reads what the passes found; null where nobody wrote how many plants were looked at. */
export function offTypeReading({ looked, found, foundAtMost }: OffTypesPulled): OffTypeReading | null {
  if (looked === null || looked === 0) return null;
  // Plants pulled in several walks may be more than one walk looked at.
  const sampled = Math.max(looked, foundAtMost);
  const read = (count: number): OffTypesFound | null => {
    const outcome = offTypesFound({ sampled, found: count });
    return outcome.ok ? outcome.value : null;
  };
  const [least, most] = [read(found), read(foundAtMost)];
  if (!least || !most) return null;
  return {
    looked: sampled,
    found,
    foundAtMost,
    share: least.share,
    shareAtMost: most.share,
    upperBound: most.upperBound,
  };
}

/** "3 of 120 were pulled as off-type (2.5 %); in truth hardly more than 6.4 %". */
export function offTypesInWords({
  looked,
  found,
  foundAtMost,
  share,
  shareAtMost,
  upperBound,
}: OffTypeReading): string {
  const counts = found === foundAtMost ? plainNumber(found) : `${plainNumber(found)} to ${plainNumber(foundAtMost)}`;
  const shares = found === foundAtMost ? percent(share) : `${percent(share)} to ${percent(shareAtMost)}`;
  return `${counts} of ${plainNumber(looked)} ${found === 1 && foundAtMost === 1 ? "was" : "were"} pulled as off-type (${shares}); in truth hardly more than ${percent(upperBound)}`;
}

/** How the share and its bound come about. */
export function offTypeExplanation(reading: OffTypeReading, name: string): Explanation {
  const unclear = reading.foundAtMost - reading.found;
  return {
    title: `off-types of ${name}`,
    answer: offTypesInWords(reading),
    formula: "share = found/looked at;  upper bound = BetaInv(0.95; found + 1, looked at − found)",
    inputs: [
      { name: "looked at, in the walk that looked at most", value: plainNumber(reading.looked) },
      { name: "pulled as off-type, early or late, crossed or bitter", value: plainNumber(reading.found) },
      ...(unclear > 0 ? [{ name: "pulled for a reason that does not tell", value: plainNumber(unclear) }] : []),
    ],
    assumed: [
      "Each plant was looked at in every walk, so the plants looked at are those of the walk that looked at most.",
      "The bound holds at 95 %, for plants picked at random.",
      ...(unclear > 0 ? ["Plants of which nobody said why may be off-types or not; the bound takes all of them."] : []),
    ],
    unsure: "Off-types stand in clumps, and one that shows late cannot be found early. None found is no proof of none.",
    sources: ["Clopper & Pearson 1934, Biometrika 26:404-413"],
    calc: `echo '{"sampled":${reading.looked},"found":${reading.foundAtMost}}' | npm run --silent calc -- off-types`,
  };
}
