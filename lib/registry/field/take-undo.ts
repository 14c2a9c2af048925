import type { FieldRecordOf } from "@/lib/schemas/field/field-records";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { againstReversal, reversalsOf, reverse } from "../change-set/undo-change-set";
import type { FieldTable } from "../grow-outs/field-entries";
import { readInField } from "../grow-outs/in-field";
import { withoutRows } from "../grow-outs/take-back-field-record";
import { askWhetherSame } from "./same-plant-questions";
import { settleSent } from "./settle-sent";
import { isTakenBack, type StoredRecord, takenBack, waitFor } from "./stored-record";
import { dropBarePlant } from "./take-plant";
import { dayAt, type Taking } from "./taking";

/**
 * A phone takes a record of its own back. What was not settled is set aside; what was taken goes, by the registry's own ways, and stays in the history.
 * Waits for a record that has not come; refused where somebody has since put it right or built on it.
 */
export async function takeUndo(taking: Taking, record: FieldRecordOf<"undo">): Promise<Outcome<null>> {
  const stored = await taking.tx.fieldRecord.findUnique({ where: { id: record.body.of } });
  if (!stored) return refused(waitFor(record.body.of, "what it takes back"));
  if (stored.deviceId !== record.deviceId || stored.kind === "undo") {
    const needed = "take it back at the desk, if it is wrong";
    return refused(refusal("not-undone", ["of"], stored.kind, "cannot be taken back from this phone", needed));
  }
  if (isTakenBack(stored)) return accepted(null);
  if (stored.state === "taken") {
    const gone = await takeRowsBack(taking, stored);
    if (!gone.ok) return gone;
  }
  const again = await taking.tx.fieldRecord.findUniqueOrThrow({ where: { id: stored.id } });
  await settleSent(taking, again, { state: "set aside", code: takenBack, words: "Taken back on the phone" });
  return accepted(null);
}

async function takeRowsBack(taking: Taking, stored: StoredRecord): Promise<Outcome<unknown>> {
  switch (stored.kind) {
    case "mark":
      return markBack(taking, stored);
    case "score":
      return scoreBack(taking, stored);
    case "walk":
      return countedBack(taking, stored, "RoguePass");
    case "count":
      return countedBack(taking, stored, "StageCount");
    case "flowering":
      return countedBack(taking, stored, "FloweringNote");
    case "photo":
      return photoBack(taking, stored);
    case "harvest":
      return harvestBack(taking, stored);
    default: {
      const needed = "put the harvest right at the desk";
      return refused(refusal("not-undone", ["of"], "seed taken in", "was entered with its harvest", needed));
    }
  }
}

/** A mark goes; what it had replaced stands again, or what has replaced it stands in that one's place. */
async function markBack(taking: Taking, { id }: StoredRecord): Promise<Outcome<null>> {
  const { change, tx, ground } = taking;
  const mark = await tx.mark.findUnique({ where: { id }, include: { plant: true } });
  if (!mark) return accepted(null);
  const next = await tx.mark.findUnique({ where: { replacesId: id } });
  if (next) await change.update("Mark", next.id, { replacesId: null });
  await change.remove("Mark", [id]);
  if (next) await change.update("Mark", next.id, { replacesId: mark.replacesId });
  const { growOutId } = mark.plant;
  ground.forget(growOutId);
  await plantAfter(taking, growOutId, mark.plantId);
  return accepted(null);
}

async function scoreBack(taking: Taking, { id }: StoredRecord): Promise<Outcome<null>> {
  const { change, tx, ground } = taking;
  const score = await tx.score.findUnique({ where: { id }, include: { plant: true } });
  if (!score) return accepted(null);
  const next = await tx.score.findUnique({ where: { replacesId: id } });
  if (next) await change.update("Score", next.id, { replacesId: null });
  await change.remove("Score", [id]);
  if (next) await change.update("Score", next.id, { replacesId: score.replacesId });
  const { growOutId } = score.plant;
  ground.forget(growOutId);
  await plantAfter(taking, growOutId, score.plantId);
  return accepted(null);
}

/** The plant's open questions as it now is; where nothing is said of it any more, it goes. */
async function plantAfter(taking: Taking, growOutId: string, plantId: string): Promise<void> {
  const { change, tx, ground } = taking;
  const growOut = await ground.growOut(growOutId);
  change.touch(growOut?.varietyId);
  const here = await ground.plantsOf(growOutId);
  const bare = (await tx.mark.count({ where: { plantId } })) + (await tx.score.count({ where: { plantId } })) === 0;
  if (bare) {
    // A plant of which nothing stands is asked of no more.
    const open = [...here.questions.values()].filter(
      (each) => each.answeredAt === null && (each.plantId === plantId || each.otherPlantId === plantId),
    );
    await change.remove(
      "Question",
      open.map(({ id }) => id),
    );
    for (const { id } of open) here.questions.delete(id);
    await dropBarePlant(taking, growOutId, plantId);
    return;
  }
  await askWhetherSame(taking, growOutId, plantId);
}

async function countedBack(taking: Taking, stored: StoredRecord, table: FieldTable): Promise<Outcome<unknown>> {
  const { tx, now } = taking;
  if (stored.growOutId === null) return accepted(null);
  const of = { deviceId: stored.deviceId, deviceSequence: stored.sequence, growOutId: stored.growOutId };
  const find = { where: of, select: { id: true } };
  const rows =
    table === "StageCount"
      ? await tx.stageCount.findMany(find)
      : table === "RoguePass"
        ? await tx.roguePass.findMany(find)
        : await tx.floweringNote.findMany(find);
  const ids = rows.map(({ id }) => id);
  if (ids.length === 0) return accepted(null);
  const corrected = { where: { replacesId: { in: ids } } };
  const since =
    table === "StageCount"
      ? await tx.stageCount.count(corrected)
      : table === "RoguePass"
        ? await tx.roguePass.count(corrected)
        : await tx.floweringNote.count(corrected);
  if (since > 0) {
    const needed = "say which of the two holds";
    return refused(refusal("corrected-since", ["of"], stored.kind, "was put right at the desk since", needed));
  }
  const field = await readInField(tx, stored.growOutId, dayAt(now, stored.recordedOffset));
  return field.ok ? withoutRows(taking.change, field.value, table, ids, ["of"]) : field;
}

async function photoBack({ change, tx }: Taking, { id }: StoredRecord): Promise<Outcome<null>> {
  if (await tx.photo.findUnique({ where: { id }, select: { id: true } })) await change.remove("Photo", [id]);
  return accepted(null);
}

/** A harvest stands alone in its change set: that is taken back as the history would, and its seed waits again. */
async function harvestBack(taking: Taking, { id }: StoredRecord): Promise<Outcome<null>> {
  const { change, tx } = taking;
  const made = await tx.change.findFirst({
    where: { recordId: id, tableName: "Harvest", action: "create" },
    orderBy: { changeSet: { number: "desc" } },
  });
  if (!made || !(await tx.harvest.findUnique({ where: { id } }))) return accepted(null);
  const reversals = await reversalsOf(tx, made.changeSetId);
  const against = await againstReversal(tx, taking.engine, reversals);
  if (against.length > 0) return refused(...against);
  await reverse(change, reversals);
  change.touchAll();
  return accepted(null);
}
