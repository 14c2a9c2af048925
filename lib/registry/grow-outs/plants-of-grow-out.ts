import { type Selection, sql } from "@/lib/db";
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

interface PlantRow {
  readonly id: string;
  readonly name: string;
  readonly cell: string | null;
  readonly kept: boolean | null;
  readonly seedGrams: number | null;
  readonly markId: string | null;
  readonly tag: string | null;
  readonly intent: string | null;
  readonly on: string | null;
  readonly words: string | null;
  readonly fate: string | null;
}

/** The plants of a grow-out in the order of entry, a row a mark that stands. */
export function plantsSelection(growOutId: string): Selection<PlantRow> {
  return {
    columns: {
      id: "text",
      name: "text",
      cell: "text",
      kept: "flag",
      seedGrams: "number",
      markId: "text",
      tag: "text",
      intent: "text",
      on: "text",
      words: "text",
      fate: "text",
    },
    rows: sql`
    SELECT p."id", p."name", p."cell", p."kept", p."seedGrams", m."id" AS "markId", m."tag", m."intent", m."on", m."words", m."fate"
    FROM "Plant" p LEFT JOIN "Mark" m ON m."plantId" = p."id" AND NOT EXISTS (SELECT 1 FROM "Mark" n WHERE n."replacesId" = m."id")
    WHERE p."growOutId" = ${growOutId} ORDER BY p."id", m."id"`,
  };
}

/** The scores of its plants that stand, in the order of entry. */
export function scoresSelection(growOutId: string): Selection<ScoreRow> {
  return {
    columns: { plantId: "text", trait: "text", unit: "text", value: "number", text: "text" },
    rows: sql`
    SELECT s."plantId", t."name" AS "trait", t."unit", s."value", s."text"
    FROM "Score" s JOIN "Plant" p ON p."id" = s."plantId" JOIN "Trait" t ON t."id" = s."traitId"
    WHERE p."growOutId" = ${growOutId} AND NOT s."takenBack" AND NOT EXISTS (SELECT 1 FROM "Score" n WHERE n."replacesId" = s."id")
    ORDER BY s."id"`,
  };
}

/** The plants with their marks and scores. */
export function plantsWithScores(rows: readonly PlantRow[], scored: readonly ScoreRow[]): PlantOfGrowOut[] {
  const scores = grouped(scored, (row) => row.plantId);
  return [...grouped(rows, (row) => row.id)].flatMap(([id, own]): PlantOfGrowOut[] => {
    const [plant] = own;
    if (!plant) return [];
    const { name, cell, kept, seedGrams } = plant;
    return [
      {
        id,
        name,
        cell,
        kept,
        seedGrams,
        marks: own.flatMap(({ markId, tag, intent, on, words, fate }) =>
          markId === null ? [] : [{ tag, intent: intent ?? "", on: on ?? "", words, fate }],
        ),
        scores: new Map((scores.get(id) ?? []).map(({ trait, value, text, unit }) => [trait, { value, text, unit }])),
      },
    ];
  });
}
