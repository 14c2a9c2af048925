import { type Database, readTogether } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import { profileOfCrop } from "../crops/profile-of-crop";
import { askedSelection } from "../field/asked-of-grow-out";
import { figuresOfCropOf, type LotFigures } from "../figures/read-figures";
import type { SeasonCrop, SeasonVariety } from "../season/records";
import type { TraitLine } from "../traits/list-traits";
import { type EventOfGrowOut, eventsInOrder, eventsSelection } from "./events-of-grow-out";
import {
  type GrowOutHead,
  harvestedSelection,
  harvestsSelection,
  headSelection,
  ownValuesSelection,
  type PlotOfGrowOut,
  parentsSelection,
  peopleSelection,
  plotsSelection,
  type TakenForGrowOut,
  takenSelection,
} from "./grow-out-selections";
import { type PlantOfGrowOut, plantSelections, plantsRead } from "./plants-of-grow-out";

/** A lot that was sown, with its share of the plants; null: not written. */
export interface SownLot {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly year: string | null;
  readonly share: number | null;
  /** in a cross: seed parent or pollen parent */
  readonly role: string | null;
  readonly inbreeding: number | null;
  /** what left its jar for this grow-out, by the entries that stand */
  readonly taken: readonly TakenForGrowOut[];
}

/** The crop of a grow-out, the steward's own values in place: how it mates, and the days of its life. */
export interface CropOfGrowOut extends SeasonCrop {
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly lifeCycle: string | null;
  readonly vernalisation: string | null;
  readonly daysToFlowerMin: number | null;
  readonly daysToFlowerMax: number | null;
  readonly daysToSeedMin: number | null;
  readonly daysToSeedMax: number | null;
}

export interface VarietyOfGrowOut extends SeasonVariety {
  readonly crop: CropOfGrowOut;
  readonly plantsWanted: number | null;
  readonly seedParentsWanted: number | null;
  readonly cautions: string | null;
}

/** A lot that was harvested from a grow-out. */
export interface HarvestedLot {
  readonly id: string;
  readonly number: string;
  readonly year: string | null;
  readonly yearFirst: string | null;
  readonly yearLast: string | null;
  readonly figures: LotFigures | null;
}

/** A grow-out with all that its page shows. */
export interface GrowOutRead {
  readonly growOut: RowOf<"GrowOut">;
  readonly variety: VarietyOfGrowOut;
  readonly steward: string | null;
  readonly plots: readonly PlotOfGrowOut[];
  readonly parents: readonly SownLot[];
  readonly harvested: readonly HarvestedLot[];
  readonly harvests: readonly RowOf<"Harvest">[];
  readonly events: readonly EventOfGrowOut[];
  readonly plants: readonly PlantOfGrowOut[];
  /** the traits by which some of them were scored */
  readonly traits: readonly TraitLine[];
  readonly people: ReadonlyMap<string, string>;
  /** of all lots of its crop */
  readonly figures: ReadonlyMap<string, LotFigures>;
  /** questions that came home from the field and wait for a person */
  readonly asked: number;
}

/** A grow-out by its id; null where there is none. One statement, and those of the figures. */
export async function readGrowOut(db: Database, id: string): Promise<GrowOutRead | null> {
  const found = await readTogether(db, {
    heads: headSelection(id),
    own: ownValuesSelection(id),
    plots: plotsSelection(id),
    parents: parentsSelection(id),
    taken: takenSelection(id),
    harvested: harvestedSelection(id),
    harvests: harvestsSelection(id),
    events: eventsSelection(id),
    ...plantSelections(id),
    people: peopleSelection,
    asked: askedSelection(id),
  });
  const [head] = found.heads;
  if (!head) return null;
  const { growOut, variety } = partsOfHead(head, found.own);
  const figures = await figuresOfCropOf(db, growOut.varietyId);
  const people = new Map(found.people.map((person) => [person.stewardId, person.name]));
  const { plants, traits } = plantsRead(found);
  return {
    growOut,
    variety,
    steward: growOut.stewardId === null ? null : (people.get(growOut.stewardId) ?? null),
    plots: found.plots,
    parents: found.parents.map((lot) => ({
      ...lot,
      inbreeding: figures.get(lot.id)?.inbreeding ?? null,
      taken: found.taken.filter((entry) => entry.lotId === lot.id),
    })),
    // By number in code-point order, which the engines do not share.
    harvested: found.harvested
      .map((lot) => ({ ...lot, figures: figures.get(lot.id) ?? null }))
      .sort((a, b) => (a.number < b.number ? -1 : 1)),
    harvests: found.harvests,
    events: eventsInOrder(found.events),
    plants,
    traits: traits.filter((trait) => plants.some((plant) => plant.scores.has(trait.id))),
    people,
    figures,
    asked: found.asked[0]?.asked ?? 0,
  };
}

function partsOfHead(
  head: GrowOutHead,
  own: readonly { readonly field: string; readonly value: string }[],
): { growOut: RowOf<"GrowOut">; variety: VarietyOfGrowOut } {
  const { variety, varietyKey, seedCoat, aim, plantsWanted, seedParentsWanted, varietyCautions, ...rest } = head;
  const { cropId, cropKey, commonName, matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax, ...more } =
    rest;
  const { plantsMin, seedLifeYearsMin, seedLifeYearsMax, lifeCycle, vernalisation, ...days } = more;
  const { daysToFlowerMin, daysToFlowerMax, daysToSeedMin, daysToSeedMax, ...growOut } = days;
  const profile = profileOfCrop(
    {
      ...{ commonName, matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax, plantsMin },
      ...{ seedLifeYearsMin, seedLifeYearsMax, lifeCycle, vernalisation },
      ...{ daysToFlowerMin, daysToFlowerMax, daysToSeedMin, daysToSeedMax },
    },
    own,
  );
  const crop = { id: cropId, key: cropKey, ...profile, clonal: profile.matingSystem === "clonal" };
  return {
    growOut,
    variety: {
      ...{ id: growOut.varietyId, name: variety, nameKey: varietyKey, seedCoat, aim },
      ...{ plantsWanted, seedParentsWanted, cautions: varietyCautions, crop },
    },
  };
}
