import type { Mating } from "@/lib/science/crops/mating";
import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import {
  type EffectiveSizeSpanInput,
  effectiveSizeSpan,
  type SharesKnown,
} from "@/lib/science/effective-size/effective-size-span";
import { type Narrowing, whatNarrows } from "@/lib/science/effective-size/what-narrows";
import type { Assumption, Refusal } from "@/lib/science/outcome";
import { plotParentsOfRecord } from "../figures/plot-parents-of-record";
import type { GrowOutRecord } from "../figures/records";
import type { StepNumbers } from "./counts-in-step";
import type { FieldEvents } from "./field-records";
import { mostStanding, plantsInBounds, seedParentsMayNotShed } from "./plants-in-bounds";

/** All that the size of a grow-out is worked out from; plain, so that the browser can work it out as counts are typed. */
export interface SizeGround extends FieldEvents {
  readonly record: Omit<GrowOutRecord, "parents"> & Pick<StepNumbers, "seedsSown" | "roguedAfterPollen">;
  readonly profile: Mating;
  /** kept by division: no seed mixes the plants */
  readonly clonal: boolean;
  /** mean F of the lots that were sown; null: not known */
  readonly inbreeding: number | null;
  /** what the seed is to be kept from: planned, or marked to keep */
  readonly seedParentsMeant: number | null;
  /** no seed came of it, or it failed */
  readonly over: boolean;
  /** its crop is sown in clusters, so that the seeds sown bound nothing */
  readonly clusters: boolean;
  /** a lot came of it */
  readonly seedTaken: boolean;
  readonly floor: number | null;
}

/** What the grow-out would count as with so many seed parents that give alike. */
export interface Prospect {
  readonly seedParents: number;
  readonly size: number;
}

interface Worked {
  readonly input: EffectiveSizeSpanInput;
  readonly assumed: readonly Assumption[];
}

/** What a grow-out counts as by now. */
export type SizeSoFar =
  | { readonly state: "clonal" | "no-seed" | "nothing-counted" }
  | { readonly state: "impossible"; readonly refusals: readonly Refusal[] }
  /** everything that it takes is on record */
  | ({ readonly state: "known"; readonly size: number } & Pick<Worked, "assumed">)
  /** seed was taken, something was not counted */
  | ({
      readonly state: "span";
      readonly low: number;
      readonly high: number | null;
      readonly narrows: readonly Narrowing[];
    } & Worked)
  /** no seed is taken yet: from one seed parent to all that stand, each time giving alike */
  | ({
      readonly state: "before-seed";
      readonly low: number;
      readonly high: number | null;
      /** where seed is kept from the plants that are meant to give it */
      readonly meant: Prospect | null;
      /** from all that can give it, by what was counted */
      readonly all: number | null;
      readonly narrows: readonly Narrowing[];
    } & Worked);

/**
 * What a grow-out counts as by now, from the numbers on record: one figure where all is known, a span where a count is missing, and before
 * any seed is taken what it would count as. Pollen parents that were not counted lie between the seed parents and the last count that bounds
 * them (up, thinned, lifted, left after a pass). What nothing bounds has no figure.
 */
export function sizeSoFar(ground: SizeGround): SizeSoFar {
  if (ground.clonal) return { state: "clonal" };
  const { record, profile, seedTaken } = ground;
  if (ground.over && !seedTaken) return { state: "no-seed" };
  const { parents, mating, assumed } = plotParentsOfRecord({ ...record, parents: [] }, profile);
  const inbreeding = ground.inbreeding ?? undefined;
  const ofInbreeding = ground.inbreeding === null ? [inbreedingNotKnown] : [];
  if (parents !== null) {
    const whole = effectiveSize({ ...parents, inbreeding: ground.inbreeding ?? 0 });
    if (!whole.ok) return { state: "impossible", refusals: whole.refusals };
    const { effectiveSize: size } = whole.value;
    if (size === null) return { state: "nothing-counted" };
    return { state: "known", size, assumed: [...assumed, ...ofInbreeding, ...whole.value.assumed] };
  }
  const seedShares: SharesKnown = seedTaken || record.seedParents !== null ? (record.seedShares ?? "unknown") : "equal";
  const bounds = plantsInBounds(record, profile, mostStanding(ground));
  const plants = { ...bounds, seedShares, seedParentsMayNotShed: seedParentsMayNotShed(record) };
  const input: EffectiveSizeSpanInput = { ...mating, ...plants, inbreeding };
  const span = effectiveSizeSpan(input);
  if (!span.ok) {
    const bare = span.refusals.every(({ code }) => code === "not-bounded");
    return bare ? { state: "nothing-counted" } : { state: "impossible", refusals: span.refusals };
  }
  const rogues = assumed.filter(({ code }) => code !== "rogues-not-recorded");
  const noted = record.roguedBeforePollen === null && mating.sexes !== "separate" ? [roguesNotRecorded] : [];
  const worked = { input, assumed: [...rogues, ...noted, ...span.value.assumed] };
  const { low, high } = span.value;
  if (record.seedParents !== null || seedTaken)
    return { state: "span", low, high, narrows: whatNarrows(input), ...worked };
  const most = input.seedParents.high;
  return {
    state: "before-seed",
    low,
    high,
    meant: prospect(input, ground.seedParentsMeant),
    all: most,
    narrows: whatNarrows(input).filter(({ missing }) => missing === "pollenParents"),
    ...worked,
  };
}

const inbreedingNotKnown: Assumption = {
  code: "parents-not-inbred",
  text: "the parents were not inbred (inbreeding 0); that of the lots sown is not known",
};
const roguesNotRecorded: Assumption = {
  code: "rogues-not-recorded",
  text: "no plant was rogued before pollen shed",
};

/** At the most pollen parents that there can be. */
function prospect(input: EffectiveSizeSpanInput, seedParents: number | null): Prospect | null {
  const most = input.seedParents.high;
  if (seedParents === null || seedParents < 1 || (most !== null && seedParents > most)) return null;
  const meant = { low: seedParents, high: seedParents };
  const span = effectiveSizeSpan({ ...input, seedParents: meant, seedParentsMayNotShed: false });
  return span.ok && span.value.high !== null ? { seedParents, size: span.value.high } : null;
}
