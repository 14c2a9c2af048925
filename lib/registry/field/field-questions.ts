import { uuidv7 } from "uuidv7";
import type { FieldKind, FieldRecord } from "@/lib/schemas/field/field-records";
import type { Refusal } from "@/lib/science/outcome";
import type { NewRowOf } from "../change-set/records";
import { fromField } from "./asked-of-grow-out";
import { dayAt, type Taking } from "./taking";

/** What a record is called, with its plant where it has one. */
export function recordInWords(record: FieldRecord): string {
  const noun = nouns[record.kind];
  return "plant" in record.body && record.body.plant ? `${noun} of plant ${record.body.plant.name}` : noun;
}

const nouns: Readonly<Record<FieldKind, string>> = {
  mark: "mark",
  score: "score",
  walk: "rogue pass",
  count: "count",
  flowering: "flowering note",
  taken: "seed taken in",
  harvest: "harvest",
  photo: "picture",
  undo: "taking back",
};

/** The question that a person has to settle: what stands against a record, in a plain sentence. */
export function questionOf(
  { now, actor }: Pick<Taking, "now" | "actor">,
  fieldRecordId: string,
  record: FieldRecord,
  growOutName: string,
  refusals: readonly Refusal[],
): NewRowOf<"Question"> {
  const said = refusals.map(({ sentence }) => sentence).join("; ");
  return {
    ...{ id: uuidv7(), kind: fromField, growOutId: record.growOutId, fieldRecordId },
    sentence: `From the field, ${recordInWords(record)} of grow-out ${growOutName}, ${record.on}: ${said}.`,
    raisedAt: dayAt(now, actor.offsetMinutes),
  };
}
