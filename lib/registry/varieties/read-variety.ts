import { type Database, readTogether } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { grouped } from "../change-set/grouped";
import type { RowOf } from "../change-set/records";
import { figuresOfAll, type LotFigures } from "../figures/read-figures";
import { type KinshipRead, kinshipsOfVariety } from "../kinships/read-kinships";
import { seasonRecords } from "../season/read-season-records";
import type { SeasonCrop, SeasonGrowOut, SeasonLot, SeasonRecords } from "../season/records";
import { storedRows } from "../season/stored-rows";
import { type Waiting, waitingItems } from "../season/waiting";
import type { Holder } from "./holders";
import { founderLinesOf, type LineageStanding, lineageStanding } from "./lineage-standing";
import { type TestOfVariety, testsOfVariety, testsSelection } from "./tests-of-variety";
import { varietySelections } from "./variety-selections";

/** A lot of a variety with its figures. */
export interface LotOfVariety extends SeasonLot {
  readonly figures: LotFigures | null;
  readonly standing: LineageStanding;
}

/** A grow-out of a variety in a line, with the lots harvested from it. */
export interface GrowOutOfVariety extends SeasonGrowOut {
  readonly effectiveSize: number | null;
  readonly lots: readonly { id: string; number: string }[];
}

/** A variety with all that its page shows. */
export interface VarietyRead {
  readonly variety: RowOf<"Variety">;
  readonly crop: SeasonCrop;
  readonly otherNames: readonly RowOf<"VarietyName">[];
  /** varieties that somebody takes for the same, told on this page or on theirs */
  readonly possiblySame: readonly { readonly varietyId: string; readonly name: string; readonly says: string | null }[];
  /** the other varieties of its crop */
  readonly ofCrop: readonly { readonly id: string; readonly name: string }[];
  readonly traits: readonly RowOf<"TypeTrait">[];
  readonly strains: readonly RowOf<"Strain">[];
  readonly stories: readonly RowOf<"Story">[];
  readonly lots: readonly LotOfVariety[];
  readonly growOuts: readonly GrowOutOfVariety[];
  readonly holders: readonly Holder[];
  readonly tests: readonly TestOfVariety[];
  /** what is recorded of how its founder lots are related */
  readonly kinships: readonly KinshipRead[];
  readonly waiting: readonly Waiting[];
  /** names of stewards by id */
  readonly people: ReadonlyMap<string, string>;
}

/** A variety by its id; null where there is none. Three statements where nothing changed since the registry was last read. */
export async function readVariety(
  db: Database,
  id: string,
  settings: Settings,
  today: CivilDay,
): Promise<VarietyRead | null> {
  const found = await readTogether(db, {
    ...varietySelections(id),
    tests: testsSelection(id),
    kinships: kinshipsOfVariety(id),
  });
  const [variety] = found.varieties;
  if (!variety) return null;
  const { traits, strains, stories } = found;
  const stored = await storedRows(db);
  const figures = await figuresOfAll(db);
  const records = seasonRecords(stored, figures, settings, today);
  const crop = records.varieties.get(id)?.crop;
  if (!crop) return null;
  const lines = founderLinesOf(stored.lots);
  const lots = records.lots
    .filter((lot) => lot.varietyId === id)
    .map((lot): LotOfVariety => {
      const own = figures.get(lot.id) ?? null;
      const standing = own ? lineageStanding(own, crop.matingSystem, lines) : "plants not known";
      return { ...lot, figures: own, standing };
    });
  return {
    variety,
    crop,
    otherNames: stored.otherNames.filter((name) => name.varietyId === id && name.possiblySameAsId === null),
    possiblySame: stored.otherNames.flatMap(({ varietyId, possiblySameAsId, source }) => {
      if (possiblySameAsId === null || (varietyId !== id && possiblySameAsId !== id)) return [];
      const other = records.varieties.get(varietyId === id ? possiblySameAsId : varietyId);
      return other ? [{ varietyId: other.id, name: other.name, says: source }] : [];
    }),
    ofCrop: [...records.varieties.values()].flatMap((each) =>
      each.id !== id && each.crop.id === crop.id ? [{ id: each.id, name: each.name }] : [],
    ),
    traits,
    strains,
    stories,
    lots,
    growOuts: growOutsOf(id, records),
    holders: records.holders.get(id) ?? [],
    tests: testsOfVariety(found.tests),
    kinships: found.kinships,
    waiting: waitingItems(records).filter((item) => item.varietyId === id),
    people: records.names,
  };
}

/** The grow-outs of a variety by the first possible day of sowing, those without a date first. */
function growOutsOf(varietyId: string, { growOuts, lots }: SeasonRecords): GrowOutOfVariety[] {
  const from = grouped(lots, (lot) => lot.growOutId);
  return growOuts
    .filter((growOut) => growOut.varietyId === varietyId)
    .sort((a, b) =>
      (a.sownFirst ?? "") < (b.sownFirst ?? "") ? -1 : (a.sownFirst ?? "") > (b.sownFirst ?? "") ? 1 : 0,
    )
    .map((growOut) => {
      const harvested = from.get(growOut.id) ?? [];
      return {
        ...growOut,
        effectiveSize: harvested[0]?.effectiveSize ?? null,
        lots: harvested.map((lot) => ({ id: lot.id, number: lot.number })),
      };
    });
}
