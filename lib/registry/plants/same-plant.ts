import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { growOutForHarvest } from "../harvests/grow-out-for-harvest";
import { keepInStep } from "../harvests/keep-in-step";

/*
 * Two records of one plant, as of one lot: the one leads, the other points to it (`sameAsId`) and keeps its rows. Reading sees one plant.
 */

/** A question whether two records are one plant, with the two. */
async function askedOf(db: Pick<Database, "read">, questionId: string) {
  const question = await db.read.question.findUnique({
    where: { id: questionId },
    include: { plant: true, otherPlant: true },
  });
  return question?.plant && question.otherPlant
    ? { ...question, plant: question.plant, other: question.otherPlant }
    : null;
}

/**
 * Answers whether two records are one plant. If they are, the one leads; marks, scores and seed of both are read as one plant's, and nothing is rewritten.
 * Refused: a question that is answered, a record that points to another or leads one already, a plant whose seed would be counted twice in a harvest.
 */
export async function answerSamePlant(
  db: Database,
  actor: Actor,
  questionId: string,
  { same, why }: { readonly same: boolean; readonly why: string },
  today: CivilDay,
): Promise<Outcome<Performed<{ growOutId: string }>>> {
  const asked = await askedOf(db, questionId);
  if (!asked || asked.answeredAt !== null) {
    const needed = "look at what came home again";
    return refused(refusal("settled-already", ["same"], "the question", "is answered already", needed));
  }
  const { plant, other } = asked;
  const title = `Plants ${plant.name} and ${other.name} are ${same ? "one" : "two"}`;
  return perform(db, actor, { action: "correct-in-field", title, reason: why }, async (change, tx) => {
    const growOut = await tx.growOut.findUniqueOrThrow({ where: { id: plant.growOutId } });
    if (same) {
      const faults = await sameFaults(change, plant.id, other.id);
      if (faults.length > 0) return refused(...faults);
      await change.update("Plant", other.id, { sameAsId: plant.id });
      const step = await seedInStep(change, plant.growOutId);
      if (!step.ok) return step;
    }
    await change.update("Question", questionId, { answer: why, answeredAt: today });
    change.touch(growOut.varietyId);
    return accepted({ growOutId: plant.growOutId });
  });
}

/** A record stands for a plant of its own again, with the rows that were its own all along; the question whether they are one is open again. */
export async function takeSamePlantBack(
  db: Database,
  actor: Actor,
  plantId: string,
  why: string,
): Promise<Outcome<Performed<{ growOutId: string }>>> {
  const known = await db.read.plant.findUnique({ where: { id: plantId } });
  if (!known?.sameAsId) {
    const needed = "nothing is to be taken back";
    return refused(refusal("not-the-same", ["plant"], known?.name ?? plantId, "is read as no other plant", needed));
  }
  const title = `Plant ${known.name} stands for itself again`;
  return perform(db, actor, { action: "correct-in-field", title, reason: why }, async (change, tx) => {
    const growOut = await tx.growOut.findUniqueOrThrow({ where: { id: known.growOutId } });
    await change.update("Plant", plantId, { sameAsId: null });
    const pair = [plantId, known.sameAsId ?? ""];
    const asked = await tx.question.findMany({ where: { plantId: { in: pair }, otherPlantId: { in: pair } } });
    await change.updateMany(
      "Question",
      asked.map(({ id }) => ({ id, patch: { answer: null, answeredAt: null } })),
    );
    const step = await seedInStep(change, known.growOutId);
    if (!step.ok) return step;
    change.touch(growOut.varietyId);
    return accepted({ growOutId: known.growOutId });
  });
}

async function sameFaults({ tx }: ChangeWriter, leadId: string, otherId: string): Promise<Refusal[]> {
  const [lead, other] = [
    await tx.plant.findUniqueOrThrow({ where: { id: leadId }, include: { otherRecords: true } }),
    await tx.plant.findUniqueOrThrow({ where: { id: otherId }, include: { otherRecords: true } }),
  ];
  for (const each of [lead, other]) {
    if (each.sameAsId === null) continue;
    const needed = "let that one stand for itself first";
    return [refusal("stands-for-another", ["same"], each.name, "is read as another plant already", needed)];
  }
  if (other.otherRecords.length > 0) {
    const needed = "let that one stand for itself first";
    return [refusal("leads-already", ["same"], other.name, "leads another record", needed)];
  }
  const harvests = await tx.harvestSeedParent.findMany({ where: { plantId: { in: [leadId, otherId] } } });
  const both = harvests.some(({ harvestId, plantId }) =>
    harvests.some((each) => each.harvestId === harvestId && each.plantId !== plantId),
  );
  if (!both) return [];
  const needed = "put the harvest right first";
  return [refusal("twice-in-harvest", ["same"], other.name, "stands in one harvest beside the other", needed)];
}

/** What the harvests say of the grow-out and its plants follows. */
async function seedInStep(change: ChangeWriter, growOutId: string): Promise<Outcome<null>> {
  const read = await growOutForHarvest(change.tx, growOutId);
  if (!read.ok) return read;
  return read.value.harvests.length === 0 ? accepted(null) : keepInStep(change, read.value, read.value.harvests, null);
}
