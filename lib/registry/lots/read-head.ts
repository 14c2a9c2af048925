import { type Client, sql } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import { profileOfCrop } from "../crops/profile-of-crop";
import { leadingRecord } from "./same-lot";

/** What a lot's page needs of its crop, with the steward's own values in the place of the list's. */
export interface CropOfLot {
  readonly cropKey: string;
  readonly commonName: string;
  readonly latinName: string | null;
  readonly clonal: boolean;
  readonly dryStorage: boolean;
  readonly matingSystem: string | null;
  readonly plantsMin: number | null;
  readonly seedLifeYearsMin: number | null;
  readonly seedLifeYearsMax: number | null;
  /** the seed life is the steward's own value */
  readonly ownSeedLife: boolean;
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
  readonly cropCautions: string | null;
}

/** A lot with the names of what it belongs to. */
export interface LotHead extends Omit<RowOf<"Lot">, "originalSample"> {
  readonly originalSample: boolean | null;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly varietyCautions: string | null;
  readonly plantsWanted: number | null;
  readonly holder: string | null;
  readonly strain: string | null;
  readonly growOut: string | null;
  readonly crop: CropOfLot;
}

type Flag = boolean | number | null;

interface HeadSql
  extends Omit<LotHead, "crop" | "originalSample">,
    Omit<CropOfLot, "clonal" | "dryStorage" | "ownSeedLife"> {
  readonly originalSample: Flag;
  readonly clonal: Flag;
  readonly dryStorage: Flag;
  readonly ownField: string | null;
  readonly ownValue: string | null;
}

/**
 * A lot with its variety, crop (own values in place), holder, strain and grow-out: one statement, one row an own value of the crop. Of
 * several records of one lot the leading one, by whichever id it was asked for.
 */
export async function readHead(db: Client, lotId: string): Promise<LotHead | null> {
  const rows = await db.$queryRaw<HeadSql[]>(sql`
    SELECT l.*, v."name" AS "variety", v."seedCoat", v."cautions" AS "varietyCautions", v."plantsWanted", p."name" AS "holder",
      s."name" AS "strain", g."name" AS "growOut", c."key" AS "cropKey", c."commonName", c."latinName", c."clonal", c."dryStorage", c."matingSystem",
      c."plantsMin", c."seedLifeYearsMin", c."seedLifeYearsMax", c."seedsPerGramMin", c."seedsPerGramMax",
      c."cautions" AS "cropCautions", o."field" AS "ownField", o."value" AS "ownValue"
    FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" p ON p."stewardId" = l."holderId" LEFT JOIN "Strain" s ON s."id" = l."strainId"
      LEFT JOIN "GrowOut" g ON g."id" = l."growOutId" LEFT JOIN "CropOverride" o ON o."cropId" = c."id"
    WHERE l."id" = ${leadingRecord(lotId)}`);
  const [row] = rows;
  if (!row) return null;
  const own = rows.flatMap(({ ownField, ownValue }) =>
    ownField === null || ownValue === null ? [] : [{ field: ownField, value: ownValue }],
  );
  return {
    ...row,
    originalSample: row.originalSample === null ? null : Boolean(row.originalSample),
    crop: cropOf(row, own),
  };
}

function cropOf(row: HeadSql, own: readonly { field: string; value: string }[]): CropOfLot {
  const profile = profileOfCrop(
    {
      commonName: row.commonName,
      matingSystem: row.matingSystem,
      plantsMin: row.plantsMin,
      seedLifeYearsMin: row.seedLifeYearsMin,
      seedLifeYearsMax: row.seedLifeYearsMax,
      seedsPerGramMin: row.seedsPerGramMin,
      seedsPerGramMax: row.seedsPerGramMax,
      cautions: row.cropCautions,
    },
    own,
  );
  const { cautions, ...rest } = profile;
  return {
    ...rest,
    cropKey: row.cropKey,
    latinName: row.latinName,
    clonal: Boolean(row.clonal),
    dryStorage: Boolean(row.dryStorage),
    ownSeedLife: own.some(({ field }) => field.startsWith("seedLifeYears")),
    cropCautions: cautions,
  };
}
