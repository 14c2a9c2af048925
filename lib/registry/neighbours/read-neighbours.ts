import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { OwnInTable } from "@/lib/science/tables/own-in-table";
import { profileOfCrop } from "../crops/profile-of-crop";
import { ownTableValues } from "../tables/own-table-values";

/** The grow-out whose neighbours they are, its crop with the steward's own values in place. */
export interface GroundOfNeighbours {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly isolationWantedM: number | null;
  readonly neighboursLookedOn: string | null;
  readonly sown: string | null;
  readonly plantsStanding: number | null;
  readonly cropId: string;
  readonly cropKey: string;
  readonly cropName: string;
  readonly latinName: string | null;
  readonly crossingGroup: string | null;
  readonly matingSystem: string | null;
  readonly clonal: boolean;
  readonly wildRelatives: string | null;
  readonly isolationHomeMinM: number | null;
  readonly isolationHomeMaxM: number | null;
  readonly isolationStewardMinM: number | null;
  readonly isolationStewardMaxM: number | null;
  /** where the crop list has its values from */
  readonly sources: string | null;
}

/** A neighbour source as it is written, with the names of what it points to. */
export interface NeighbourRow {
  readonly id: string;
  readonly what: string;
  readonly cropId: string | null;
  readonly cropKey: string | null;
  readonly cropName: string | null;
  readonly latinName: string | null;
  readonly crossingGroup: string | null;
  readonly varietyId: string | null;
  readonly variety: string | null;
  readonly plotId: string | null;
  readonly plot: string | null;
  readonly distanceMetres: number | null;
  readonly bearing: string | null;
  readonly sizeM2: number | null;
  readonly plants: number | null;
  readonly windowFirst: string | null;
  readonly windowLast: string | null;
  readonly howSure: string | null;
  readonly note: string | null;
}

/** A flowering note that stands; neighbourId null: of the grow-out itself. */
export interface NoteRow {
  readonly id: string;
  readonly neighbourId: string | null;
  readonly organ: string;
  readonly moment: string;
  readonly on: string;
  readonly onFirst: string;
  readonly onLast: string;
  readonly note: string | null;
}

export interface MethodRow {
  readonly id: string;
  readonly method: string;
  readonly evidence: string | null;
  readonly fromOn: string | null;
  readonly toOn: string | null;
  readonly note: string | null;
}

export interface PlotRow {
  readonly id: string;
  readonly name: string;
  readonly areaM2: number | null;
}

export interface ClaimedLot {
  readonly id: string;
  readonly number: string;
  readonly isolationGrade: string | null;
  readonly isolationReasons: string | null;
}

/** What is on record of the neighbourhood of a grow-out. */
export interface NeighboursRead {
  readonly ground: GroundOfNeighbours;
  readonly neighbours: readonly NeighbourRow[];
  readonly notes: readonly NoteRow[];
  readonly methods: readonly MethodRow[];
  /** in the order in which the plants stood on them */
  readonly plots: readonly PlotRow[];
  readonly lots: readonly ClaimedLot[];
  /** the steward's own numbers in published tables */
  readonly ownInTables: readonly OwnInTable[];
}

/** What is on record of a grow-out's neighbourhood; null where there is no such grow-out. One statement, and that of own values in tables. */
export async function readNeighbours(db: Database, growOutId: string): Promise<NeighboursRead | null> {
  const found = await readTogether(db, {
    grounds: groundSelection(growOutId),
    neighbours: sourcesSelection(growOutId),
    rest: restSelection(growOutId),
  });
  const [row] = found.grounds;
  if (!row) return null;
  const rest = grouped(found.rest);
  const own = (rest.get("own") ?? []).map(({ a, b }) => ({ field: a ?? "", value: b ?? "" }));
  const ground = profileOfCrop(row, own);
  return {
    ownInTables: await ownTableValues(db),
    ground: { ...ground, clonal: row.clonal || ground.matingSystem === "clonal" },
    neighbours: found.neighbours,
    notes: (rest.get("note") ?? []).map(({ id, a, b, c, d, e, f, g }) => ({
      id,
      neighbourId: a,
      organ: b ?? "flower",
      moment: c ?? "",
      on: d ?? "",
      onFirst: e ?? "",
      onLast: f ?? "",
      note: g,
    })),
    methods: (rest.get("method") ?? []).map(({ id, a, b, c, d, e }) => ({
      id,
      method: a ?? "",
      evidence: b,
      fromOn: c,
      toOn: d,
      note: e,
    })),
    plots: (rest.get("plot") ?? []).map(({ id, a, b }) => ({
      id,
      name: a ?? "",
      areaM2: b === null ? null : Number(b),
    })),
    lots: (rest.get("lot") ?? [])
      .map(({ id, a, b, c }) => ({ id, number: a ?? "", isolationGrade: b, isolationReasons: c }))
      .sort((one, other) => (one.number < other.number ? -1 : 1)),
  };
}

interface RestRow {
  readonly kind: string;
  readonly id: string;
  readonly a: string | null;
  readonly b: string | null;
  readonly c: string | null;
  readonly d: string | null;
  readonly e: string | null;
  readonly f: string | null;
  readonly g: string | null;
}

function groundSelection(growOutId: string): Selection<GroundOfNeighbours> {
  return {
    columns: {
      ...{ id: "text", name: "text", varietyId: "text", variety: "text", seedCoat: "text", isolationWantedM: "number" },
      ...{ neighboursLookedOn: "text", sown: "text", plantsStanding: "number", cropId: "text", cropKey: "text" },
      ...{ cropName: "text", latinName: "text", crossingGroup: "text", matingSystem: "text", clonal: "flag" },
      ...{ wildRelatives: "text", isolationHomeMinM: "number", isolationHomeMaxM: "number" },
      ...{ isolationStewardMinM: "number", isolationStewardMaxM: "number", sources: "text" },
    },
    rows: sql`
      SELECT g."id", g."name", g."varietyId", v."name" AS "variety", v."seedCoat", v."isolationWantedM", g."neighboursLookedOn", g."sown",
             g."plantsStanding", c."id" AS "cropId", c."key" AS "cropKey", c."commonName" AS "cropName", c."latinName",
             s."key" AS "crossingGroup", c."matingSystem", c."clonal", c."wildRelatives", c."isolationHomeMinM", c."isolationHomeMaxM",
             c."isolationStewardMinM", c."isolationStewardMaxM", c."sources"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "CrossingGroup" s ON s."id" = c."crossingGroupId" WHERE g."id" = ${growOutId}`,
  };
}

function sourcesSelection(growOutId: string): Selection<NeighbourRow> {
  return {
    columns: {
      ...{ id: "text", what: "text", cropId: "text", cropKey: "text", cropName: "text", latinName: "text" },
      ...{ crossingGroup: "text", varietyId: "text", variety: "text", plotId: "text", plot: "text" },
      ...{ distanceMetres: "number", bearing: "text", sizeM2: "number", plants: "number" },
      ...{ windowFirst: "text", windowLast: "text", howSure: "text", note: "text" },
    },
    rows: sql`
      SELECT b."id", b."what", b."cropId", c."key" AS "cropKey", c."commonName" AS "cropName", c."latinName", s."key" AS "crossingGroup",
             b."varietyId", v."name" AS "variety", b."plotId", p."name" AS "plot", b."distanceMetres", b."bearing", b."sizeM2", b."plants",
             b."windowFirst", b."windowLast", b."howSure", b."note"
      FROM "NeighbourSource" b LEFT JOIN "Crop" c ON c."id" = b."cropId" LEFT JOIN "CrossingGroup" s ON s."id" = c."crossingGroupId"
      LEFT JOIN "Variety" v ON v."id" = b."varietyId" LEFT JOIN "Plot" p ON p."id" = b."plotId"
      WHERE b."growOutId" = ${growOutId} ORDER BY b."id"`,
  };
}

/** Flowering notes that stand, methods, own values of the crop, plots and lots: kinds of rows in one statement. */
function restSelection(growOutId: string): Selection<RestRow> {
  return {
    columns: {
      ...{ kind: "text", id: "text", a: "text", b: "text", c: "text", d: "text", e: "text", f: "text", g: "text" },
    },
    rows: sql`
    SELECT 'note' AS "kind", f."id" AS "id", f."neighbourId" AS "a", f."organ" AS "b", f."moment" AS "c", f."on" AS "d", f."onFirst" AS "e",
           f."onLast" AS "f", f."note" AS "g"
    FROM "FloweringNote" f LEFT JOIN "NeighbourSource" n ON n."id" = f."neighbourId"
    WHERE (f."growOutId" = ${growOutId} OR n."growOutId" = ${growOutId})
      AND NOT EXISTS (SELECT 1 FROM "FloweringNote" r WHERE r."replacesId" = f."id")
    UNION ALL
    SELECT 'method', m."id", m."method", m."evidence", m."fromOn", m."toOn", m."note", NULL, NULL
    FROM "IsolationMethod" m WHERE m."growOutId" = ${growOutId}
    UNION ALL
    SELECT 'own', o."id", o."field", o."value", NULL, NULL, NULL, NULL, NULL FROM "CropOverride" o
    WHERE o."cropId" = (SELECT v."cropId" FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" WHERE g."id" = ${growOutId})
    UNION ALL
    SELECT 'plot', p."id", p."name", CAST(p."areaM2" AS TEXT), COALESCE(g."fromOn", '') , g."id", NULL, NULL, NULL
    FROM "GrowOutPlot" g JOIN "Plot" p ON p."id" = g."plotId" WHERE g."growOutId" = ${growOutId}
    UNION ALL
    SELECT 'lot', l."id", l."number", l."isolationGrade", l."isolationReasons", NULL, NULL, NULL, NULL
    FROM "Lot" l WHERE l."id" IN (SELECT COALESCE(m."sameAsId", m."id") FROM "Lot" m WHERE m."growOutId" = ${growOutId})`,
  };
}

function grouped(rows: readonly RestRow[]): Map<string, RestRow[]> {
  const kinds = new Map<string, RestRow[]>();
  // Plots by the day from which the plants stood there; all else in the order of entry.
  const order = (row: RestRow) => (row.kind === "plot" ? `${row.c} ${row.d}` : row.id);
  for (const row of [...rows].sort((one, other) => (order(one) < order(other) ? -1 : 1)))
    kinds.set(row.kind, [...(kinds.get(row.kind) ?? []), row]);
  return kinds;
}
