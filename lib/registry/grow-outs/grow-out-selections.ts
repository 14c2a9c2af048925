import { type Selection, sql } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import { harvestColumns } from "../harvests/harvest-columns";

/** A grow-out with its variety and its crop as the list has it. */
export interface GrowOutHead extends RowOf<"GrowOut"> {
  readonly variety: string;
  readonly varietyKey: string;
  readonly seedCoat: string | null;
  readonly aim: string | null;
  readonly plantsWanted: number | null;
  readonly seedParentsWanted: number | null;
  readonly varietyCautions: string | null;
  readonly cropId: string;
  readonly cropKey: string;
  readonly commonName: string;
  readonly matingSystem: string | null;
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly plantsMin: number | null;
  readonly seedLifeYearsMin: number | null;
  readonly seedLifeYearsMax: number | null;
  readonly lifeCycle: string | null;
  readonly vernalisation: string | null;
  readonly daysToFlowerMin: number | null;
  readonly daysToFlowerMax: number | null;
  readonly daysToSeedMin: number | null;
  readonly daysToSeedMax: number | null;
}

export function headSelection(id: string): Selection<GrowOutHead> {
  return {
    columns: {
      id: "text",
      name: "text",
      nameKey: "text",
      varietyId: "text",
      stewardId: "text",
      purpose: "text",
      sown: "text",
      sownFirst: "text",
      sownLast: "text",
      seedsSown: "number",
      plantsPlanned: "number",
      seedParentsPlanned: "number",
      plantsStanding: "number",
      malesStanding: "number",
      roguedBeforePollen: "number",
      roguedAfterPollen: "number",
      seedParents: "number",
      detasselled: "number",
      seedParentsDetasselled: "number",
      seedShares: "text",
      seedSharesCv: "number",
      selfingRate: "number",
      foreignPollen: "number",
      foreignPollenHow: "text",
      neighboursLookedOn: "text",
      outcome: "text",
      endedOn: "text",
      note: "text",
      extra: "text",
      variety: "text",
      varietyKey: "text",
      seedCoat: "text",
      aim: "text",
      plantsWanted: "number",
      seedParentsWanted: "number",
      varietyCautions: "text",
      cropId: "text",
      cropKey: "text",
      commonName: "text",
      matingSystem: "text",
      selfIncompatible: "text",
      outcrossingPctMin: "number",
      outcrossingPctMax: "number",
      plantsMin: "number",
      seedLifeYearsMin: "number",
      seedLifeYearsMax: "number",
      lifeCycle: "text",
      vernalisation: "text",
      daysToFlowerMin: "number",
      daysToFlowerMax: "number",
      daysToSeedMin: "number",
      daysToSeedMax: "number",
    },
    rows: sql`
      SELECT g.*, v."name" AS "variety", v."nameKey" AS "varietyKey", v."seedCoat", v."aim", v."plantsWanted", v."seedParentsWanted",
        v."cautions" AS "varietyCautions", c."id" AS "cropId", c."key" AS "cropKey", c."commonName", c."matingSystem",
        c."selfIncompatible", c."outcrossingPctMin", c."outcrossingPctMax", c."plantsMin", c."seedLifeYearsMin", c."seedLifeYearsMax",
        c."lifeCycle", c."vernalisation", c."daysToFlowerMin", c."daysToFlowerMax", c."daysToSeedMin", c."daysToSeedMax"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Crop" c ON c."id" = v."cropId" WHERE g."id" = ${id}`,
  };
}

/** The steward's own values of the crop of a grow-out. */
export function ownValuesSelection(id: string): Selection<{ field: string; value: string }> {
  return {
    columns: { field: "text", value: "text" },
    rows: sql`
      SELECT o."field", o."value" FROM "CropOverride" o JOIN "Variety" v ON v."cropId" = o."cropId"
      JOIN "GrowOut" g ON g."varietyId" = v."id" WHERE g."id" = ${id} ORDER BY o."id"`,
  };
}

/** A plot on which a grow-out stands or stood. */
export interface PlotOfGrowOut {
  /** of the plot */
  readonly id: string;
  /** of its standing there */
  readonly standId: string;
  readonly name: string;
  readonly place: string | null;
  readonly fromOn: string | null;
  readonly toOn: string | null;
}

export function plotsSelection(id: string): Selection<PlotOfGrowOut> {
  return {
    columns: { id: "text", standId: "text", name: "text", place: "text", fromOn: "text", toOn: "text" },
    rows: sql`
      SELECT p."id", s."id" AS "standId", p."name", p."place", s."fromOn", s."toOn" FROM "GrowOutPlot" s JOIN "Plot" p ON p."id" = s."plotId"
      WHERE s."growOutId" = ${id} ORDER BY s."id"`,
  };
}

interface ParentRow {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly year: string | null;
  readonly share: number | null;
  /** in a cross: seed parent or pollen parent */
  readonly role: string | null;
}

/** The lots that are to be sown, or were. */
export function parentsSelection(id: string): Selection<ParentRow> {
  return {
    columns: {
      id: "text",
      number: "text",
      varietyId: "text",
      variety: "text",
      year: "text",
      share: "number",
      role: "text",
    },
    rows: sql`
      SELECT l."id", l."number", l."varietyId", v."name" AS "variety", l."year", x."share", x."role" FROM "GrowOutParent" x
      JOIN "Lot" m ON m."id" = x."lotId" JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") JOIN "Variety" v ON v."id" = l."varietyId"
      WHERE x."growOutId" = ${id} ORDER BY x."id"`,
  };
}

/** An entry by which seed left a parent's jar for this grow-out. */
export interface TakenForGrowOut {
  readonly id: string;
  readonly lotId: string;
  readonly on: string;
  readonly amount: number;
  readonly unit: string;
}

/** Entries "sown" of its lots that name it, those that stand. */
export function takenSelection(id: string): Selection<TakenForGrowOut> {
  return {
    columns: { id: "text", lotId: "text", on: "text", amount: "number", unit: "text" },
    rows: sql`
      SELECT e."id", COALESCE(m."sameAsId", m."id") AS "lotId", e."on", e."amount", e."unit" FROM "GrowOutParent" x
      JOIN "Lot" p ON p."id" = x."lotId" JOIN "Lot" m ON m."varietyId" = p."varietyId"
        AND COALESCE(m."sameAsId", m."id") = COALESCE(p."sameAsId", p."id") JOIN "LedgerEntry" e ON e."lotId" = m."id"
      JOIN "GrowOut" g ON g."id" = x."growOutId"
      WHERE g."id" = ${id} AND e."kind" = 'sown' AND e."other" = g."name" AND NOT e."takenBack"
        AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" n WHERE n."replacesId" = e."id") ORDER BY e."id"`,
  };
}

export function harvestedSelection(
  id: string,
): Selection<{ id: string; number: string; year: string | null; yearFirst: string | null; yearLast: string | null }> {
  return {
    columns: { id: "text", number: "text", year: "text", yearFirst: "text", yearLast: "text" },
    rows: sql`
      SELECT l."id", l."number", l."year", l."yearFirst", l."yearLast" FROM "Lot" l
      WHERE l."id" IN (SELECT COALESCE(m."sameAsId", m."id") FROM "Lot" m WHERE m."growOutId" = ${id}) ORDER BY l."id"`,
  };
}

export function harvestsSelection(id: string): Selection<RowOf<"Harvest">> {
  return {
    columns: harvestColumns,
    rows: sql`
      SELECT h.* FROM "Harvest" h WHERE h."growOutId" = ${id}
        AND NOT EXISTS (SELECT 1 FROM "Harvest" n WHERE n."replacesId" = h."id") ORDER BY h."id"`,
  };
}

/** The names of all stewards. */
export const peopleSelection: Selection<{ stewardId: string; name: string }> = {
  columns: { stewardId: "text", name: "text" },
  rows: sql`SELECT p."stewardId", p."name" FROM "Person" p ORDER BY p."id"`,
};
