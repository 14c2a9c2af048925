import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { compareCodePoints } from "../figures/code-point-order";
import { foldName } from "../names/fold-name";

/** A lot that can be chosen for a test. */
export interface LotToTest {
  readonly id: string;
  readonly number: string;
  readonly year: string | null;
  readonly status: string | null;
  readonly variety: {
    readonly name: string;
    readonly seedCoat: string | null;
    readonly crop: { readonly key: string; readonly commonName: string };
  };
  readonly holder: string | null;
  /** day of the last test, EDTF; null where none was made */
  readonly lastTest: string | null;
}

const most = 40;

interface LotSql {
  readonly id: string;
  readonly number: string;
  readonly numberKey: string;
  readonly year: string | null;
  readonly status: string | null;
  readonly varietyId: string;
  readonly variety: string;
  readonly varietyKey: string;
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly crop: string;
  readonly cropNameKey: string;
  readonly holder: string | null;
  readonly holderKey: string | null;
  readonly lastTest: string | null;
}

// Lots that are finished, dead or discarded are left out.
const lotsToHand: Selection<LotSql> = {
  columns: {
    id: "text",
    number: "text",
    numberKey: "text",
    year: "text",
    status: "text",
    varietyId: "text",
    variety: "text",
    varietyKey: "text",
    seedCoat: "text",
    cropKey: "text",
    crop: "text",
    cropNameKey: "text",
    holder: "text",
    holderKey: "text",
    lastTest: "text",
  },
  rows: sql`
    SELECT l."id", l."number", l."numberKey", l."year", l."status", v."id" AS "varietyId", v."name" AS "variety", v."nameKey" AS "varietyKey",
      v."seedCoat", c."key" AS "cropKey", c."commonName" AS "crop", c."commonNameKey" AS "cropNameKey", p."name" AS "holder",
      p."nameKey" AS "holderKey", (SELECT MAX(t."onFirst") FROM "GerminationTest" t WHERE t."lotId" = l."id") AS "lastTest"
    FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
    WHERE l."status" IS NULL OR l."status" NOT IN ('finished', 'dead', 'discarded') ORDER BY l."id"`,
};

const otherNames: Selection<{ readonly varietyId: string; readonly nameKey: string }> = {
  columns: { varietyId: "text", nameKey: "text" },
  rows: sql`SELECT n."varietyId", n."nameKey" FROM "VarietyName" n`,
};

/**
 * Lots by number, variety, crop or holder, every word of what was typed; those never tested and those tested longest ago first. Lots
 * that are finished, dead or discarded are left out. At most 40, and how many there are. One statement.
 */
export async function lotsToTest(db: Database, typed: string): Promise<{ lots: LotToTest[]; found: number }> {
  const words = foldName(typed).split(" ").filter(Boolean);
  const { lots, names } = await readTogether(db, { lots: lotsToHand, names: otherNames });
  const namesOf = grouped(names, (name) => name.varietyId);
  const found = lots.filter((lot) => {
    const others = (namesOf.get(lot.varietyId) ?? []).map((name) => name.nameKey);
    const keys = [lot.numberKey, lot.varietyKey, lot.cropNameKey, lot.holderKey ?? "", ...others];
    return words.every((word) => keys.some((key) => key.includes(word)));
  });
  found.sort(
    (a, b) => compareCodePoints(a.lastTest ?? "", b.lastTest ?? "") || compareCodePoints(a.numberKey, b.numberKey),
  );
  return { lots: found.slice(0, most).map(lotOf), found: found.length };
}

function lotOf({ id, number, year, status, holder, lastTest, ...lot }: LotSql): LotToTest {
  const crop = { key: lot.cropKey, commonName: lot.crop };
  return { id, number, year, status, holder, lastTest, variety: { name: lot.variety, seedCoat: lot.seedCoat, crop } };
}
