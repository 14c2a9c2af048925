import type { Database } from "@/lib/db";
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

const varietiesWithCrops = `
  SELECT v."id", v."name", v."nameKey", v."seedCoat", v."aim", c."id" AS "cropId", c."key" AS "cropKey", c."commonName", c."matingSystem",
         c."plantsMin", c."seedLifeYearsMin", c."seedLifeYearsMax"
  FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId"`;

/** All varieties by name, each with its crop as it holds here (own values in place). Two statements. */
export async function readVarieties(db: Database): Promise<Map<string, SeasonVariety>> {
  const rows = await db.read.$queryRawUnsafe<Row[]>(varietiesWithCrops);
  const own = grouped(await db.read.cropOverride.findMany(), (each) => each.cropId);
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
