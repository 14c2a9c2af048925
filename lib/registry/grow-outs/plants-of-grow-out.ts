import type { Database } from "@/lib/db";
import { grouped } from "../change-set/grouped";

/** A plant with what was seen of it. */
export interface PlantOfGrowOut {
  readonly id: string;
  readonly name: string;
  readonly cell: string | null;
  readonly kept: boolean | null;
  readonly seedGrams: number | null;
  /** tags and intents, in the order in which they were given */
  readonly marks: readonly {
    tag: string | null;
    intent: string;
    on: string;
    words: string | null;
    fate: string | null;
  }[];
  /** by trait: the newest score; nothing where it was not scored */
  readonly scores: ReadonlyMap<string, { value: number | null; text: string | null; unit: string | null }>;
}

interface ScoreRow {
  readonly plantId: string;
  readonly trait: string;
  readonly unit: string | null;
  readonly value: number | null;
  readonly text: string | null;
}

/** The plants of a grow-out in the order of entry, with marks and scores that stand. Three statements. */
export async function plantsOfGrowOut(db: Database, growOutId: string): Promise<PlantOfGrowOut[]> {
  const plants = await db.read.plant.findMany({ where: { growOutId }, orderBy: { id: "asc" } });
  const rows = await db.read.$queryRaw<ScoreRow[]>`
  SELECT s."plantId", t."name" AS "trait", t."unit", s."value", s."text"
  FROM "Score" s JOIN "Plant" p ON p."id" = s."plantId" JOIN "Trait" t ON t."id" = s."traitId"
  WHERE p."growOutId" = ${growOutId} AND NOT s."takenBack" AND NOT EXISTS (SELECT 1 FROM "Score" n WHERE n."replacesId" = s."id")
  ORDER BY s."id"`;
  const scores = grouped(rows, (row) => row.plantId);
  const marks = grouped(
    await db.read.mark.findMany({ where: { plant: { growOutId } }, orderBy: { id: "asc" } }),
    (mark) => mark.plantId,
  );
  return plants.map((plant) => {
    const own = marks.get(plant.id) ?? [];
    const replaced = new Set(own.flatMap((mark) => mark.replacesId ?? []));
    return {
      id: plant.id,
      name: plant.name,
      cell: plant.cell,
      kept: plant.kept,
      seedGrams: plant.seedGrams,
      marks: own
        .filter((mark) => !replaced.has(mark.id))
        .map(({ tag, intent, on, words, fate }) => ({ tag, intent, on, words, fate })),
      scores: new Map(
        (scores.get(plant.id) ?? []).map(({ trait, value, text, unit }) => [trait, { value, text, unit }]),
      ),
    };
  });
}
