import { type Database, type Gathered, readTogether, type Selection, sql } from "@/lib/db";
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

type OfVariety = "variety" | "seedCoat" | "cropKey" | "crop";

type Figured =
  | "grams"
  | "live"
  | "lastTest"
  | "standing"
  | "diversityRetained"
  | "diversitySpan"
  | "generations"
  | "usualLifeYears";

interface LotSql extends Omit<LotRow, "otherNames" | "places" | "otherNumbers" | "otherCodes" | OfVariety | Figured> {
  readonly founderLines: string | null;
}

interface VarietySql extends CropProfile, Pick<LotRow, OfVariety> {
  readonly id: string;
  readonly cropId: string;
}

const lotsOfAll: Selection<LotSql> = {
  columns: {
    id: "text",
    number: "text",
    code: "text",
    kind: "text",
    varietyId: "text",
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
  },
  rows: sql`
    SELECT l."id", l."number", l."code", l."kind", l."varietyId", l."holderId", p."name" AS "holder", l."year", l."yearFirst", l."yearLast",
      l."status", l."treatment", l."notes", l."thousandSeedGrams", l."founderLines"
    FROM "Lot" l LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
    WHERE l."sameAsId" IS NULL ORDER BY l."id"`,
};

const varietiesOfLots: Selection<VarietySql> = {
  columns: {
    id: "text",
    variety: "text",
    seedCoat: "text",
    cropId: "text",
    cropKey: "text",
    crop: "text",
    seedsPerGramMin: "number",
    seedsPerGramMax: "number",
    seedLifeYearsMax: "number",
    matingSystem: "text",
  },
  rows: sql`
    SELECT v."id", v."name" AS "variety", v."seedCoat", c."id" AS "cropId", c."key" AS "cropKey", c."commonName" AS "crop",
      c."seedsPerGramMin", c."seedsPerGramMax", c."seedLifeYearsMax", c."matingSystem"
    FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" ORDER BY v."id"`,
};

const ownFields = ["seedsPerGramMin", "seedsPerGramMax", "seedLifeYearsMax", "matingSystem"] as const;

interface TextSql {
  readonly what: "name" | "place" | "record" | "code" | (typeof ownFields)[number];
  readonly words: string;
}

/** Under the variety, lot or crop that they belong to: other names of varieties, places of lots, numbers and codes of their other records, and own values of crops. */
const textsOfLots: Gathered<TextSql> = {
  columns: { what: "text", words: "text" },
  under: "of",
  by: "id",
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
    SELECT o."field", o."cropId", o."value", o."id" FROM "CropOverride" o WHERE o."field" IN ('seedsPerGramMin', 'seedsPerGramMax', 'seedLifeYearsMax', 'matingSystem')`,
};

type Texts = ReadonlyMap<string, readonly TextSql[]>;

async function readRows(db: Database): Promise<readonly LotRow[]> {
  const { lots, varieties, texts } = await readTogether(db, {
    lots: lotsOfAll,
    varieties: varietiesOfLots,
    texts: textsOfLots,
  });
  const figures = await figuresOfAll(db);
  const lines = founderLinesOf(lots);
  const profiles = new Map(
    varieties.map((of) => [of.id, { ...of, profile: ownProfile(of, texts), otherNames: told(texts, "name", of.id) }]),
  );
  return lots.flatMap((lot) => {
    const variety = profiles.get(lot.varietyId);
    return variety ? [rowOf(lot, variety, texts, figures.get(lot.id), lines)] : [];
  });
}

const nothing: readonly string[] = [];

function told(texts: Texts, what: TextSql["what"], of: string): readonly string[] {
  const own = texts.get(of);
  return own ? own.filter((each) => each.what === what).map(({ words }) => words) : nothing;
}

/** The crop of a variety with the steward's own values in place. */
function ownProfile(of: VarietySql, texts: Texts): CropProfile {
  const { seedsPerGramMin, seedsPerGramMax, seedLifeYearsMax, matingSystem } = of;
  const own = ownFields.flatMap((field) => told(texts, field, of.cropId).map((value) => ({ field, value })));
  return profileOfCrop({ seedsPerGramMin, seedsPerGramMax, seedLifeYearsMax, matingSystem }, own);
}

interface VarietyOfRow extends VarietySql {
  readonly profile: CropProfile;
  readonly otherNames: readonly string[];
}

function rowOf(
  lot: LotSql,
  variety: VarietyOfRow,
  texts: Texts,
  figures: LotFigures | undefined,
  lines: FounderLines,
): LotRow {
  const crop = variety.profile;
  const places = told(texts, "place", lot.id);
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
    variety: variety.variety,
    otherNames: variety.otherNames,
    otherNumbers: told(texts, "record", lot.id),
    otherCodes: told(texts, "code", lot.id),
    seedCoat: variety.seedCoat,
    cropKey: variety.cropKey,
    crop: variety.crop,
    holderId: lot.holderId,
    holder: lot.holder,
    year: lot.year,
    yearFirst: lot.yearFirst,
    yearLast: lot.yearLast,
    status: lot.status,
    treatment: lot.treatment,
    notes: lot.notes,
    places: places.length > 1 ? [...new Set(places)] : places,
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
