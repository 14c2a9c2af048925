import { type Selection, sql } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import type { SeasonVariety } from "./records";

interface Row {
  readonly id: string;
  readonly name: string;
  readonly nameKey: string;
  readonly seedCoat: string | null;
  readonly aim: string | null;
  readonly cropId: string;
  readonly cropKey: string;
  readonly commonName: string;
  readonly matingSystem: string | null;
  readonly plantsMin: number | null;
  readonly seedLifeYearsMin: number | null;
  readonly seedLifeYearsMax: number | null;
}

interface OwnRow {
  readonly cropId: string;
  readonly field: string;
  readonly value: string;
}

/** All varieties, each with its crop as the list has it. */
export const varietiesWithCrops: Selection<Row> = {
  columns: {
    id: "text",
    name: "text",
    nameKey: "text",
    seedCoat: "text",
    aim: "text",
    cropId: "text",
    cropKey: "text",
    commonName: "text",
    matingSystem: "text",
    plantsMin: "number",
    seedLifeYearsMin: "number",
    seedLifeYearsMax: "number",
  },
  rows: sql`
    SELECT v."id", v."name", v."nameKey", v."seedCoat", v."aim", c."id" AS "cropId", c."key" AS "cropKey", c."commonName", c."matingSystem",
           c."plantsMin", c."seedLifeYearsMin", c."seedLifeYearsMax"
    FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId"`,
};

/** The steward's own values of crops, in the order in which they were set. */
export const ownValuesOfCrops: Selection<OwnRow> = {
  columns: { cropId: "text", field: "text", value: "text" },
  rows: sql`SELECT o."cropId", o."field", o."value" FROM "CropOverride" o ORDER BY o."id"`,
};

/** Varieties by name, each with its crop as it holds here (own values in place). */
export function seasonVarieties(rows: readonly Row[], ownValues: readonly OwnRow[]): Map<string, SeasonVariety> {
  const own = grouped(ownValues, (each) => each.cropId);
  const varieties = rows.map(({ id, name, nameKey, seedCoat, aim, cropId, cropKey, ...profile }): SeasonVariety => {
    const here = profileOfCrop(profile, own.get(cropId) ?? []);
    const crop = { id: cropId, key: cropKey, ...here, clonal: here.matingSystem === "clonal" };
    return { id, name, nameKey, seedCoat, aim, crop };
  });
  varieties.sort((a, b) => order(a.nameKey, b.nameKey) || order(a.name, b.name));
  return new Map(varieties.map((variety) => [variety.id, variety]));
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
