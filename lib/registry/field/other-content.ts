import { uuidv7 } from "uuidv7";
import { refusal } from "@/lib/science/outcome";
import { questionOf } from "./field-questions";
import type { Arrived } from "./heap";
import { refusalsStored, sameContent } from "./stored-record";
import type { Taking } from "./taking";

/** A second record under the id of another is kept beside it, once, and asked about: which of the two holds only a person can say. */
export async function keepOtherContent(
  taking: Taking,
  { record, body }: Arrived,
  { device }: { readonly device: { readonly id: string } },
): Promise<void> {
  const { change, tx, now, ground } = taking;
  const alike = await tx.fieldRecord.findMany({ where: { deviceId: device.id, sequence: record.sequence } });
  if (alike.some((row) => sameContent(JSON.parse(row.body), JSON.parse(body)))) return;
  const needed = "look at both, and enter at the desk what is right";
  const against = [refusal("id-twice", ["id"], record.id, "is the id of another record that came before", needed)];
  const id = uuidv7();
  await change.create("FieldRecord", {
    ...{ id, deviceId: device.id, sequence: record.sequence, growOutId: record.growOutId, kind: record.kind, body },
    ...{ recordedAt: record.recordedAt, recordedOffset: record.recordedOffset, arrivedAt: now.toISOString() },
    ...{ stewardId: null, state: "question", refusals: refusalsStored(against, null) },
  });
  const growOut = await ground.growOut(record.growOutId);
  await change.create("Question", questionOf(taking, id, record, growOut?.name ?? "", against));
}
