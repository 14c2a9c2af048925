import { percent, wholeNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { HarvestRead, HarvestsRead } from "@/lib/registry/harvests/read-harvests";
import type { NamedAmount } from "./evenness-view";

/** What a harvest came to: "640 g, 2,000 seeds"; null where nobody measured it. */
export function amountOfHarvest({ grams, seeds }: HarvestRead, units: UnitSettings): string | null {
  const parts = [grams === null ? "" : weight(grams, units), seeds === null ? "" : counted(seeds, "seed")];
  return parts.filter(Boolean).join(", ") || null;
}

/** A seed parent's name: its plant's, else the bag's place. */
export function nameOfParent(plant: string | null, place: number): string {
  return plant === null ? `bag ${place + 1}` : `plant ${plant}`;
}

/** The kept seed parents by name with what each gave; empty where that is not known of all. */
export function namedAmounts({ kept, given }: HarvestRead): NamedAmount[] {
  return (given?.amounts ?? []).map((amount, place) => ({
    name: nameOfParent(kept[place]?.plant ?? null, place),
    amount,
  }));
}

/** What is not in the lot, and why: "Not in it: plant 4 and plant 7 (rotted or mouldy)". */
export function lostWords({ parents }: Pick<HarvestRead, "parents">): string | null {
  const byReason = new Map<string, string[]>();
  for (const [place, { lost, plant }] of parents.entries()) {
    if (lost === null) continue;
    byReason.set(lost, [...(byReason.get(lost) ?? []), nameOfParent(plant, place)]);
  }
  if (byReason.size === 0) return null;
  return `Not in it: ${[...byReason].map(([why, names]) => `${listed(names)} (${why})`).join("; ")}.`;
}

/** What else is written of it. */
export function furtherWords(harvest: HarvestRead): string[] {
  const { detasselled, mouldyShare, note } = harvest;
  return [
    lostWords(harvest) ?? "",
    detasselled ? `${wholeNumber(detasselled)} of its seed parents were without their tassels.` : "",
    mouldyShare === null
      ? ""
      : mouldyShare === 0
        ? "Looked over for mould, and found none."
        : `Mouldy: ${percent(mouldyShare)}.`,
    note ?? "",
  ].filter(Boolean);
}

/** All harvests of a grow-out as the one pool that they are; null for a single one. */
export function poolWords({ pool, harvests }: HarvestsRead): string | null {
  if (!pool || harvests.filter(({ seedParents }) => seedParents !== null).length < 2) return null;
  const { seedParents, seedParentsAtMost } = pool;
  const plants = counted(seedParents, "seed parent");
  return seedParentsAtMost > seedParents
    ? `Together they are one pool of ${plants}: plants that were only counted are taken for the same ones in each harvest. They can be ${wholeNumber(seedParentsAtMost)} at most.`
    : `Together they are one pool of ${plants}, each counted once.`;
}
