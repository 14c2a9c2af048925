import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { profileOfCrop } from "../crops/profile-of-crop";
import { type PlantsWanted, plantsWanted } from "../reserve/plants-wanted";
import { proposedName } from "./name-of-grow-out";
import { readLotsToSow } from "./read-lots-to-sow";
import type { LotToSow } from "./sowing-plan";

/** A lot of another variety of the crop: with it a grow-out is a cross. */
export interface LotForCross {
  readonly id: string;
  readonly number: string;
  readonly variety: string;
  readonly year: string | null;
}

export interface PlotInList {
  readonly id: string;
  readonly name: string;
  readonly steward: string | null;
  readonly place: string | null;
}

/** What a plan is made on. */
export interface PlanGround {
  readonly variety: {
    readonly id: string;
    readonly name: string;
    readonly seedCoat: string | null;
    readonly seedParentsWanted: number | null;
  };
  readonly crop: {
    readonly key: string;
    readonly commonName: string;
    readonly clonal: boolean;
    readonly lifeCycle: string | null;
    readonly matingSystem: string | null;
    readonly selfIncompatible: string | null;
    readonly outcrossingPctMin: number | null;
    readonly outcrossingPctMax: number | null;
    readonly plantsRecommendedMin: number | null;
    readonly plantsRecommendedMax: number | null;
  };
  readonly wanted: PlantsWanted | null;
  readonly lots: readonly LotToSow[];
  readonly crosses: readonly LotForCross[];
  readonly plots: readonly PlotInList[];
  readonly stewards: readonly string[];
  /** a name that is free */
  readonly name: string;
}

const plotList: Selection<PlotInList> = {
  columns: { id: "text", name: "text", steward: "text", place: "text" },
  rows: sql`SELECT p."id", p."name", s."name" AS "steward", p."place" FROM "Plot" p LEFT JOIN "Person" s ON s."stewardId" = p."stewardId" ORDER BY p."nameKey", p."id"`,
};

const stewardList: Selection<{ name: string }> = {
  columns: { name: "text" },
  rows: sql`SELECT p."name" FROM "Person" p ORDER BY p."nameKey"`,
};

/** Lots of the other varieties of a variety’s crop that may still hold seed. */
export function crossList(varietyId: string): Selection<LotForCross> {
  return {
    columns: { id: "text", number: "text", variety: "text", year: "text" },
    rows: sql`
      SELECT l."id", l."number", v."name" AS "variety", l."year" FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId"
      WHERE v."cropId" = (SELECT "cropId" FROM "Variety" WHERE "id" = ${varietyId}) AND v."id" <> ${varietyId}
        AND COALESCE(l."status", '') NOT IN ('finished', 'dead', 'discarded') ORDER BY v."nameKey", l."id"`,
  };
}

/** All plots by name, with whose they are. One statement. */
export async function listPlots(db: Database): Promise<PlotInList[]> {
  return (await readTogether(db, { plots: plotList })).plots;
}

/** Everything that a plan of a variety is made on; null where there is no such variety. */
export async function readPlanGround(
  db: Database,
  varietyId: string,
  question: { readonly settings: Settings; readonly today: CivilDay },
): Promise<PlanGround | null> {
  const variety = await db.read.variety.findUnique({
    where: { id: varietyId },
    include: { crop: { include: { overrides: true } } },
  });
  if (!variety) return null;
  const { overrides, ...listed } = variety.crop;
  const crop = profileOfCrop(listed, overrides);
  const lists = await readTogether(db, { plots: plotList, stewards: stewardList, crosses: crossList(varietyId) });
  const { id, name, seedCoat, seedParentsWanted } = variety;
  return {
    variety: { id, name, seedCoat, seedParentsWanted },
    crop: { ...crop, clonal: crop.matingSystem === "clonal" },
    wanted: plantsWanted(variety.plantsWanted, crop.plantsMin),
    lots: await readLotsToSow(db, varietyId, question),
    crosses: lists.crosses,
    plots: lists.plots,
    stewards: lists.stewards.map((each) => each.name),
    name: await proposedName(db.read, name, question.today, question.settings.hemisphere),
  };
}
