import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { RowOf } from "../change-set/records";
import { profileOfCrop } from "../crops/profile-of-crop";
import { figuresOfAll, type LotFigures } from "../figures/read-figures";
import { seasonRecords } from "../season/read-season-records";
import type { SeasonLot } from "../season/records";
import { storedRows } from "../season/stored-rows";
import { type Waiting, waitingItems } from "../season/waiting";
import type { Holder } from "./holders";
import { founderLinesOf, type LineageStanding, lineageStanding } from "./lineage-standing";
import { type TestOfVariety, testsOfVariety } from "./tests-of-variety";

/** A lot of a variety with its figures. */
export interface LotOfVariety extends SeasonLot {
  readonly figures: LotFigures | null;
  readonly standing: LineageStanding;
}

/** A grow-out of a variety in a line. */
export interface GrowOutOfVariety {
  readonly id: string;
  readonly name: string;
  readonly sown: string | null;
  readonly sownFirst: string | null;
  readonly sownLast: string | null;
  readonly stewardId: string | null;
  readonly purpose: string | null;
  readonly plantsStanding: number | null;
  readonly seedParents: number | null;
  readonly outcome: string | null;
  readonly effectiveSize: number | null;
  /** lots harvested from it */
  readonly lots: readonly { id: string; number: string }[];
}

/** A variety with all that its page shows. */
export interface VarietyRead {
  readonly variety: RowOf<"Variety">;
  readonly crop: RowOf<"Crop">;
  readonly otherNames: readonly RowOf<"VarietyName">[];
  readonly traits: readonly RowOf<"TypeTrait">[];
  readonly strains: readonly RowOf<"Strain">[];
  readonly stories: readonly RowOf<"Story">[];
  readonly lots: readonly LotOfVariety[];
  readonly growOuts: readonly GrowOutOfVariety[];
  readonly holders: readonly Holder[];
  readonly tests: readonly TestOfVariety[];
  readonly waiting: readonly Waiting[];
  /** names of stewards by id */
  readonly people: ReadonlyMap<string, string>;
  /** the numbers of the lots of any variety, by id, for links */
  readonly lotNumbers: ReadonlyMap<string, string>;
}

/** A variety by its id; null where there is none. Eleven statements where nothing changed since the registry was last read. */
export async function readVariety(
  db: Database,
  id: string,
  settings: Settings,
  today: CivilDay,
): Promise<VarietyRead | null> {
  const found = await db.read.variety.findUnique({
    where: { id },
    include: {
      crop: { include: { overrides: true } },
      names: { orderBy: { id: "asc" } },
      typeTraits: { orderBy: { id: "asc" } },
      strains: { orderBy: { id: "asc" } },
      stories: { orderBy: { id: "asc" } },
    },
  });
  if (!found) return null;
  const { crop: cropWithOwn, names, typeTraits, strains, stories, ...variety } = found;
  const { overrides, ...listed } = cropWithOwn;
  const stored = await storedRows(db);
  const figures = await figuresOfAll(db);
  const records = seasonRecords(stored, figures, settings, today);
  const matingSystem = records.varieties.get(id)?.crop.matingSystem ?? null;
  const lines = founderLinesOf(stored.lots);
  const lots = records.lots
    .filter((lot) => lot.varietyId === id)
    .map((lot): LotOfVariety => {
      const own = figures.get(lot.id) ?? null;
      return { ...lot, figures: own, standing: own ? lineageStanding(own, matingSystem, lines) : "plants not known" };
    });
  const growOuts = await db.read.growOut.findMany({
    where: { varietyId: id },
    select: {
      id: true,
      name: true,
      sown: true,
      sownFirst: true,
      sownLast: true,
      stewardId: true,
      purpose: true,
      plantsStanding: true,
      seedParents: true,
      outcome: true,
    },
    orderBy: [{ sownFirst: "asc" }, { id: "asc" }],
  });
  return {
    variety,
    crop: profileOfCrop(listed, overrides),
    otherNames: names,
    traits: typeTraits,
    strains,
    stories,
    lots,
    growOuts: growOuts.map((growOut) => {
      const from = records.lots.filter((lot) => lot.growOutId === growOut.id);
      return {
        ...growOut,
        effectiveSize: from[0]?.effectiveSize ?? null,
        lots: from.map((lot) => ({ id: lot.id, number: lot.number })),
      };
    }),
    holders: records.holders.get(id) ?? [],
    tests: await testsOfVariety(db, id),
    waiting: waitingItems(records).filter((item) => item.varietyId === id),
    people: records.names,
    lotNumbers: new Map(stored.lots.map((lot) => [lot.id, lot.number])),
  };
}
