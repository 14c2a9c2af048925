import type { Client, Database } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { valueOfOwn } from "../crops/profile-of-crop";
import { figuresOfAll, type LotFigures } from "../figures/read-figures";
import { liveSeeds, type SeedsPerGram, seedsIn } from "./live-seeds";
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

interface LotSql extends Omit<LotRow, "otherNames" | "places" | "grams" | "live" | "lastTest" | "lineageFigures"> {
  readonly cropId: string;
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
}

async function readRows(db: Database): Promise<readonly LotRow[]> {
  const lots = await db.read.$queryRaw<LotSql[]>`
    SELECT l."id", l."number", l."code", l."kind", l."varietyId", v."name" AS "variety", v."seedCoat", c."id" AS "cropId", c."key" AS "cropKey",
      c."commonName" AS "crop", l."holderId", p."name" AS "holder", l."year", l."yearFirst", l."yearLast", l."status", l."treatment", l."notes",
      l."thousandSeedGrams", c."seedsPerGramMin", c."seedsPerGramMax"
    FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
      LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
    ORDER BY l."id"`;
  const names = grouped(
    await db.read.varietyName.findMany({ select: { varietyId: true, name: true }, orderBy: { id: "asc" } }),
    (row) => row.varietyId,
  );
  const places = grouped(
    await db.read.$queryRaw<{ lotId: string; place: string }[]>`
      SELECT c."lotId", p."name" AS "place" FROM "Container" c JOIN "Place" p ON p."id" = c."placeId" ORDER BY c."id"`,
    (row) => row.lotId,
  );
  const own = grouped(
    await db.read.cropOverride.findMany({ where: { field: { in: ["seedsPerGramMin", "seedsPerGramMax"] } } }),
    (row) => row.cropId,
  );
  const figures = await figuresOfAll(db);
  return lots.map((lot) => {
    const { cropId, seedsPerGramMin, seedsPerGramMax, ...row } = lot;
    const perGram = { min: seedsPerGramMin, max: seedsPerGramMax };
    for (const each of own.get(cropId) ?? []) {
      if (each.field === "seedsPerGramMin") perGram.min = Number(valueOfOwn("seedsPerGramMin", each.value));
      else perGram.max = Number(valueOfOwn("seedsPerGramMax", each.value));
    }
    return {
      ...row,
      otherNames: (names.get(lot.varietyId) ?? []).map((each) => each.name),
      places: [...new Set((places.get(lot.id) ?? []).map((each) => each.place))],
      ...figured(lot, perGram, figures.get(lot.id)),
    };
  });
}

function figured(lot: LotSql, perGram: SeedsPerGram, figures: LotFigures | undefined) {
  const grams = figures?.gramsOnHand ?? null;
  const lastTest = figures?.lastTest ?? null;
  return {
    grams,
    live: liveSeeds(seedsIn(grams, lot.thousandSeedGrams, perGram), lastTest),
    lastTest,
    diversityRetained: figures?.diversityRetained ?? null,
    generations: figures?.generations ?? null,
    lineageFigures: figures?.lineageFigures ?? true,
  };
}
