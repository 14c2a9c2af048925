import { type Selection, sql } from "@/lib/db";
import type { CountOnRecord, FloweringOnRecord, PassOnRecord } from "../grow-outs/field-records";

interface Head {
  readonly id: string;
  readonly name: string;
  readonly sown: string | null;
  readonly purpose: string | null;
  readonly plantsPlanned: number | null;
  readonly seedParentsPlanned: number | null;
  readonly varietyId: string;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly aim: string | null;
  readonly cautions: string | null;
  readonly plantsWanted: number | null;
  readonly seedParentsWanted: number | null;
  readonly cropKey: string;
  readonly cropName: string;
  readonly plantsMin: number | null;
  readonly matingSystem: string | null;
}

const entered = {
  id: "text",
  on: "text",
  onFirst: "text",
  onLast: "text",
  note: "text",
  stewardId: "text",
  replacesId: "text",
} as const;

/** What a phone takes along of a grow-out beside its plants. */
export function packSelections(growOutId: string) {
  const heads: Selection<Head> = {
    columns: {
      ...{ id: "text", name: "text", sown: "text", purpose: "text", plantsPlanned: "number" },
      ...{ seedParentsPlanned: "number", varietyId: "text", variety: "text", seedCoat: "text", aim: "text" },
      ...{ cautions: "text", plantsWanted: "number", seedParentsWanted: "number" },
      ...{ cropKey: "text", cropName: "text", plantsMin: "number", matingSystem: "text" },
    },
    rows: sql`SELECT g."id", g."name", g."sown", g."purpose", g."plantsPlanned", g."seedParentsPlanned", g."varietyId",
        v."name" AS "variety", v."seedCoat", v."aim", v."cautions", v."plantsWanted", v."seedParentsWanted",
        c."key" AS "cropKey", c."commonName" AS "cropName", c."plantsMin", c."matingSystem"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Crop" c ON c."id" = v."cropId" WHERE g."id" = ${growOutId}`,
  };
  const ownValues: Selection<{ field: string; value: string }> = {
    columns: { field: "text", value: "text" },
    rows: sql`SELECT o."field", o."value" FROM "CropOverride" o JOIN "Variety" v ON v."cropId" = o."cropId" JOIN "GrowOut" g ON g."varietyId" = v."id"
      WHERE g."id" = ${growOutId} AND o."field" IN ('plantsMin', 'matingSystem') ORDER BY o."id"`,
  };
  const people: Selection<{ stewardId: string; name: string }> = {
    columns: { stewardId: "text", name: "text" },
    rows: sql`SELECT p."stewardId", p."name" FROM "Person" p ORDER BY p."id"`,
  };
  const plots: Selection<{ name: string }> = {
    columns: { name: "text" },
    rows: sql`SELECT p."name" FROM "GrowOutPlot" x JOIN "Plot" p ON p."id" = x."plotId" WHERE x."growOutId" = ${growOutId} ORDER BY x."id"`,
  };
  const type: Selection<{ trait: string; allowed: string; offType: string | null }> = {
    columns: { trait: "text", allowed: "text", offType: "text" },
    rows: sql`SELECT t."trait", t."allowed", t."offType" FROM "TypeTrait" t JOIN "GrowOut" g ON g."varietyId" = t."varietyId"
      WHERE g."id" = ${growOutId} ORDER BY t."id"`,
  };
  const photos: Selection<{ traitId: string; hash: string }> = {
    columns: { traitId: "text", hash: "text" },
    rows: sql`SELECT p."traitId", p."hash" FROM "Photo" p WHERE p."traitId" IS NOT NULL AND p."plantId" IS NULL
      AND p."traitId" IN (SELECT t."id" FROM "Trait" t JOIN "GrowOut" g ON g."id" = ${growOutId} JOIN "Variety" v ON v."id" = g."varietyId"
        WHERE t."varietyId" = v."id" OR (t."varietyId" IS NULL AND (t."cropId" IS NULL OR t."cropId" = v."cropId"))) ORDER BY p."id"`,
  };
  const counts: Selection<CountOnRecord> = {
    columns: { ...entered, stage: "text", plants: "number", males: "number", thinnedBy: "text" },
    rows: sql`SELECT c.* FROM "StageCount" c WHERE c."growOutId" = ${growOutId} ORDER BY c."id"`,
  };
  const passes: Selection<PassOnRecord> = {
    columns: {
      ...entered,
      ...{ stage: "text", timing: "text", looked: "number", pulled: "number", reason: "text", left: "number" },
    },
    rows: sql`SELECT p.* FROM "RoguePass" p WHERE p."growOutId" = ${growOutId} ORDER BY p."id"`,
  };
  const flowering: Selection<FloweringOnRecord> = {
    columns: { ...entered, organ: "text", moment: "text" },
    rows: sql`SELECT f.* FROM "FloweringNote" f WHERE f."growOutId" = ${growOutId} ORDER BY f."id"`,
  };
  const harvests: Selection<{ lot: string | null; on: string | null; seedParents: number | null }> = {
    columns: { lot: "text", on: "text", seedParents: "number" },
    rows: sql`SELECT l."number" AS "lot", h."on", h."seedParents" FROM "Harvest" h LEFT JOIN "Lot" m ON m."id" = h."lotId"
      LEFT JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")
      WHERE h."growOutId" = ${growOutId} AND NOT EXISTS (SELECT 1 FROM "Harvest" n WHERE n."replacesId" = h."id") ORDER BY h."id"`,
  };
  return { heads, ownValues, people, plots, type, photos, counts, passes, flowering, harvests };
}
