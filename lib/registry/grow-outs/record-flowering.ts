import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { FloweringCorrection, FloweringNotesInput } from "@/lib/schemas/grow-outs/field-counts";
import { type Moment, moments, type Organ, organs } from "@/lib/schemas/grow-outs/field-kinds";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { inThisOrder, recordToCorrect, stewardFaults } from "./field-entries";
import type { Entering, FieldEntry, FromPhone } from "./field-entry";
import type { FloweringOnRecord } from "./field-records";
import { fieldWarnings } from "./field-warnings";
import { type FloweringSeen, floweringFaults } from "./flowering-faults";
import { growOutOf } from "./grow-out-of";
import { type InField, readInField } from "./in-field";

/**
 * Records flowering notes, several at a time: first, half and last of the flower, or of pollen and silk apart. Refused with what would be
 * right: a last before the first, a second note of one kind, a day before the sowing or still to come. Paths are `[organ, moment]`.
 */
export async function recordFlowering(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: FloweringNotesInput,
  today: CivilDay,
): Promise<Outcome<Performed<FieldEntry>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const said = input.notes.map(({ organ, moment, on }) => `${moment} ${organ} ${on.text}`).join(", ");
  const operation = { action: "record-in-field" as const, title: `Grow-out ${known.value.name}: ${said}` };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await readInField(tx, growOutId, today);
    if (!found.ok) return found;
    const by = await stewardFaults(tx, input.stewardId);
    const place = ({ organ, moment }: { organ: Organ; moment: Moment }) =>
      organs.indexOf(organ) * moments.length + moments.indexOf(moment);
    const rows = inThisOrder(input.notes, place).map(({ organ, moment, on }) => ({
      id: uuidv7(),
      ...{ organ, moment, on: on.text, onFirst: on.first, onLast: on.last },
      ...{ note: input.note, stewardId: input.stewardId, replacesId: null },
    }));
    return enterFlowering(change, found.value, rows, { by });
  });
}

/** Writes flowering notes in their order, each judged beside those before it. */
export async function enterFlowering(
  change: ChangeWriter,
  field: InField,
  rows: readonly (FloweringOnRecord & FloweringSeen & Partial<FromPhone>)[],
  { judged = true, by = [] }: Entering & { readonly by?: readonly Refusal[] } = {},
): Promise<Outcome<FieldEntry>> {
  const growOutId = field.row.id;
  const faults = [
    ...by,
    ...rows.flatMap((row, place) => {
      const beside = [...field.flowering, ...rows.slice(0, place)];
      return judged ? floweringFaults(row, beside, field.growOut, [row.organ, row.moment]) : [];
    }),
  ];
  if (faults.length > 0) return refused(...faults);
  await change.createAll(
    "FloweringNote",
    rows.map((row) => stored(row, growOutId)),
  );
  change.touch(field.row.varietyId);
  const warnings = fieldWarnings({ ...field, flowering: [...field.flowering, ...rows] });
  return accepted({
    growOutId,
    ids: rows.map((row) => row.id),
    warnings: rows.flatMap((row) => warnings.get(row.id) ?? []),
  });
}

/** Corrects a flowering note by a new one that points to it; the old one stays to be read and counts no more. */
export async function correctFlowering(
  db: Database,
  actor: Actor,
  noteId: string,
  input: FloweringCorrection,
  today: CivilDay,
): Promise<Outcome<Performed<FieldEntry>>> {
  const old = await recordToCorrect(db.read, "FloweringNote", noteId);
  if (!old.ok) return old;
  const { growOutId, name, stewardId } = old.value;
  const operation = {
    action: "correct-in-field" as const,
    title: `Grow-out ${name}: flowering corrected`,
    reason: input.why,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await readInField(tx, growOutId, today);
    if (!found.ok) return found;
    const field = found.value;
    const { organ, moment, on, note } = input;
    const seen = { organ, moment, on: on.text, onFirst: on.first, onLast: on.last };
    const row = { id: uuidv7(), ...seen, note, stewardId, replacesId: noteId };
    const others = field.flowering.filter((each) => each.id !== noteId);
    const faults = floweringFaults(row, others, field.growOut, ["on"]);
    if (faults.length > 0) return refused(...faults);
    await change.create("FloweringNote", stored(row, growOutId));
    change.touch(field.row.varietyId);
    const warnings = fieldWarnings({ ...field, flowering: [...others, row] }).get(row.id) ?? [];
    return accepted({ growOutId, ids: [row.id], warnings });
  });
}

/** A flowering note always has its day. */
function stored(row: FloweringOnRecord, growOutId: string) {
  return { ...row, growOutId, on: row.on ?? "", onFirst: row.onFirst ?? "", onLast: row.onLast ?? "" };
}
