import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { compareCodePoints } from "@/lib/science/code-point-order";
import { grouped } from "../change-set/grouped";
import { figuresOfAll } from "../figures/read-figures";
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
  /** by its ledger the jar is empty: only a test made before can still be written down */
  readonly nothingLeft: boolean;
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
      p."nameKey" AS "holderKey", (SELECT MAX(t."onFirst") FROM "GerminationTest" t JOIN "Lot" m ON m."id" = t."lotId"
        WHERE m."varietyId" = l."varietyId" AND COALESCE(m."sameAsId", m."id") = l."id") AS "lastTest"
    FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
    WHERE l."sameAsId" IS NULL AND COALESCE(l."status", '') NOT IN ('finished', 'dead', 'discarded') ORDER BY l."id"`,
};

const otherNames: Selection<{ readonly varietyId: string; readonly nameKey: string }> = {
  columns: { varietyId: "text", nameKey: "text" },
  rows: sql`SELECT n."varietyId", n."nameKey" FROM "VarietyName" n WHERE n."possiblySameAsId" IS NULL`,
};

/**
 * Lots by number, variety, crop or holder, every word of what was typed; those never tested and those tested longest ago first,
 * and those with nothing left after all others. Lots that are finished, dead or discarded are left out. At most 40, and how many there are.
 * Two statements where nothing has changed.
 */
export async function lotsToTest(db: Database, typed: string): Promise<{ lots: LotToTest[]; found: number }> {
  const words = foldName(typed).split(" ").filter(Boolean);
  const { lots, names } = await readTogether(db, { lots: lotsToHand, names: otherNames });
  const figures = await figuresOfAll(db);
  const nothingLeft = (lot: LotSql) => (figures.get(lot.id)?.gramsOnHand ?? null) === 0;
  const namesOf = grouped(names, (name) => name.varietyId);
  const found = lots.filter((lot) => {
    const others = (namesOf.get(lot.varietyId) ?? []).map((name) => name.nameKey);
    const keys = [lot.numberKey, lot.varietyKey, lot.cropNameKey, lot.holderKey ?? "", ...others];
    return words.every((word) => keys.some((key) => key.includes(word)));
  });
  found.sort(
    (a, b) =>
      Number(nothingLeft(a)) - Number(nothingLeft(b)) ||
      compareCodePoints(a.lastTest ?? "", b.lastTest ?? "") ||
      compareCodePoints(a.numberKey, b.numberKey),
  );
  return { lots: found.slice(0, most).map((lot) => lotOf(lot, nothingLeft(lot))), found: found.length };
}

function lotOf({ id, number, year, status, holder, lastTest, ...lot }: LotSql, nothingLeft: boolean): LotToTest {
  const crop = { key: lot.cropKey, commonName: lot.crop };
  const variety = { name: lot.variety, seedCoat: lot.seedCoat, crop };
  return { id, number, year, status, holder, lastTest, nothingLeft, variety };
}
