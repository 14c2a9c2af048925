import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import { type WhereItStands, whereItStands } from "./where-it-stands";

/** A grow-out that is planned or stands, as a list shows it. */
export interface GrowOutNow {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly lifeCycle: string | null;
  readonly sown: string | null;
  readonly plantsPlanned: number | null;
  readonly plantsStanding: number | null;
  readonly steward: string | null;
  readonly plot: string | null;
  readonly stands: WhereItStands;
}

interface Row {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly cropId: string;
  readonly cropKey: string;
  readonly lifeCycle: string | null;
  readonly daysToSeedMax: number | null;
  readonly sown: string | null;
  readonly sownFirst: string | null;
  readonly sownLast: string | null;
  readonly plantsPlanned: number | null;
  readonly plantsStanding: number | null;
  readonly steward: string | null;
  readonly plot: string | null;
  readonly counted: string | null;
  readonly rogued: string | null;
  readonly flowered: string | null;
  readonly harvested: string | null;
  readonly lots: number;
  readonly lotYear: string | null;
}

/** Grow-outs of which nobody wrote an end; counted, rogued and so on are the last days of each kind on record. */
const notEnded: Selection<Row> = {
  columns: {
    id: "text",
    name: "text",
    varietyId: "text",
    variety: "text",
    seedCoat: "text",
    cropId: "text",
    cropKey: "text",
    lifeCycle: "text",
    daysToSeedMax: "number",
    sown: "text",
    sownFirst: "text",
    sownLast: "text",
    plantsPlanned: "number",
    plantsStanding: "number",
    steward: "text",
    plot: "text",
    counted: "text",
    rogued: "text",
    flowered: "text",
    harvested: "text",
    lots: "number",
    lotYear: "text",
  },
  rows: sql`
    SELECT g."id", g."name", g."varietyId", v."name" AS "variety", v."seedCoat", c."id" AS "cropId", c."key" AS "cropKey", c."lifeCycle",
      c."daysToSeedMax", g."sown", g."sownFirst", g."sownLast", g."plantsPlanned", g."plantsStanding", s."name" AS "steward",
      (SELECT p."name" FROM "GrowOutPlot" t JOIN "Plot" p ON p."id" = t."plotId" WHERE t."growOutId" = g."id" AND t."id" =
        (SELECT MAX(o."id") FROM "GrowOutPlot" o WHERE o."growOutId" = g."id")) AS "plot",
      (SELECT MAX(x."onLast") FROM "StageCount" x WHERE x."growOutId" = g."id") AS "counted",
      (SELECT MAX(x."onLast") FROM "RoguePass" x WHERE x."growOutId" = g."id") AS "rogued",
      (SELECT MAX(x."onLast") FROM "FloweringNote" x WHERE x."growOutId" = g."id") AS "flowered",
      (SELECT MAX(x."onLast") FROM "Harvest" x WHERE x."growOutId" = g."id") AS "harvested",
      (SELECT COUNT(*) FROM "Lot" x WHERE x."growOutId" = g."id") AS "lots",
      (SELECT MAX(x."yearLast") FROM "Lot" x WHERE x."growOutId" = g."id") AS "lotYear"
    FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" s ON s."stewardId" = g."stewardId"
    WHERE g."endedOn" IS NULL AND g."outcome" IS NULL`,
};

const ownValues: Selection<{ cropId: string; field: string; value: string }> = {
  columns: { cropId: "text", field: "text", value: "text" },
  rows: sql`SELECT o."cropId", o."field", o."value" FROM "CropOverride" o WHERE o."field" IN ('lifeCycle', 'daysToSeedMax') ORDER BY o."id"`,
};

/** What is planned and what stands now, the planned by name, the standing by the day of sowing, the newest first. One statement. */
export async function growOutsNow(
  db: Database,
  today: CivilDay,
  varietyId?: string,
): Promise<{ planned: GrowOutNow[]; standing: GrowOutNow[] }> {
  const found = await readTogether(db, { rows: notEnded, own: ownValues });
  const own = grouped(found.own, (each) => each.cropId);
  const now = found.rows
    .filter((row) => varietyId === undefined || row.varietyId === varietyId)
    .map((row) => ({ sownFirst: row.sownFirst ?? "", ...nowOf(row, own.get(row.cropId) ?? [], today) }));
  return {
    planned: now.filter(({ stands }) => stands.stage === "planned").sort((a, b) => (a.name < b.name ? -1 : 1)),
    standing: now
      .filter(({ stands }) => stands.stage === "standing")
      .sort((a, b) => (a.sownFirst === b.sownFirst ? (a.name < b.name ? -1 : 1) : a.sownFirst < b.sownFirst ? 1 : -1)),
  };
}

function nowOf(row: Row, own: readonly { field: string; value: string }[], today: CivilDay): GrowOutNow {
  const { id, name, varietyId, variety, seedCoat, cropKey, sown, sownFirst, sownLast, plantsPlanned, plantsStanding } =
    row;
  const { lifeCycle, daysToSeedMax } = profileOfCrop(
    { lifeCycle: row.lifeCycle, daysToSeedMax: row.daysToSeedMax },
    own,
  );
  const seen = [row.counted, row.rogued, row.flowered, row.harvested, row.lotYear].filter((day) => day !== null).sort();
  const begun = seen.length > 0 || row.lots > 0 || plantsStanding !== null;
  const time = {
    sownFirst,
    sownLast,
    endedOn: null,
    outcome: null,
    lifeCycle,
    daysToSeedMax,
    begun,
    lastSeen: seen.at(-1) ?? null,
  };
  return {
    ...{ id, name, varietyId, variety, seedCoat, cropKey, lifeCycle, sown, plantsPlanned, plantsStanding },
    ...{ steward: row.steward, plot: row.plot, stands: whereItStands(time, today) },
  };
}
