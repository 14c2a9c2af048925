import type { Database } from "@/lib/db";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import type { RowOf } from "../change-set/records";
import { profileOfCrop } from "../crops/profile-of-crop";
import { plotParentsOfRecord } from "../figures/plot-parents-of-record";
import { figuresOfVariety } from "../figures/read-figures";
import { foldName } from "../names/fold-name";

/** A crop to choose from, with who mates how in it. */
export interface CropToType {
  readonly key: string;
  readonly name: string;
  readonly mates: Pick<PlotParents, "sexes" | "selfIncompatible" | "selfingRate">;
}

/** A lot of the variety that stands already: typed lines can go on from it. */
export interface LotToGoOnFrom {
  readonly id: string;
  readonly number: string;
  readonly kind: "founder" | "harvest" | "blend" | "split";
  readonly years: { readonly first: number; readonly last: number } | null;
  readonly parents: readonly { readonly id: string; readonly share: number | null }[];
  readonly effectiveSize: number | null;
}

const noPlants = {
  id: "",
  name: "",
  varietyId: "",
  parents: [],
  plantsStanding: null,
  malesStanding: null,
  roguedBeforePollen: null,
  seedParents: null,
  seedShares: null,
  selfingRate: null,
  foreignPollen: null,
};

/** The crops of the list, by name. */
export async function cropsToType(db: Database): Promise<CropToType[]> {
  const crops = await db.read.crop.findMany({ include: { overrides: true }, orderBy: { commonNameKey: "asc" } });
  return crops.map((crop) => ({ key: crop.key, name: crop.commonName, mates: matesOf(crop) }));
}

function matesOf(crop: RowOf<"Crop"> & { overrides: readonly RowOf<"CropOverride">[] }): CropToType["mates"] {
  return plotParentsOfRecord(noPlants, profileOfCrop(crop, crop.overrides)).mating;
}

/** The varieties that stand already, by name. */
export async function varietiesToType(db: Database): Promise<{ id: string; name: string; crop: string }[]> {
  const varieties = await db.read.variety.findMany({
    select: { id: true, name: true, crop: { select: { commonName: true } } },
    orderBy: { nameKey: "asc" },
  });
  return varieties.map(({ id, name, crop }) => ({ id, name, crop: crop.commonName }));
}

/** The stewards by name, to say who keeps the seed. */
export async function holdersToType(db: Database): Promise<string[]> {
  const people = await db.read.person.findMany({ select: { name: true }, orderBy: { nameKey: "asc" } });
  return people.map((person) => person.name);
}

/** A variety that stands, with its crop and its lots. */
export interface VarietyToGoOn {
  readonly id: string;
  readonly name: string;
  readonly crop: CropToType;
  readonly lots: readonly LotToGoOnFrom[];
}

/** A variety with its lots, from which lines can go on; null where there is none. */
export async function varietyToGoOn(db: Database, varietyId: string): Promise<VarietyToGoOn | null> {
  const variety = await db.read.variety.findUnique({
    where: { id: varietyId },
    select: {
      id: true,
      name: true,
      crop: { include: { overrides: true } },
      lots: {
        orderBy: { numberKey: "asc" },
        select: {
          id: true,
          number: true,
          kind: true,
          yearFirst: true,
          yearLast: true,
          parents: { select: { parentLotId: true, share: true } },
          growOut: { select: { parents: { select: { lotId: true, share: true } } } },
        },
      },
    },
  });
  if (!variety) return null;
  const figures = await figuresOfVariety(db, varietyId);
  const lots = variety.lots.map(
    ({ id, number, kind, yearFirst, yearLast, parents, growOut }): LotToGoOnFrom => ({
      id,
      number,
      kind: kind as LotToGoOnFrom["kind"],
      years:
        yearFirst && yearLast ? { first: Number(yearFirst.slice(0, 4)), last: Number(yearLast.slice(0, 4)) } : null,
      parents: growOut
        ? growOut.parents.map(({ lotId, share }) => ({ id: lotId, share }))
        : parents.map(({ parentLotId, share }) => ({ id: parentLotId, share })),
      effectiveSize: figures.get(id)?.effectiveSize ?? null,
    }),
  );
  const { id, name, crop } = variety;
  return { id, name, crop: { key: crop.key, name: crop.commonName, mates: matesOf(crop) }, lots };
}

/** Lot numbers that begin with a word, whoever's they are: a number is given once. */
export async function numbersBeginning(db: Database, stem: string): Promise<string[]> {
  const lots = await db.read.lot.findMany({
    where: { numberKey: { startsWith: foldName(stem) } },
    select: { number: true },
    take: 5000,
  });
  return lots.map((lot) => lot.number);
}
