import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { keptUntilChange } from "../change-set/kept-until-change";
import { profileOfCrop } from "../crops/profile-of-crop";
import { figuresOfAll, type LotFigures } from "../figures/read-figures";
import { type FounderLines, founderLinesOf, lineageStanding } from "../varieties/lineage-standing";
import { spanShown } from "../varieties/span-shown";
import { liveSeeds, seedsIn } from "./live-seeds";
import type { LotRow } from "./lot-row";

/**
 * All lots of the registry as rows of the list, in the order of entry: sorting and searching need every one of them. One statement where
 * nothing has changed since they were last read, at most three more where something has.
 */
export const allRows = keptUntilChange(readRows);

interface CropProfile {
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
  readonly seedLifeYearsMax: number | null;
  readonly matingSystem: string | null;
}

type Figured =
  | "grams"
  | "live"
  | "lastTest"
  | "standing"
  | "diversityRetained"
  | "diversitySpan"
  | "generations"
  | "usualLifeYears";

interface LotSql extends Omit<LotRow, "otherNames" | "places" | "otherNumbers" | "otherCodes" | Figured>, CropProfile {
  readonly cropId: string;
  readonly founderLines: string | null;
}

const lotsWithCrops: Selection<LotSql> = {
  columns: {
    id: "text",
    number: "text",
    code: "text",
    kind: "text",
    varietyId: "text",
    variety: "text",
    seedCoat: "text",
    cropId: "text",
    cropKey: "text",
    crop: "text",
    holderId: "text",
    holder: "text",
    year: "text",
    yearFirst: "text",
    yearLast: "text",
    status: "text",
    treatment: "text",
    notes: "text",
    thousandSeedGrams: "number",
    founderLines: "text",
    seedsPerGramMin: "number",
    seedsPerGramMax: "number",
    seedLifeYearsMax: "number",
    matingSystem: "text",
  },
  rows: sql`
    SELECT l."id", l."number", l."code", l."kind", l."varietyId", v."name" AS "variety", v."seedCoat", c."id" AS "cropId", c."key" AS "cropKey",
      c."commonName" AS "crop", l."holderId", p."name" AS "holder", l."year", l."yearFirst", l."yearLast", l."status", l."treatment", l."notes",
      l."thousandSeedGrams", l."founderLines", c."seedsPerGramMin", c."seedsPerGramMax",
      c."seedLifeYearsMax", c."matingSystem"
    FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
    WHERE l."sameAsId" IS NULL ORDER BY l."id"`,
};

const ownFields = ["seedsPerGramMin", "seedsPerGramMax", "seedLifeYearsMax", "matingSystem"] as const;

interface TextSql {
  readonly what: "name" | "place" | "record" | "code" | (typeof ownFields)[number];
  /** the variety, lot or crop that it belongs to */
  readonly of: string;
  readonly words: string;
}

/** Other names of varieties, places of lots, numbers and codes of their other records, and own values of crops. */
const textsOfLots: Selection<TextSql> = {
  columns: { what: "text", of: "text", words: "text" },
  rows: sql`
    SELECT 'name' AS "what", n."varietyId" AS "of", n."name" AS "words", n."id" FROM "VarietyName" n WHERE n."possiblySameAsId" IS NULL
    UNION ALL
    SELECT 'place', COALESCE(m."sameAsId", m."id"), p."name", c."id" FROM "Container" c JOIN "Lot" m ON m."id" = c."lotId"
      JOIN "Place" p ON p."id" = c."placeId"
    UNION ALL
    SELECT 'record', o."sameAsId", o."number", o."id" FROM "Lot" o WHERE o."sameAsId" IS NOT NULL
    UNION ALL
    SELECT 'code', o."sameAsId", o."code", o."id" FROM "Lot" o WHERE o."sameAsId" IS NOT NULL
    UNION ALL
    SELECT o."field", o."cropId", o."value", o."id" FROM "CropOverride" o WHERE o."field" IN ('seedsPerGramMin', 'seedsPerGramMax', 'seedLifeYearsMax', 'matingSystem')
    ORDER BY "id"`,
};

async function readRows(db: Database): Promise<readonly LotRow[]> {
  const { lots, texts } = await readTogether(db, { lots: lotsWithCrops, texts: textsOfLots });
  const figures = await figuresOfAll(db);
  const byWhat = grouped(texts, (row) => `${row.what} ${row.of}`);
  const told = (what: TextSql["what"], of: string) => (byWhat.get(`${what} ${of}`) ?? []).map((each) => each.words);
  const lines = founderLinesOf(lots);
  const profiles = new Map<string, CropProfile>();
  const profileOf = (lot: LotSql) => {
    const known = profiles.get(lot.cropId) ?? ownProfile(lot, told);
    profiles.set(lot.cropId, known);
    return known;
  };
  return lots.map((lot) => {
    const names = told("name", lot.varietyId);
    const more = {
      otherNames: names,
      places: [...new Set(told("place", lot.id))],
      otherNumbers: told("record", lot.id),
      otherCodes: told("code", lot.id),
    };
    return rowOf(lot, more, profileOf(lot), figures.get(lot.id), lines);
  });
}

/** The crop of a lot with the steward's own values in place. */
function ownProfile(lot: LotSql, told: (what: TextSql["what"], of: string) => string[]): CropProfile {
  const { seedsPerGramMin, seedsPerGramMax, seedLifeYearsMax, matingSystem } = lot;
  const own = ownFields.flatMap((field) => told(field, lot.cropId).map((value) => ({ field, value })));
  return profileOfCrop({ seedsPerGramMin, seedsPerGramMax, seedLifeYearsMax, matingSystem }, own);
}

function rowOf(
  lot: LotSql,
  more: Pick<LotRow, "otherNames" | "places" | "otherNumbers" | "otherCodes">,
  crop: CropProfile,
  figures: LotFigures | undefined,
  lines: FounderLines,
): LotRow {
  const grams = figures?.gramsOnHand ?? null;
  const lastTest = figures?.lastTest ?? null;
  const standing = figures ? lineageStanding(figures, crop.matingSystem, lines) : "plants not known";
  const perGram = { min: crop.seedsPerGramMin, max: crop.seedsPerGramMax };
  // Field by field: a spread of thousands of rows is several times slower.
  return {
    id: lot.id,
    number: lot.number,
    code: lot.code,
    kind: lot.kind,
    varietyId: lot.varietyId,
    variety: lot.variety,
    otherNames: more.otherNames,
    otherNumbers: more.otherNumbers,
    otherCodes: more.otherCodes,
    seedCoat: lot.seedCoat,
    cropKey: lot.cropKey,
    crop: lot.crop,
    holderId: lot.holderId,
    holder: lot.holder,
    year: lot.year,
    yearFirst: lot.yearFirst,
    yearLast: lot.yearLast,
    status: lot.status,
    treatment: lot.treatment,
    notes: lot.notes,
    places: more.places,
    grams,
    thousandSeedGrams: lot.thousandSeedGrams,
    live: liveSeeds(seedsIn(grams, lot.thousandSeedGrams, perGram), lastTest),
    lastTest,
    usualLifeYears: crop.seedLifeYearsMax,
    diversityRetained: figures?.diversityRetained ?? null,
    diversitySpan: spanShown(standing, figures)?.diversityRetained ?? null,
    generations: figures?.generations ?? null,
    standing,
  };
}
