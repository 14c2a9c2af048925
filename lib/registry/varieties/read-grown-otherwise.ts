import { type Database, readRows, type Selection, sql } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import {
  defaultSelfingRate,
  equilibriumInbreeding,
  type Mating,
  selfIncompatible,
  separateSexes,
} from "@/lib/science/crops/mating";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import type { LineageLot } from "@/lib/science/lineage/lots";
import type { LineageSpanInput } from "@/lib/science/lineage/span-lots";
import { lineageNodes, lotNode } from "../figures/lineage-nodes";
import { linesAsKnown } from "../figures/lines-as-known";
import { figuresOfVariety, type LotFigures } from "../figures/read-figures";
import { readLineage } from "../figures/read-records";
import { readPlanGround } from "../grow-outs/read-plan-ground";
import { type FounderLines, founderLinesOf, type LineageStanding, lineageStanding } from "./lineage-standing";
import { ownKept } from "./own-kept";
import { type PlannedSize, plannedSize } from "./planned-size";
import { spanShown } from "./span-shown";

/** A lot that could be sown in the next grow-out. */
export interface LotToGrowOn {
  readonly id: string;
  /** its name in the lineage */
  readonly node: string;
  readonly number: string;
  readonly year: string | null;
  readonly holder: string | null;
  readonly grams: number | null;
  readonly standing: LineageStanding;
  /** some of its genes came by foreign pollen */
  readonly foreign: boolean;
  readonly founders: readonly string[];
  /** where its records leave a span: what was taken for its ends; null where its line is a point, or nothing can be told of it */
  readonly between: BetweenEnds | null;
  /** what stands against sowing it, after its number */
  readonly objections: readonly string[];
}

/** Why what a lot holds lies between two ends. */
export interface BetweenEnds {
  /** grow-outs with which the measure begins, because nothing bounds what went before */
  readonly since: readonly string[];
  /** each one sentence without its full stop */
  readonly assumed: readonly string[];
}

/** What would be done if nobody thought again: the grow-out that is planned, else what the variety or the crop asks for. */
export interface PlanOfToday {
  readonly lots: readonly string[];
  readonly size: PlannedSize;
  /** the grow-out that is planned; null where none is */
  readonly growOut: { readonly id: string; readonly name: string } | null;
}

/** All that is needed to reckon, without the registry, what a variety would keep if it were grown otherwise. */
export interface GroundToGrowOn {
  readonly variety: { readonly id: string; readonly name: string; readonly seedCoat: string | null };
  readonly crop: {
    readonly key: string;
    readonly commonName: string;
    readonly clonal: boolean;
    readonly matingSystem: string | null;
  };
  /** the newest first */
  readonly lots: readonly LotToGrowOn[];
  /** the lineage of those lots that have one, with all their ancestors */
  readonly lineage: readonly LineageLot[];
  /** the same lines as far as they are known, with those that leave a span; null where no lot that may be sown leaves one */
  readonly known: LineageSpanInput | null;
  readonly mating: Pick<PlotParents, "sexes" | "selfingRate" | "selfIncompatible">;
  /** F of a crop that has long selfed at its rate */
  readonly usualInbreeding: number;
  readonly today: PlanOfToday | null;
}

interface Question {
  readonly settings: Settings;
  readonly today: CivilDay;
}

/** Reads the lots that may be sown with their lineage, and what is planned. Null where there is no such variety. */
export async function readGrownOtherwise(
  db: Database,
  varietyId: string,
  question: Question,
): Promise<GroundToGrowOn | null> {
  const plan = await readPlanGround(db, varietyId, question);
  if (!plan) return null;
  const { variety, crop } = plan;
  const cropId = (await db.read.variety.findUniqueOrThrow({ where: { id: varietyId }, select: { cropId: true } }))
    .cropId;
  const records = await readLineage(db, [cropId]);
  const figures = await figuresOfVariety(db, varietyId);
  const founders = founderLinesOf(await readRows(db, founderLots(cropId)));
  const held = plan.lots.filter((lot) => lot.grams === null || lot.grams > 0);
  const lots = held.map((lot): LotToGrowOn => {
    const own = figures.get(lot.id);
    return {
      ...{ id: lot.id, number: lot.number, year: lot.year, holder: lot.holder, grams: lot.grams },
      node: lotNode(lot.id),
      objections: lot.objections,
      foreign: (own?.foreignAncestry ?? 0) > 1e-9,
      founders: own?.founders ?? [],
      ...lineOf(own, crop.matingSystem, founders),
    };
  });
  const counted = lots.filter(({ standing }) => standing === "counted").map(({ node }) => node);
  const told = lots.filter((lot) => lot.between !== null || (lot.standing === "counted" && !lot.foreign));
  const spanned = !crop.clonal && lots.some(({ between }) => between !== null);
  const nodes = crop.clonal ? [] : lineageNodes(records).map(({ lot }) => lot);
  const planned = await readRows(db, plannedGrowOuts(varietyId));
  return {
    variety,
    crop: { key: crop.key, commonName: crop.commonName, clonal: crop.clonal, matingSystem: crop.matingSystem },
    lots,
    lineage: ancestryOf(nodes, counted),
    known: spanned
      ? linesAsKnown(
          records,
          told.map(({ id }) => id),
        )
      : null,
    mating: matingOf(crop),
    usualInbreeding: equilibriumInbreeding(defaultSelfingRate(crop)),
    today: planOfToday(lots, planned, { ...variety, cropFewest: crop.plantsMin }, separateSexes(crop)),
  };
}

/** How a lot's line stands, and why it lies between two ends. Where foreign genes came in a span says nothing of the variety's own. */
function lineOf(
  figures: LotFigures | undefined,
  matingSystem: string | null,
  founders: FounderLines,
): Pick<LotToGrowOn, "standing" | "between"> {
  if (!figures) return { standing: "plants not known", between: null };
  const standing = lineageStanding(figures, matingSystem, founders);
  const span = ownKept(figures, standing).low === null ? null : spanShown(standing, figures);
  return {
    standing,
    between: span && { since: span.since.map(({ name }) => name), assumed: span.assumed },
  };
}

function matingOf(profile: Mating): GroundToGrowOn["mating"] {
  if (separateSexes(profile)) return { sexes: "separate", selfingRate: 0 };
  return {
    sexes: "hermaphrodite",
    selfingRate: defaultSelfingRate(profile),
    selfIncompatible: selfIncompatible(profile),
  };
}

function founderLots(cropId: string): Selection<{ number: string; kind: string; founderLines: string | null }> {
  return {
    columns: { number: "text", kind: "text", founderLines: "text" },
    rows: sql`
      SELECT l."number", l."kind", l."founderLines" FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId"
      WHERE v."cropId" = ${cropId} AND l."kind" = 'founder' ORDER BY l."id"`,
  };
}

interface PlannedRow {
  readonly id: string;
  readonly name: string;
  readonly plantsPlanned: number | null;
  readonly seedParentsPlanned: number | null;
  readonly lotId: string | null;
}

/** Grow-outs that are planned and not sown yet, the newest first, a row a lot. */
function plannedGrowOuts(varietyId: string): Selection<PlannedRow> {
  return {
    columns: { id: "text", name: "text", plantsPlanned: "number", seedParentsPlanned: "number", lotId: "text" },
    rows: sql`
      SELECT g."id", g."name", g."plantsPlanned", g."seedParentsPlanned", COALESCE(m."sameAsId", m."id") AS "lotId" FROM "GrowOut" g
      LEFT JOIN "GrowOutParent" x ON x."growOutId" = g."id" LEFT JOIN "Lot" m ON m."id" = x."lotId"
      WHERE g."varietyId" = ${varietyId} AND g."sown" IS NULL AND g."outcome" IS NULL AND g."endedOn" IS NULL AND g."plantsPlanned" IS NOT NULL
        AND NOT EXISTS (SELECT 1 FROM "Lot" l WHERE l."growOutId" = g."id") ORDER BY g."id" DESC, x."id"`,
  };
}

interface Wanted {
  readonly plantsWanted: number | null;
  readonly seedParentsWanted: number | null;
  readonly cropFewest: number | null;
}

function planOfToday(
  lots: readonly LotToGrowOn[],
  planned: readonly PlannedRow[],
  wanted: Wanted,
  separate: boolean,
): PlanOfToday | null {
  const [next] = planned;
  const size = plannedSize(
    {
      ...wanted,
      plantsPlanned: next?.plantsPlanned ?? null,
      seedParentsPlanned: next?.seedParentsPlanned ?? null,
    },
    separate,
  );
  if (size === null) return null;
  const own = new Set(lots.map(({ id }) => id));
  const sown = planned.flatMap(({ id, lotId }) => (id === next?.id && lotId !== null && own.has(lotId) ? [lotId] : []));
  const growOut = next && sown.length > 0 ? { id: next.id, name: next.name } : null;
  const usual = usualLot(lots);
  return { lots: growOut ? sown : usual ? [usual] : [], size, growOut };
}

/** The newest lot that nothing stands against, of those with a figure or a span first. */
function usualLot(newest: readonly LotToGrowOn[]): string | null {
  const free = newest.filter(({ objections }) => objections.length === 0);
  const found =
    free.find(({ standing, between }) => standing === "counted" || between !== null) ?? free[0] ?? newest[0];
  return found?.id ?? null;
}
