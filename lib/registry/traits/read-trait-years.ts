import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { scoreNumber } from "@/lib/schemas/traits/score-number";
import type { Mating } from "@/lib/science/crops/mating";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import { ownValuesOfVariety } from "../grow-outs/variety-of-plan";
import type { LotOfCycles, SeedFrom } from "./cycles-of-trait";
import { type TraitLine, type TraitVersion, traitLines, traitsOfVariety } from "./list-traits";

/** The plants of one grow-out that were scored by one version of a trait. */
export interface ScoredGrowOut {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  /** of its sowing, else of its scores; null not known */
  readonly year: number | null;
  readonly version: TraitVersion;
  /** one number a plant, the mean of those who scored it; nothing where its scores are no numbers */
  readonly plants: readonly { readonly value: number; readonly kept: boolean; readonly cell: string | null }[];
  /** how often each answer was given, of scores that are words */
  readonly answers: ReadonlyMap<string, number>;
  /** the same of the plants of which seed was kept */
  readonly keptAnswers: ReadonlyMap<string, number>;
  readonly scorers: number;
  readonly place: PlaceOfGrowOut;
}

/** Where a grow-out stood, as far as it is known. */
export interface PlaceOfGrowOut {
  readonly plots: readonly string[];
  readonly stewardId: string | null;
}

/** A variety of which the same trait was scored in a year in which this one's was. */
export interface PossibleCheck {
  readonly varietyId: string;
  readonly variety: string;
  /** years in common */
  readonly years: readonly number[];
}

/** What a line of the type description says of a trait. */
export interface TypeOfTrait {
  readonly trait: string;
  readonly allowed: string;
  readonly offType: string | null;
}

export interface TraitYearsRead {
  readonly traits: readonly TraitLine[];
  /** the one that is shown; null where none was scored */
  readonly trait: TraitLine | null;
  /** by year, those of unknown year last */
  readonly growOuts: readonly ScoredGrowOut[];
  readonly checks: readonly PossibleCheck[];
  /** grow-outs of other varieties by the same trait */
  readonly others: readonly ScoredGrowOut[];
  readonly type: readonly TypeOfTrait[];
  readonly passes: readonly PassOfYears[];
  /** what each of its grow-outs was sown from */
  readonly seed: { readonly from: readonly SeedFrom[]; readonly lots: readonly LotOfCycles[] };
  readonly mating: Mating;
}

/** A rogue pass as off-types are counted by it. */
export interface PassOfYears {
  readonly id: string;
  readonly growOutId: string;
  readonly growOut: string;
  readonly sownFirst: string | null;
  readonly on: string;
  readonly onFirst: string;
  readonly onLast: string;
  readonly note: string | null;
  readonly stewardId: string | null;
  readonly replacesId: string | null;
  readonly stage: string | null;
  readonly timing: string | null;
  readonly looked: number | null;
  readonly pulled: number;
  readonly reason: string | null;
  readonly left: number | null;
}

/** The rows of all traits of a variety, of which one after the other can be told. */
export interface TraitRows {
  readonly varietyId: string;
  readonly traits: readonly TraitLine[];
  readonly scores: readonly ScoreRow[];
  /** by grow-out */
  readonly places: ReadonlyMap<string, PlaceOfGrowOut>;
  readonly type: readonly (TypeOfTrait & { readonly traitId: string | null })[];
  readonly passes: readonly PassOfYears[];
  readonly seed: TraitYearsRead["seed"];
  readonly mating: Mating;
}

interface PlaceRow {
  readonly growOutId: string;
  readonly stewardId: string | null;
  readonly plotId: string | null;
}

function placeOf(rows: readonly PlaceRow[]): PlaceOfGrowOut {
  return { plots: rows.flatMap(({ plotId }) => plotId ?? []), stewardId: rows[0]?.stewardId ?? null };
}

interface ScoreRow {
  readonly plantId: string;
  readonly traitId: string;
  readonly value: number | null;
  readonly text: string | null;
  readonly on: string | null;
  readonly stewardId: string | null;
  readonly kept: boolean | null;
  readonly parent: number;
  readonly cell: string | null;
  readonly growOutId: string;
  readonly growOut: string;
  readonly sownFirst: string | null;
  readonly varietyId: string;
  readonly variety: string;
}

/** What the traits of a variety are told from over the years, its crop's scores with it; null where there is no such variety. One statement. */
export async function readTraitRows(db: Database, varietyId: string): Promise<TraitRows | null> {
  const varieties: Selection<Mating> = {
    columns: {
      matingSystem: "text",
      selfIncompatible: "text",
      outcrossingPctMin: "number",
      outcrossingPctMax: "number",
    },
    rows: sql`SELECT c."matingSystem", c."selfIncompatible", c."outcrossingPctMin", c."outcrossingPctMax"
      FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" WHERE v."id" = ${varietyId}`,
  };
  const from: Selection<SeedFrom> = {
    columns: { growOutId: "text", lotId: "text" },
    rows: sql`SELECT p."growOutId", p."lotId" FROM "GrowOutParent" p JOIN "GrowOut" g ON g."id" = p."growOutId"
      WHERE g."varietyId" = ${varietyId} ORDER BY p."id"`,
  };
  const lots: Selection<LotOfCycles> = {
    columns: { id: "text", growOutId: "text", parentLotId: "text" },
    rows: sql`SELECT l."id", l."growOutId", p."parentLotId" FROM "Lot" l LEFT JOIN "LotParent" p ON p."lotId" = l."id"
      WHERE l."varietyId" = ${varietyId} ORDER BY l."id", p."id"`,
  };
  const scores: Selection<ScoreRow> = {
    columns: {
      ...{ plantId: "text", traitId: "text", value: "number", text: "text", on: "text", stewardId: "text" },
      ...{ kept: "flag", parent: "number", cell: "text", growOutId: "text", growOut: "text" },
      ...{ sownFirst: "text", varietyId: "text", variety: "text" },
    },
    rows: sql`SELECT COALESCE(p."sameAsId", p."id") AS "plantId", s."traitId", s."value", s."text", s."on", s."stewardId", p."kept", p."cell",
        (SELECT COUNT(*) FROM "HarvestSeedParent" h WHERE h."plantId" = p."id" AND h."lost" IS NULL) AS "parent",
        g."id" AS "growOutId", g."name" AS "growOut", g."sownFirst", v."id" AS "varietyId", v."name" AS "variety"
      FROM "Score" s JOIN "Plant" p ON p."id" = s."plantId" JOIN "GrowOut" g ON g."id" = p."growOutId"
        JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Variety" own ON own."id" = ${varietyId}
      WHERE v."cropId" = own."cropId" AND NOT s."takenBack"
        AND NOT EXISTS (SELECT 1 FROM "Score" n WHERE n."replacesId" = s."id") ORDER BY s."id"`,
  };
  const places: Selection<PlaceRow> = {
    columns: { growOutId: "text", stewardId: "text", plotId: "text" },
    rows: sql`SELECT g."id" AS "growOutId", g."stewardId", p."plotId" FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId"
        JOIN "Variety" own ON own."id" = ${varietyId} LEFT JOIN "GrowOutPlot" p ON p."growOutId" = g."id"
      WHERE v."cropId" = own."cropId" ORDER BY g."id", p."id"`,
  };
  const type: Selection<TypeOfTrait & { readonly traitId: string | null }> = {
    columns: { trait: "text", traitId: "text", allowed: "text", offType: "text" },
    rows: sql`SELECT t."trait", t."traitId", t."allowed", t."offType" FROM "TypeTrait" t WHERE t."varietyId" = ${varietyId} ORDER BY t."id"`,
  };
  const passes: Selection<PassOfYears> = {
    columns: {
      ...{ id: "text", growOutId: "text", growOut: "text", sownFirst: "text", on: "text", onFirst: "text" },
      ...{ onLast: "text", note: "text", stewardId: "text", replacesId: "text", stage: "text", timing: "text" },
      ...{ looked: "number", pulled: "number", reason: "text", left: "number" },
    },
    rows: sql`SELECT p.*, g."name" AS "growOut", g."sownFirst" FROM "RoguePass" p JOIN "GrowOut" g ON g."id" = p."growOutId"
      WHERE g."varietyId" = ${varietyId} AND NOT EXISTS (SELECT 1 FROM "RoguePass" n WHERE n."replacesId" = p."id") ORDER BY p."id"`,
  };
  const found = await readTogether(db, {
    ...{ varieties, own: ownValuesOfVariety(varietyId), traits: traitsOfVariety(varietyId) },
    ...{ scores, places, type, passes, from, lots },
  });
  const [crop] = found.varieties;
  if (!crop) return null;
  const { type: ofType, passes: ofPasses, from: sownFrom } = found;
  return {
    ...{ varietyId, traits: traitLines(found.traits), scores: found.scores, type: ofType, passes: ofPasses },
    places: new Map([...grouped(found.places, ({ growOutId }) => growOutId)].map(([id, rows]) => [id, placeOf(rows)])),
    seed: { from: sownFrom, lots: found.lots },
    mating: profileOfCrop(crop, found.own),
  };
}

/** A trait of a variety over the years, by the id of its first version (the first that was scored, where none is named); null where there is no such variety. */
export async function readTraitYears(
  db: Database,
  varietyId: string,
  traitId: string | null,
): Promise<TraitYearsRead | null> {
  const rows = await readTraitRows(db, varietyId);
  return rows && traitYearsOf(rows, traitId);
}

/** One trait out of the rows of all, by the id of its first version; the first that was scored, where none is named. */
export function traitYearsOf(rows: TraitRows, traitId: string | null): TraitYearsRead {
  const { varietyId, scores, seed, mating, passes } = rows;
  const traits = traitsScored(rows);
  const trait = traits.find(({ id }) => id === traitId) ?? traits[0] ?? null;
  const all = trait ? scoredGrowOuts(trait, rows) : [];
  const growOuts = all.filter((growOut) => growOut.varietyId === varietyId);
  const others = all.filter((growOut) => growOut.varietyId !== varietyId);
  const names = new Map(scores.map((row) => [row.varietyId, row.variety]));
  const versions = new Set(trait?.versions.map(({ id }) => id));
  return {
    ...{ traits, trait, growOuts, others, passes, seed, mating },
    checks: possibleChecks(growOuts, others, names),
    type: rows.type.filter((line) =>
      line.traitId === null ? sameWord(line.trait, trait?.newest.name ?? "") : versions.has(line.traitId),
    ),
  };
}

/** The traits by which plants of the variety itself were scored. */
export function traitsScored({ varietyId, traits, scores }: TraitRows): TraitLine[] {
  const own = new Set(scores.filter((row) => row.varietyId === varietyId).map((row) => row.traitId));
  return traits.filter((line) => line.versions.some(({ id }) => own.has(id)));
}

function sameWord(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

/** Grow-outs with their plants by one version of the trait each: versions are never mixed. */
function scoredGrowOuts(trait: TraitLine, { scores: rows, places }: TraitRows): ScoredGrowOut[] {
  const growOuts = trait.versions.flatMap((version) =>
    [
      ...grouped(
        rows.filter((row) => row.traitId === version.id),
        (row) => row.growOutId,
      ),
    ].map(([id, scores]) => scoredGrowOut(id, version, scores, places.get(id) ?? placeOf([]))),
  );
  return growOuts.sort((one, other) => (one.year ?? Infinity) - (other.year ?? Infinity));
}

function scoredGrowOut(
  id: string,
  version: TraitVersion,
  scores: readonly ScoreRow[],
  place: PlaceOfGrowOut,
): ScoredGrowOut {
  const [first] = scores;
  const answers = countedTexts(scores);
  const isKept = ({ kept, parent }: ScoreRow) => kept === true || parent > 0;
  const plants = [...grouped(scores, (row) => row.plantId).values()].flatMap((own) => {
    // The last score of each person counts once.
    const byPerson = new Map(own.map((row) => [row.stewardId, scoreNumber(version, row)]));
    const values = [...byPerson.values()].filter((value) => value !== null);
    if (values.length === 0) return [];
    const value = values.reduce((sum, each) => sum + each, 0) / values.length;
    return [{ value, kept: own.some(isKept), cell: own[0]?.cell ?? null }];
  });
  const day = first?.sownFirst ?? scores.map(({ on }) => on).find((on) => on !== null) ?? "";
  const year = /^\d{4}/.exec(day)?.[0];
  return {
    id,
    name: first?.growOut ?? "",
    varietyId: first?.varietyId ?? "",
    year: year === undefined ? null : Number(year),
    version,
    plants,
    answers,
    keptAnswers: countedTexts(scores.filter(isKept)),
    scorers: new Set(scores.map(({ stewardId }) => stewardId)).size,
    place,
  };
}

/** How often each text stands. */
function countedTexts(scores: readonly ScoreRow[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { text } of scores) if (text !== null) counts.set(text, (counts.get(text) ?? 0) + 1);
  return counts;
}

function possibleChecks(
  growOuts: readonly ScoredGrowOut[],
  others: readonly ScoredGrowOut[],
  names: ReadonlyMap<string, string>,
): PossibleCheck[] {
  const years = new Set(growOuts.map(({ year }) => year));
  return [...grouped(others, ({ varietyId }) => varietyId)]
    .map(([varietyId, own]) => ({
      varietyId,
      variety: names.get(varietyId) ?? "",
      years: [...new Set(own.flatMap(({ year }) => (year !== null && years.has(year) ? [year] : [])))],
    }))
    .filter((check) => check.years.length > 0)
    .sort((one, other) => other.years.length - one.years.length);
}
