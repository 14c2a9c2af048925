import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { Mating } from "@/lib/science/crops/mating";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { Assumption } from "@/lib/science/outcome";
import { grouped } from "../change-set/grouped";
import type { RowOf } from "../change-set/records";
import { profileOfCrop } from "../crops/profile-of-crop";
import { figuresOfCropOf, type LotFigures } from "../figures/read-figures";
import { ownValuesSelection, parentsSelection } from "../grow-outs/grow-out-selections";
import { type Evenness, evennessOf } from "./evenness-of-harvest";
import { keptParents, type SeedParent } from "./harvest";
import { harvestColumns } from "./harvest-columns";
import { harvestWarnings, plantsToPull } from "./harvest-warnings";
import { type PoolOfHarvests, poolOfHarvests } from "./pool-of-harvests";
import { type AmountsOfParents, amountsOf, sharesOfHarvest } from "./shares-of-harvest";
import { type PlotOfHarvest, type SizeOfHarvest, sizeOfHarvest } from "./size-of-harvest";

/** A seed parent with its plant's name. */
export interface SeedParentRead extends SeedParent {
  readonly id: string;
  /** null: nobody knows which plant it was */
  readonly plant: string | null;
}

/** A harvest with its lot, its seed parents, and what they make of it. */
export interface HarvestRead extends RowOf<"Harvest"> {
  readonly lotNumber: string | null;
  readonly parents: readonly SeedParentRead[];
  /** what each kept seed parent gave, in the order of `kept`; null where that is not known of all */
  readonly given: AmountsOfParents | null;
  readonly kept: readonly SeedParentRead[];
  readonly evenness: Evenness | null;
  /** of this harvest by itself; null where counts or shares are missing */
  readonly size: SizeOfHarvest | null;
  readonly warnings: readonly Assumption[];
}

/** The crop of a harvest, the steward's own values in place. */
export interface CropOfHarvest {
  readonly key: string;
  readonly commonName: string;
  readonly matingSystem: string | null;
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
}

export interface HarvestsRead {
  readonly growOut: GrowOutRow;
  readonly variety: { readonly id: string; readonly name: string; readonly seedCoat: string | null };
  readonly crop: CropOfHarvest;
  readonly plot: PlotOfHarvest;
  /** in the order of entry */
  readonly harvests: readonly HarvestRead[];
  /** all of them together; null where none says how many seed parents it had */
  readonly pool: PoolOfHarvests | null;
  readonly plants: readonly PlantForHarvest[];
  /** the name of the grow-out's steward */
  readonly steward: string | null;
  /** the numbers of the variety's lots, to propose the next */
  readonly lotNumbers: readonly string[];
}

/** A plant of the grow-out, with the tag and intent of its last mark. */
export interface PlantForHarvest {
  readonly id: string;
  readonly name: string;
  readonly cell: string | null;
  readonly kept: boolean | null;
  readonly tag: string | null;
  readonly intent: string | null;
}

/**
 * Harvests of a grow-out with all that their pages show; null where there is no such grow-out. One statement, and that of the figures where who
 * asks has not read those of the crop.
 */
export async function readHarvests(
  db: Database,
  growOutId: string,
  today: CivilDay,
  known?: ReadonlyMap<string, LotFigures>,
): Promise<HarvestsRead | null> {
  const found = await readTogether(db, {
    heads: headSelection(growOutId),
    own: ownValuesSelection(growOutId),
    sown: parentsSelection(growOutId),
    harvests: harvestsSelection(growOutId),
    parents: seedParentsSelection(growOutId),
    plants: plantsSelection(growOutId),
    numbers: numbersSelection(growOutId),
  });
  const [head] = found.heads;
  if (!head) return null;
  const { variety, seedCoat, cropKey, steward, ...rest } = head;
  const { commonName, matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax, ...more } = rest;
  const { seedsPerGramMin, seedsPerGramMax, ...growOut } = more;
  const listed = { matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax };
  const profile = profileOfCrop({ commonName, ...listed, seedsPerGramMin, seedsPerGramMax }, found.own);
  const figures = known ?? (await figuresOfCropOf(db, growOut.varietyId));
  const inbreeding = meanInbreeding(
    found.sown.map(({ id, share }) => ({ share, inbreeding: figures.get(id)?.inbreeding ?? null })),
  );
  const { plantsStanding, malesStanding, roguedBeforePollen, detasselled, selfingRate } = growOut;
  const counts = { plantsStanding, malesStanding, roguedBeforePollen, detasselled, selfingRate };
  const plot = { ...counts, mating: matingOf(profile), inbreeding };
  const plants = plantsWithMarks(found.plants);
  const parentsOf = grouped(found.parents, (parent) => parent.harvestId);
  const looked = { ...growOut, profile, toPull: plantsToPull(plants) };
  const harvests = found.harvests.map((harvest): HarvestRead => {
    const parents = (parentsOf.get(harvest.id) ?? []).map(({ harvestId: _harvest, ...parent }) => parent);
    const { lotNumber, thousandSeedGrams, ...row } = harvest;
    const read = { ...row, parents };
    const shares = sharesOfHarvest(read);
    const given = amountsOf(parents);
    const complete = given !== null && given.amounts.length === row.seedParents;
    const on = row.onFirst === null || row.onLast === null ? null : { first: row.onFirst, last: row.onLast };
    return {
      ...read,
      lotNumber,
      kept: keptParents(parents),
      given,
      evenness: complete ? evennessOf(given.amounts, plot, row.detasselled) : null,
      size:
        row.seedParents === null || shares === null
          ? null
          : sizeOfHarvest(plot, { seedParents: row.seedParents, shares, detasselled: row.detasselled }),
      warnings: harvestWarnings({ ...read, on }, looked, thousandSeedGrams, today),
    };
  });
  return {
    growOut,
    variety: { id: growOut.varietyId, name: variety, seedCoat },
    crop: { key: cropKey, ...profile },
    plot,
    harvests,
    pool: poolOfHarvests(harvests),
    plants: plants.map(({ marks: _marks, ...plant }) => plant),
    steward,
    lotNumbers: found.numbers.map(({ number }) => number),
  };
}

function matingOf({ matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax }: Mating): Mating {
  return { matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax };
}

/** Mean inbreeding of the lots that were sown, by their shares of the plants; null where one of them, or a share of several, is not known. */
function meanInbreeding(sown: readonly { share: number | null; inbreeding: number | null }[]): number | null {
  let [sum, whole] = [0, 0];
  for (const { share, inbreeding } of sown) {
    const part = sown.length === 1 ? 1 : share;
    if (part === null || inbreeding === null) return null;
    sum += part * inbreeding;
    whole += part;
  }
  return whole > 0 ? sum / whole : null;
}

type GrowOutRow = Pick<
  RowOf<"GrowOut">,
  | "id"
  | "name"
  | "varietyId"
  | "sown"
  | "sownFirst"
  | "plantsStanding"
  | "malesStanding"
  | "roguedBeforePollen"
  | "seedParentsPlanned"
  | "detasselled"
  | "selfingRate"
  | "stewardId"
>;
type HeadRow = GrowOutRow &
  Omit<CropOfHarvest, "key"> & {
    readonly variety: string;
    readonly seedCoat: string | null;
    readonly cropKey: string;
    readonly steward: string | null;
  };

function headSelection(id: string): Selection<HeadRow> {
  return {
    columns: {
      ...{ id: "text", name: "text", varietyId: "text", sown: "text", sownFirst: "text", plantsStanding: "number" },
      ...{ malesStanding: "number", roguedBeforePollen: "number", seedParentsPlanned: "number", detasselled: "number" },
      ...{ selfingRate: "number", stewardId: "text", variety: "text", seedCoat: "text", cropKey: "text" },
      ...{ commonName: "text", matingSystem: "text", selfIncompatible: "text", outcrossingPctMin: "number" },
      ...{ outcrossingPctMax: "number", seedsPerGramMin: "number", seedsPerGramMax: "number", steward: "text" },
    },
    rows: sql`
      SELECT g.*, v."name" AS "variety", v."seedCoat", c."key" AS "cropKey", c."commonName", c."matingSystem", c."selfIncompatible",
        c."outcrossingPctMin", c."outcrossingPctMax", c."seedsPerGramMin", c."seedsPerGramMax", p."name" AS "steward"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" p ON p."stewardId" = g."stewardId" WHERE g."id" = ${id}`,
  };
}

type HarvestRow = RowOf<"Harvest"> & { readonly lotNumber: string | null; readonly thousandSeedGrams: number | null };

function harvestsSelection(id: string): Selection<HarvestRow> {
  return {
    columns: { ...harvestColumns, lotNumber: "text", thousandSeedGrams: "number" },
    rows: sql`
      SELECT h.*, l."number" AS "lotNumber", l."thousandSeedGrams" FROM "Harvest" h LEFT JOIN "Lot" m ON m."id" = h."lotId"
      LEFT JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")
      WHERE h."growOutId" = ${id} AND NOT EXISTS (SELECT 1 FROM "Harvest" n WHERE n."replacesId" = h."id") ORDER BY h."id"`,
  };
}

function seedParentsSelection(id: string): Selection<SeedParentRead & { readonly harvestId: string }> {
  return {
    columns: {
      ...{ id: "text", harvestId: "text", plantId: "text", plant: "text" },
      ...{ share: "number", grams: "number", seeds: "number", lost: "text" },
    },
    rows: sql`
      SELECT s."id", s."harvestId", p."id" AS "plantId", p."name" AS "plant", s."share", s."grams", s."seeds", s."lost"
      FROM "HarvestSeedParent" s JOIN "Harvest" h ON h."id" = s."harvestId"
      LEFT JOIN "Plant" o ON o."id" = s."plantId" LEFT JOIN "Plant" p ON p."id" = COALESCE(o."sameAsId", o."id") WHERE h."growOutId" = ${id} ORDER BY s."id"`,
  };
}

function numbersSelection(id: string): Selection<{ number: string }> {
  return {
    columns: { number: "text" },
    rows: sql`SELECT l."number" FROM "Lot" l JOIN "GrowOut" g ON g."varietyId" = l."varietyId" WHERE g."id" = ${id} ORDER BY l."id"`,
  };
}

type PlantRow = Omit<PlantForHarvest, "kept"> & { readonly kept: boolean | null; readonly markId: string | null };

function plantsSelection(id: string): Selection<PlantRow> {
  return {
    columns: { id: "text", name: "text", cell: "text", kept: "flag", tag: "text", intent: "text", markId: "text" },
    rows: sql`
      SELECT p."id", p."name", p."cell", p."kept", m."tag", m."intent", m."id" AS "markId" FROM "Plant" o
      JOIN "Plant" p ON p."id" = COALESCE(o."sameAsId", o."id")
      LEFT JOIN "Mark" m ON m."plantId" = o."id" AND NOT EXISTS (SELECT 1 FROM "Mark" n WHERE n."replacesId" = m."id")
      WHERE o."growOutId" = ${id} ORDER BY p."id", m."id"`,
  };
}

function plantsWithMarks(rows: readonly PlantRow[]) {
  return [...grouped(rows, (row) => row.id).values()].flatMap((own) => {
    const last = own.at(-1);
    if (!last) return [];
    const { markId: _mark, ...plant } = last;
    const marks = own.flatMap(({ markId, intent }) => (markId === null ? [] : [{ id: markId, intent: intent ?? "" }]));
    return [{ ...plant, marks }];
  });
}
