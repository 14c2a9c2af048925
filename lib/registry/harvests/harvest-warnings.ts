import type { HarvestInput } from "@/lib/schemas/harvests/harvest-entry";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { PLANTS_SEED_FACTOR } from "@/lib/science/harvest/plants-seed-factor";
import type { Assumption } from "@/lib/science/outcome";
import { unusualSeedWeight } from "@/lib/science/seed-weight/unusual-seed-weight";
import type { GrowOutForHarvest } from "./grow-out-for-harvest";
import { keptParents } from "./harvest";
import { seedParentsTold } from "./harvest-faults";

/** Above this share of mouldy kernels the usual advice is to feed nothing of it. Source: Willyerd & al. 2010, Ohio State AC-52. */
export const MOULDY_SHARE = 0.05;

/** What looks implausible of a harvest, or asks for care. Suspicious is not wrong: it is stored all the same. */
export function harvestWarnings(
  input: HarvestInput,
  growOut: GrowOutForHarvest,
  thousandSeedGrams: number | null,
  today: CivilDay,
): Assumption[] {
  const warnings: Assumption[] = [];
  const warn = (code: string, text: string) => warnings.push({ code, text });
  const kept = keptParents(input.parents);
  const told = seedParentsTold(input) ?? 0;
  const bags = kept.reduce((sum, { grams }) => sum + (grams ?? 0), 0);
  if (input.grams !== null && bags > input.grams * PLANTS_SEED_FACTOR)
    warn(
      "plants-seed-above-harvest",
      `the plants gave ${short(bags)} g, and only ${short(input.grams)} g lie together`,
    );
  const unusual = thousandSeedGrams === null ? null : unusualSeedWeight(thousandSeedGrams, growOut.profile);
  if (unusual && thousandSeedGrams !== null)
    warn(
      "seed-weight-unusual",
      `${short(thousandSeedGrams)} g for a thousand seeds is far from the ${short(unusual.lightest)} to ${short(unusual.heaviest)} g that are usual for ${growOut.profile.commonName}`,
    );
  if (growOut.sownFirst !== null && input.on.last < growOut.sownFirst)
    warn("harvested-before-sown", `it is dated before the grow-out was sown (${growOut.sown})`);
  if (input.on.first > today) warn("not-yet", "this day has not come yet");
  if ((input.mouldyShare ?? 0) > MOULDY_SHARE)
    warn("mouldy", "more than 5 % of it is mouldy: keep it from food and feed, and look every seed over before sowing");
  const pulled = kept.flatMap(({ plantId }) =>
    growOut.plants.filter(({ id, marks }) => id === plantId && toPull(marks)),
  );
  if (pulled.length > 0)
    warn("marked-to-pull", `marked to be pulled: plant ${pulled.map(({ name }) => name).join(", ")}`);
  const measured = kept.filter(({ grams, seeds }) => grams !== null || seeds !== null).length;
  const equal = input.bulked === "equal seeds" || input.bulked === "equal weight";
  if (!equal && told > 1 && measured < told)
    warn(
      "shares-not-known",
      measured === 0
        ? "what each plant gave is not written, so nobody knows how evenly they gave"
        : `${told - measured} of ${told} bags have no weight, so nobody knows how evenly the plants gave`,
    );
  if (input.grams === null && input.seeds === null && bags === 0)
    warn("not-weighed", "nobody weighed it: how much lies in the jar is unknown until it is weighed in");
  return warnings;
}

function toPull(marks: GrowOutForHarvest["plants"][number]["marks"]): boolean {
  const replaced = new Set(marks.map(({ replacesId }) => replacesId));
  return marks.filter(({ id }) => !replaced.has(id)).at(-1)?.intent === "pull";
}

function short(value: number): number {
  return Number(value.toPrecision(4));
}
