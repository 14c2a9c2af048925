import type { Client, Database } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import { figuresOfAll, type LotFigures } from "../figures/read-figures";
import { type FounderLines, founderLinesOf, lineageStanding } from "../varieties/lineage-standing";
import { liveSeeds, seedsIn } from "./live-seeds";
import type { LotRow } from "./lot-row";

interface Shelf {
  readonly revision: number;
  readonly rows: Promise<readonly LotRow[]>;
}

// All lots as the list shows them, under the number of the last change: sorting and searching need every one of them.
const shelves = new WeakMap<Client, Shelf>();

/** All lots of the registry as rows of the list. One statement where nothing has changed since they were last read. */
export async function allRows(db: Database): Promise<readonly LotRow[]> {
  const { _max } = await db.read.changeSet.aggregate({ _max: { number: true } });
  const revision = _max.number ?? 0;
  const kept = shelves.get(db.read);
  if (kept?.revision === revision) return kept.rows;
  const rows = readRows(db);
  shelves.set(db.read, { revision, rows });
  rows.catch(() => shelves.delete(db.read));
  return rows;
}

interface LotSql
  extends Omit<LotRow, "otherNames" | "places" | "grams" | "live" | "lastTest" | "standing" | "usualLifeYears"> {
  readonly cropId: string;
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
  readonly seedLifeYearsMax: number | null;
  readonly matingSystem: string | null;
  readonly founderLines: string | null;
}

async function readRows(db: Database): Promise<readonly LotRow[]> {
  const lots = await db.read.$queryRaw<LotSql[]>`
    SELECT l."id", l."number", l."code", l."kind", l."varietyId", v."name" AS "variety", v."seedCoat", c."id" AS "cropId", c."key" AS "cropKey",
      c."commonName" AS "crop", l."holderId", p."name" AS "holder", l."year", l."yearFirst", l."yearLast", l."status", l."treatment", l."notes",
      l."thousandSeedGrams", l."founderLines", c."seedsPerGramMin", c."seedsPerGramMax",
      c."seedLifeYearsMax", c."matingSystem"
    FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
    ORDER BY l."id"`;
  const texts = await readTexts(db);
  const figures = await figuresOfAll(db);
  const lines = founderLinesOf(lots);
  return lots.map((lot) => {
    const {
      cropId,
      seedsPerGramMin,
      seedsPerGramMax,
      seedLifeYearsMax,
      matingSystem,
      founderLines: _lines,
      ...row
    } = lot;
    const told = (what: TextSql["what"], of: string) => (texts.get(`${what} ${of}`) ?? []).map((each) => each.words);
    const profile = profileOfCrop(
      { seedsPerGramMin, seedsPerGramMax, seedLifeYearsMax, matingSystem },
      ownFields.flatMap((field) => told(field, cropId).map((value) => ({ field, value }))),
    );
    return {
      ...row,
      otherNames: told("name", lot.varietyId),
      places: [...new Set(told("place", lot.id))],
      ...figured(lot, profile, figures.get(lot.id), lines),
    };
  });
}

const ownFields = ["seedsPerGramMin", "seedsPerGramMax", "seedLifeYearsMax", "matingSystem"] as const;

interface TextSql {
  readonly what: "name" | "place" | (typeof ownFields)[number];
  /** the variety, lot or crop that it belongs to */
  readonly of: string;
  readonly words: string;
}

/** Other names of varieties, places of lots and own values of crops, by what they are and belong to. */
async function readTexts(db: Database): Promise<ReadonlyMap<string, TextSql[]>> {
  const rows = await db.read.$queryRaw<TextSql[]>`
    SELECT 'name' AS "what", n."varietyId" AS "of", n."name" AS "words", n."id" FROM "VarietyName" n
    UNION ALL
    SELECT 'place', c."lotId", p."name", c."id" FROM "Container" c JOIN "Place" p ON p."id" = c."placeId"
    UNION ALL
    SELECT o."field", o."cropId", o."value", o."id" FROM "CropOverride" o WHERE o."field" IN ('seedsPerGramMin', 'seedsPerGramMax', 'seedLifeYearsMax', 'matingSystem')
    ORDER BY "id"`;
  return grouped(rows, (row) => `${row.what} ${row.of}`);
}

interface CropProfile {
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
  readonly seedLifeYearsMax: number | null;
  readonly matingSystem: string | null;
}

function figured(lot: LotSql, crop: CropProfile, figures: LotFigures | undefined, lines: FounderLines) {
  const grams = figures?.gramsOnHand ?? null;
  const lastTest = figures?.lastTest ?? null;
  const perGram = { min: crop.seedsPerGramMin, max: crop.seedsPerGramMax };
  return {
    grams,
    live: liveSeeds(seedsIn(grams, lot.thousandSeedGrams, perGram), lastTest),
    lastTest,
    diversityRetained: figures?.diversityRetained ?? null,
    generations: figures?.generations ?? null,
    usualLifeYears: crop.seedLifeYearsMax,
    standing: figures ? lineageStanding(figures, crop.matingSystem, lines) : ("plants not known" as const),
  };
}
