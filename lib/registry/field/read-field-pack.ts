import type { Actor } from "@/lib/access/actor";
import { type Database, readTogether } from "@/lib/db";
import type { FieldPack, TraitInField } from "@/lib/schemas/field/field-pack";
import type { Intent } from "@/lib/schemas/plants/plant-cells";
import type { Settings } from "@/lib/schemas/settings";
import { scaleEnds } from "@/lib/schemas/traits/trait";
import { cautionsAt } from "@/lib/science/cautions/cautions-at";
import { separateSexes } from "@/lib/science/crops/mating";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { profileOfCrop } from "../crops/profile-of-crop";
import { inOrderOfDays, standingOf } from "../grow-outs/field-records";
import { markShown, type PlantOfGrowOut, plantSelections, plantsRead } from "../grow-outs/plants-of-grow-out";
import { walksOf } from "../grow-outs/walks";
import { traitToWeigh } from "../plants/choice-ground";
import { readChoice } from "../plants/read-choice";
import type { TraitLine } from "../traits/list-traits";
import { packSelections } from "./pack-selections";

/**
 * All that a phone needs in the field of one grow-out, as the one who takes it may see it; null where there is no such grow-out. One statement, and those
 * of the choice among its plants.
 *
 * @param now the registry's clock
 * @param question by which settings and on which day the choice is made
 */
export async function readFieldPack(
  db: Database,
  actor: Actor,
  growOutId: string,
  now: Date,
  question: { readonly settings: Settings; readonly today: CivilDay },
): Promise<FieldPack | null> {
  const found = await readTogether(db, { ...packSelections(growOutId), ...plantSelections(growOutId) });
  const [head] = found.heads;
  if (!head) return null;
  const names = new Map(found.people.map(({ stewardId, name }) => [stewardId, name]));
  const nameOf = (stewardId: string | null) => (stewardId === null ? null : (names.get(stewardId) ?? null));
  const { plants, traits } = plantsRead(found);
  const choice = await readChoice(db, growOutId, question);
  const photos = found.photos;
  const walks = walksOf(standingOf(found.passes));
  const cautions = (["rogue", "harvest", "taste"] as const).flatMap((step) =>
    cautionsAt(step, {
      ...{ crop: head.cropKey, cropName: head.cropName },
      ...{ varietyCautions: head.cautions, varietyName: head.variety },
    }),
  );
  const { plantsMin, matingSystem } = profileOfCrop(
    { plantsMin: head.plantsMin, matingSystem: head.matingSystem },
    found.ownValues,
  );
  return {
    version: 1,
    madeAt: now.toISOString(),
    growOut: {
      ...{ id: head.id, name: head.name, sown: head.sown, purpose: head.purpose },
      plots: found.plots.map(({ name }) => name),
    },
    variety: {
      ...{ id: head.varietyId, name: head.variety, seedCoat: head.seedCoat, aim: head.aim, cautions: head.cautions },
    },
    crop: { key: head.cropKey, name: head.cropName, plantsMin, separate: separateSexes({ matingSystem }) },
    plan: {
      plants: head.plantsPlanned ?? head.plantsWanted,
      ...{ seedParents: head.seedParentsPlanned, seedParentsWanted: head.seedParentsWanted },
    },
    hand: { stewardId: actor.stewardId, name: nameOf(actor.stewardId) ?? actor.name },
    traits: traits.map((line) => traitInField(line, photos)),
    type: found.type.map(({ trait, allowed, offType }) => ({
      trait,
      words: offType === null ? allowed : `${allowed}; off-type: ${offType}`,
    })),
    plants: plants.map((plant) => plantInPack(plant, nameOf)),
    counts: inOrderOfDays(standingOf(found.counts)).map(({ stage, plants: counted, on }) => ({
      ...{ stage, plants: counted, on },
    })),
    walks: walks.map(({ passes, on, stage, timing, looked, pulled }) => ({
      ...{ on: on ?? "", stage, timing, looked, pulled },
      reason: [...new Set(passes.flatMap(({ reason }) => reason ?? []))].join(", ") || null,
    })),
    flowering: inOrderOfDays(standingOf(found.flowering)).map(({ organ, moment, on }) => ({
      ...{ organ, moment, on: on ?? "" },
    })),
    harvests: found.harvests,
    cautions: [...new Set(cautions.flatMap(({ care }) => care))],
    // in the field, traits are weighed that nobody has scored yet
    ...(choice
      ? {
          choice: {
            ...choice.ground,
            traits: traits.map((line) => traitToWeigh(line, head.varietyId, plants, choice.heritability)),
          },
        }
      : {}),
  };
}

function traitInField(
  { id, newest }: TraitLine,
  photos: readonly { readonly traitId: string; readonly hash: string }[],
): TraitInField {
  const { steps, choices } = newest.wording;
  const [low, high] = newest.kind === "scale" ? scaleEnds(newest) : [newest.scaleLow, newest.scaleHigh];
  return {
    ...{ id: newest.id, first: id, name: newest.name, kind: newest.kind, unit: newest.unit },
    ...{ direction: newest.direction, target: newest.target, scaleLow: low, scaleHigh: high },
    steps: [
      ...Object.entries(steps).map(([value, words]) => ({ value: stepValue(value), words })),
      ...choices.map((words) => ({ value: null, words })),
    ],
    photos: photos.flatMap(({ traitId, hash }) => (traitId === newest.id || traitId === id ? [hash] : [])),
  };
}

/** Steps of a scale are numbers; yes is 1 and no is 0, as a phone scores them. */
function stepValue(step: string): number | null {
  const known: Readonly<Record<string, number>> = { yes: 1, no: 0 };
  const value = known[step] ?? Number(step);
  return Number.isFinite(value) ? value : null;
}

function plantInPack(plant: PlantOfGrowOut, nameOf: (stewardId: string | null) => string | null) {
  const mark = markShown(plant);
  const { id, name, cell, row, position } = plant;
  return {
    plant: { id, name, cell, row, position },
    mark: mark && {
      ...{ id: mark.id, tag: mark.tag, intent: mark.intent as Intent, words: mark.words, fate: mark.fate },
      ...{ on: mark.on, by: nameOf(mark.stewardId) },
    },
    scores: [...plant.scores].flatMap(([trait, scores]) =>
      scores.map(({ id: score, value, text, on, stewardId }) => ({
        ...{ id: score, trait, value: text === "yes" ? 1 : text === "no" ? 0 : value, text, on, by: nameOf(stewardId) },
      })),
    ),
  };
}
