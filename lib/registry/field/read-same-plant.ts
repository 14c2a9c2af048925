import type { Database } from "@/lib/db";

/** One of two records that may be one plant. */
export interface PlantAsked {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  /** what was written of it, in order */
  readonly marks: readonly {
    readonly id: string;
    readonly on: string;
    readonly words: string;
    readonly by: string | null;
  }[];
  readonly scores: number;
}

export interface SamePlantRead {
  readonly id: string;
  readonly sentence: string;
  readonly answer: string | null;
  readonly growOut: { readonly id: string; readonly name: string };
  readonly lead: PlantAsked;
  readonly other: PlantAsked;
  /** true where the other is read as the first now */
  readonly one: boolean;
}

const plantWith = {
  include: { marks: { include: { steward: { include: { person: true } } }, orderBy: { id: "asc" } }, scores: true },
} as const;

/** A question whether two records are one plant; null where there is none. */
export async function readSamePlant(db: Database, questionId: string): Promise<SamePlantRead | null> {
  const question = await db.read.question.findUnique({
    where: { id: questionId },
    include: { growOut: true, plant: plantWith, otherPlant: plantWith },
  });
  if (!question?.plant || !question.otherPlant || !question.growOut) return null;
  const { plant, otherPlant, growOut } = question;
  return {
    ...{ id: questionId, sentence: question.sentence, answer: question.answer },
    growOut: { id: growOut.id, name: growOut.name },
    lead: asked(plant),
    other: asked(otherPlant),
    one: otherPlant.sameAsId === plant.id,
  };
}

type Stored = NonNullable<Awaited<ReturnType<typeof readStored>>>;
const readStored = (db: Database) => db.read.plant.findFirst(plantWith);

function asked({ id, name, cell, row, position, marks, scores }: Stored): PlantAsked {
  const place = [cell, row && `row ${row}`, position !== null && `place ${position}`].filter(Boolean).join(", ");
  return {
    ...{ id, name, place, scores: scores.length },
    marks: marks.map((mark) => ({
      id: mark.id,
      on: mark.on,
      words: [mark.intent, mark.tag && `tag ${mark.tag}`, mark.words].filter(Boolean).join(", "),
      by: mark.steward?.person?.name ?? null,
    })),
  };
}
