import { readTogether, type Selection, sql } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import type { RowOf } from "../change-set/records";
import { type TraitLine, traitLines, traitsOfGrowOut } from "../traits/list-traits";

/** A mark that stands: no later one replaces it. */
export interface StandingMark {
  readonly id: string;
  readonly tag: string | null;
  readonly intent: string;
  readonly on: string;
  readonly words: string | null;
  readonly fate: string | null;
  readonly stewardId: string | null;
}

/** A score that stands: neither replaced nor taken back. */
export interface StandingScore {
  readonly id: string;
  /** the version of the trait by which it was given */
  readonly traitId: string;
  readonly value: number | null;
  readonly text: string | null;
  readonly on: string | null;
  readonly stewardId: string | null;
}

/** A plant with what was seen of it. */
export interface PlantOfGrowOut {
  readonly id: string;
  readonly name: string;
  /** names of other records that are read as this plant */
  readonly otherNames: readonly string[];
  readonly cell: string | null;
  readonly row: string | null;
  /** place in its row */
  readonly position: number | null;
  readonly kept: boolean | null;
  readonly seedGrams: number | null;
  /** in the order in which they were given; two stewards may each have marked it */
  readonly marks: readonly StandingMark[];
  /** by trait (its first version), in the order in which they were given; nothing where it was not scored */
  readonly scores: ReadonlyMap<string, readonly StandingScore[]>;
}

export interface PlantsRead {
  readonly plants: readonly PlantOfGrowOut[];
  /** every trait that the variety's plants may be scored by, and those by which some here were */
  readonly traits: readonly TraitLine[];
}

type PlantRow = Pick<PlantOfGrowOut, "id" | "name" | "cell" | "row" | "position" | "kept" | "seedGrams"> & {
  readonly sameAsId: string | null;
};
type MarkRow = StandingMark & { readonly plantId: string };
type ScoreRow = StandingScore & { readonly plantId: string };

/**
 * The plants of a grow-out, the marks and scores that stand, and the traits, each in the order of entry. What stands on a record that is read as another
 * plant's belongs to that one.
 */
export function plantSelections(growOutId: string) {
  const plants: Selection<PlantRow> = {
    columns: {
      ...{ id: "text", name: "text", cell: "text", row: "text", position: "number" },
      ...{ kept: "flag", seedGrams: "number", sameAsId: "text" },
    },
    rows: sql`SELECT p.* FROM "Plant" p WHERE p."growOutId" = ${growOutId} ORDER BY p."id"`,
  };
  const marks: Selection<MarkRow> = {
    columns: {
      ...{ id: "text", plantId: "text", tag: "text", intent: "text" },
      ...{ on: "text", words: "text", fate: "text", stewardId: "text" },
    },
    rows: sql`SELECT m."id", COALESCE(p."sameAsId", p."id") AS "plantId", m."tag", m."intent", m."on", m."words", m."fate", m."stewardId"
      FROM "Mark" m JOIN "Plant" p ON p."id" = m."plantId"
      WHERE p."growOutId" = ${growOutId} AND NOT EXISTS (SELECT 1 FROM "Mark" n WHERE n."replacesId" = m."id") ORDER BY m."id"`,
  };
  const scores: Selection<ScoreRow> = {
    columns: {
      ...{ id: "text", plantId: "text", traitId: "text" },
      ...{ value: "number", text: "text", on: "text", stewardId: "text" },
    },
    rows: sql`SELECT s."id", COALESCE(p."sameAsId", p."id") AS "plantId", s."traitId", s."value", s."text", s."on", s."stewardId"
      FROM "Score" s JOIN "Plant" p ON p."id" = s."plantId"
      WHERE p."growOutId" = ${growOutId} AND NOT s."takenBack"
        AND NOT EXISTS (SELECT 1 FROM "Score" n WHERE n."replacesId" = s."id") ORDER BY s."id"`,
  };
  return { plants, marks, scores, traits: traitsOfGrowOut(growOutId) };
}

/** The plants with their marks and scores. */
export function plantsRead(found: {
  readonly plants: readonly PlantRow[];
  readonly marks: readonly MarkRow[];
  readonly scores: readonly ScoreRow[];
  readonly traits: readonly RowOf<"Trait">[];
}): PlantsRead {
  const traits = traitLines(found.traits);
  const lineOf = new Map(traits.flatMap((line) => line.versions.map((version) => [version.id, line.id] as const)));
  const marksOf = grouped(found.marks, (mark) => mark.plantId);
  const scoresOf = grouped(found.scores, (score) => score.plantId);
  return {
    traits,
    plants: plantsAsOne(found.plants).map((plant) => ({
      ...plant,
      marks: (marksOf.get(plant.id) ?? []).map(({ plantId: _plant, ...mark }) => mark),
      scores: grouped(
        (scoresOf.get(plant.id) ?? []).map(({ plantId: _plant, ...score }) => score),
        (score) => lineOf.get(score.traitId) ?? score.traitId,
      ),
    })),
  };
}

/** Each plant once: what the leading record does not say, another of its records may. */
function plantsAsOne(rows: readonly PlantRow[]) {
  const others = grouped(rows, (row) => row.sameAsId);
  return rows.flatMap(({ sameAsId, ...plant }) => {
    if (sameAsId !== null) return [];
    const own = others.get(plant.id) ?? [];
    const said = <F extends "cell" | "row" | "position" | "kept">(field: F) =>
      plant[field] ?? own.find((other) => other[field] !== null)?.[field] ?? null;
    const place = { cell: said("cell"), row: said("row"), position: said("position") };
    const grams = [plant, ...own].flatMap(({ seedGrams }) => seedGrams ?? []);
    return [
      {
        ...plant,
        ...place,
        kept: said("kept"),
        seedGrams: grams.length === 0 ? null : grams.reduce((sum, each) => sum + each, 0),
        otherNames: own.map(({ name }) => name),
      },
    ];
  });
}

/** The plants of a grow-out. One statement; `db` may be a transaction's own reading. */
export async function plantsOfGrowOut(db: Parameters<typeof readTogether>[0], growOutId: string): Promise<PlantsRead> {
  return plantsRead(await readTogether(db, plantSelections(growOutId)));
}

/** The mark that a plant's row shows: the newest. */
export function markShown(plant: Pick<PlantOfGrowOut, "marks">): StandingMark | null {
  return plant.marks.at(-1) ?? null;
}

/** The score that a plant's cell shows: the newest. */
export function scoreShown(plant: Pick<PlantOfGrowOut, "scores">, traitId: string): StandingScore | null {
  return plant.scores.get(traitId)?.at(-1) ?? null;
}

/**
 * The score in a cell of the grid that is filled in by a person: that person's own and nobody else's, so that what is written there counts as theirs, be
 * it another's equal or not. Where nobody said who fills it in, the newest of all.
 */
export function scoreInCell(
  plant: Pick<PlantOfGrowOut, "scores">,
  traitId: string,
  stewardId: string | null,
): StandingScore | null {
  if (stewardId === null) return scoreShown(plant, traitId);
  return plant.scores.get(traitId)?.findLast((score) => score.stewardId === stewardId) ?? null;
}
