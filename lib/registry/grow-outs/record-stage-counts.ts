import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { StageCountCorrection, StageCountInput, StageCountsInput } from "@/lib/schemas/grow-outs/field-counts";
import { stages } from "@/lib/schemas/grow-outs/field-kinds";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { countFaults } from "./count-faults";
import { spokenOf } from "./counts-in-step";
import { inThisOrder, recordToCorrect, stewardFaults } from "./field-entries";
import { type Entering, entered, type FieldEntry, type FromPhone } from "./field-entry";
import type { CountOnRecord } from "./field-records";
import { growOutOf } from "./grow-out-of";
import { type InField, readInField } from "./in-field";

/**
 * Records counts of plants by stage, several at a time, and brings the grow-out's numbers into step. Refused with what would be right: more
 * plants than seeds sown, more in flower than stood, more replanted than lifted, a day before the sowing or still to come, males of a crop that
 * has none, fewer left than gave seed. Paths are `[stage, field]`.
 */
export async function recordStageCounts(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: StageCountsInput,
  today: CivilDay,
): Promise<Outcome<Performed<FieldEntry>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const said = input.counts.map(({ stage, plants }) => `${plants} ${stage}`).join(", ");
  const operation = { action: "record-in-field" as const, title: `Grow-out ${known.value.name}: ${said}` };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await readInField(tx, growOutId, today);
    if (!found.ok) return found;
    const faults = await stewardFaults(tx, input.stewardId);
    // In the order of stages, so that those of one sheet are judged beside each other.
    const rows = inThisOrder(input.counts, ({ stage }) => stages.indexOf(stage)).map((each) =>
      countRow(each, uuidv7(), input.stewardId),
    );
    return enterCounts(change, found.value, rows, { by: faults });
  });
}

/** Writes counts in their order, each judged beside those before it, and brings the grow-out's numbers into step. */
export async function enterCounts(
  change: ChangeWriter,
  field: InField,
  rows: readonly (CountOnRecord & Partial<FromPhone>)[],
  { judged = true, by = [] }: Entering & { readonly by?: readonly Refusal[] } = {},
): Promise<Outcome<FieldEntry>> {
  const growOutId = field.row.id;
  const faults = [
    ...by,
    ...rows.flatMap((row, place) => {
      const beside = [...field.counts, ...rows.slice(0, place)];
      return judged ? countFaults(row, beside, field.passes, field.growOut, [row.stage]) : [];
    }),
  ];
  if (faults.length > 0) return refused(...faults);
  await change.createAll(
    "StageCount",
    rows.map((row) => ({ ...row, growOutId })),
  );
  const is = { counts: [...field.counts, ...rows], passes: field.passes };
  const at = [rows.at(-1)?.stage ?? "standing", "plants"];
  return entered(change, field, is, rows, spokenOf({ counts: rows }), { at, judged });
}

/** Corrects a count by a new one that points to it; the old one stays to be read and counts no more. */
export async function correctStageCount(
  db: Database,
  actor: Actor,
  countId: string,
  input: StageCountCorrection,
  today: CivilDay,
): Promise<Outcome<Performed<FieldEntry>>> {
  const old = await recordToCorrect(db.read, "StageCount", countId);
  if (!old.ok) return old;
  const { growOutId, name, stewardId } = old.value;
  const operation = {
    action: "correct-in-field" as const,
    title: `Grow-out ${name}: count corrected`,
    reason: input.why,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await readInField(tx, growOutId, today);
    if (!found.ok) return found;
    const field = found.value;
    const row = { ...countRow(input, uuidv7(), stewardId), replacesId: countId };
    const others = field.counts.filter((count) => count.id !== countId);
    const faults = countFaults(row, others, field.passes, field.growOut);
    if (faults.length > 0) return refused(...faults);
    await change.create("StageCount", { ...row, growOutId });
    const is = { counts: [...others, row], passes: field.passes };
    const before = field.counts.filter((count) => count.id === countId);
    return entered(change, field, is, [row], spokenOf({ counts: [...before, row] }), { at: ["plants"] });
  });
}

function countRow(input: StageCountInput, id: string, stewardId: string | null): CountOnRecord {
  const { stage, plants, males, on, thinnedBy, note } = input;
  const seen = { on: on?.text ?? null, onFirst: on?.first ?? null, onLast: on?.last ?? null };
  return { id, stage, plants, males, ...seen, thinnedBy, note, stewardId, replacesId: null };
}
