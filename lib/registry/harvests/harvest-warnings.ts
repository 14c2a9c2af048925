import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { PLANTS_SEED_FACTOR } from "@/lib/science/harvest/plants-seed-factor";
import type { Assumption } from "@/lib/science/outcome";
import { unusualSeedWeight } from "@/lib/science/seed-weight/unusual-seed-weight";
import { keptParents, type SeedParent } from "./harvest";
import { seedParentsTold } from "./harvest-faults";

/** Above this share of mouldy kernels the usual advice is to feed nothing of it. Source: Willyerd & al. 2010, Ohio State AC-52. */
export const MOULDY_SHARE = 0.05;

/** A harvest as far as it can look odd, told just now or read again. */
export interface HarvestLooked {
  readonly on: Pick<FuzzyDate, "first" | "last"> | null;
  readonly bulked: string | null;
  readonly seedParents: number | null;
  readonly parents: readonly (Pick<SeedParent, "plantId" | "grams" | "seeds" | "lost"> &
    Partial<Pick<SeedParent, "share">>)[];
  readonly grams: number | null;
  readonly seeds: number | null;
  readonly mouldyShare: number | null;
}

/** Its grow-out, likewise. */
export interface GrowOutLooked {
  readonly sown: string | null;
  readonly sownFirst: string | null;
  /** plants whose last mark says that they should be pulled, by id their names */
  readonly toPull: ReadonlyMap<string, string>;
  readonly profile: { commonName: string; seedsPerGramMin: number | null; seedsPerGramMax: number | null };
}

/** What looks implausible of a harvest, or asks for care. Suspicious is not wrong: it is stored all the same, and shown while it looks so. */
export function harvestWarnings(
  input: HarvestLooked,
  growOut: GrowOutLooked,
  thousandSeedGrams: number | null,
  today: CivilDay,
): Assumption[] {
  const warnings: Assumption[] = [];
  const warn = (code: string, text: string) => warnings.push({ code, text });
  const kept = keptParents(input.parents);
  const told = seedParentsTold(input) ?? 0;
  const { on } = input;
  const bags = kept.reduce((sum, { grams }) => sum + (grams ?? 0), 0);
  const equal = input.bulked === "equal seeds" || input.bulked === "equal weight";
  // Where equal parts were taken, the rest of the heavy bags is meant to be left.
  if (input.grams !== null && !equal && bags > input.grams * PLANTS_SEED_FACTOR)
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
  if (growOut.sownFirst !== null && on !== null && on.last < growOut.sownFirst)
    warn("harvested-before-sown", `it is dated before the grow-out was sown (${growOut.sown})`);
  if (on !== null && on.first > today) warn("not-yet", "this day has not come yet");
  if ((input.mouldyShare ?? 0) > MOULDY_SHARE)
    warn(
      "mouldy",
      "more than 5 % of it is mouldy: keep it from food and feed, look every seed over before sowing, and follow your local rules",
    );
  const pulled = kept.flatMap(({ plantId }) => growOut.toPull.get(plantId ?? "") ?? []);
  if (pulled.length > 0) warn("marked-to-pull", `marked to be pulled: plant ${pulled.join(", ")}`);
  const measured = kept.filter(({ grams, seeds, share }) => (grams ?? seeds ?? share ?? null) !== null).length;
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

/** The plants whose last standing mark says pull, by id their names. */
export function plantsToPull(
  plants: readonly {
    id: string;
    name: string;
    marks: readonly { id: string; intent: string; replacesId?: string | null }[];
  }[],
): ReadonlyMap<string, string> {
  return new Map(
    plants.flatMap(({ id, name, marks }) => {
      const replaced = new Set(marks.map(({ replacesId }) => replacesId));
      const last = marks.filter((mark) => !replaced.has(mark.id)).at(-1);
      return last?.intent === "pull" ? [[id, name] as const] : [];
    }),
  );
}

function short(value: number): number {
  return Number(value.toPrecision(4));
}
