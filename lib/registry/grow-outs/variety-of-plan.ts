import { type Selection, sql } from "@/lib/db";
import { profileOfCrop } from "../crops/profile-of-crop";

/** A variety as a plan needs it, with its crop as the list has it. */
interface VarietyRow {
  readonly id: string;
  readonly name: string;
  readonly seedCoat: string | null;
  readonly plantsWanted: number | null;
  readonly seedParentsWanted: number | null;
  readonly key: string;
  readonly commonName: string;
  readonly lifeCycle: string | null;
  readonly matingSystem: string | null;
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly plantsMin: number | null;
  readonly plantsRecommendedMin: number | null;
  readonly plantsRecommendedMax: number | null;
  readonly seedLifeYearsMax: number | null;
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
}

export function varietySelection(varietyId: string): Selection<VarietyRow> {
  return {
    columns: {
      id: "text",
      name: "text",
      seedCoat: "text",
      plantsWanted: "number",
      seedParentsWanted: "number",
      key: "text",
      commonName: "text",
      lifeCycle: "text",
      matingSystem: "text",
      selfIncompatible: "text",
      outcrossingPctMin: "number",
      outcrossingPctMax: "number",
      plantsMin: "number",
      plantsRecommendedMin: "number",
      plantsRecommendedMax: "number",
      seedLifeYearsMax: "number",
      seedsPerGramMin: "number",
      seedsPerGramMax: "number",
    },
    rows: sql`
      SELECT v."id", v."name", v."seedCoat", v."plantsWanted", v."seedParentsWanted", c."key", c."commonName", c."lifeCycle", c."matingSystem",
        c."selfIncompatible", c."outcrossingPctMin", c."outcrossingPctMax", c."plantsMin", c."plantsRecommendedMin",
        c."plantsRecommendedMax", c."seedLifeYearsMax", c."seedsPerGramMin", c."seedsPerGramMax"
      FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" WHERE v."id" = ${varietyId}`,
  };
}

/** The steward's own values of a variety's crop. */
export function ownValuesOfVariety(varietyId: string): Selection<{ field: string; value: string }> {
  return {
    columns: { field: "text", value: "text" },
    rows: sql`
      SELECT o."field", o."value" FROM "CropOverride" o JOIN "Variety" v ON v."cropId" = o."cropId" WHERE v."id" = ${varietyId}
      ORDER BY o."id"`,
  };
}

/** The variety and its crop as it holds here, the steward's own values in place. */
export function varietyOfPlan(row: VarietyRow, own: readonly { readonly field: string; readonly value: string }[]) {
  const { id, name, seedCoat, plantsWanted, seedParentsWanted, ...listed } = row;
  const crop = profileOfCrop(listed, own);
  return {
    variety: { id, name, seedCoat, plantsWanted, seedParentsWanted },
    crop: { ...crop, clonal: crop.matingSystem === "clonal" },
  };
}

export type VarietyOfPlan = ReturnType<typeof varietyOfPlan>;
