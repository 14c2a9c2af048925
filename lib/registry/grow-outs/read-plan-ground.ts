import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type PlantsWanted, plantsWanted } from "../reserve/plants-wanted";
import { proposedName } from "./name-of-grow-out";
import { readLotsToSow } from "./read-lots-to-sow";
import type { LotToSow } from "./sowing-plan";
import { ownValuesOfVariety, type VarietyOfPlan, varietyOfPlan, varietySelection } from "./variety-of-plan";

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
  readonly variety: VarietyOfPlan["variety"];
  readonly crop: VarietyOfPlan["crop"];
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
      WHERE v."cropId" = (SELECT "cropId" FROM "Variety" WHERE "id" = ${varietyId}) AND v."id" <> ${varietyId} AND l."sameAsId" IS NULL
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
  const lists = await readTogether(db, {
    varieties: varietySelection(varietyId),
    own: ownValuesOfVariety(varietyId),
    plots: plotList,
    stewards: stewardList,
    crosses: crossList(varietyId),
  });
  const [row] = lists.varieties;
  if (!row) return null;
  const { variety, crop } = varietyOfPlan(row, lists.own);
  return {
    variety,
    crop,
    wanted: plantsWanted(variety.plantsWanted, crop.plantsMin),
    lots: await readLotsToSow(db, varietyId, question),
    crosses: lists.crosses,
    plots: lists.plots,
    stewards: lists.stewards.map((each) => each.name),
    name: await proposedName(db.read, variety.name, question.today, question.settings.hemisphere),
  };
}
