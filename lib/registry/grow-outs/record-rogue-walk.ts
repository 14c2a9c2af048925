import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { RoguePassCorrection, RogueWalkInput } from "@/lib/schemas/grow-outs/field-counts";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { spokenOf } from "./counts-in-step";
import { recordToCorrect, stewardFaults } from "./field-entries";
import { type Entering, entered, type FieldEntry, type FromPhone } from "./field-entry";
import type { PassOnRecord } from "./field-records";
import { growOutOf } from "./grow-out-of";
import { type InField, readInField } from "./in-field";
import { walkFaults } from "./pass-faults";
import { walksOf } from "./walks";

/**
 * Records a walk through the plants: a line for each reason why plants were pulled, or one line of 0 where none was found. The plants rogued
 * before and after pollen shed follow. Refused with what would be right: more pulled than looked at or than stood, none pulled where nobody
 * says how many were looked at, fewer left than were passed by, a day before the sowing or still to come, fewer left than gave seed.
 */
export async function recordRogueWalk(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: RogueWalkInput,
  today: CivilDay,
): Promise<Outcome<Performed<FieldEntry>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const pulled = input.pulled.reduce((sum, line) => sum + line.plants, 0);
  const said = pulled === 0 ? "walked, none found" : `${pulled} pulled`;
  const operation = {
    action: "record-in-field" as const,
    title: `Grow-out ${known.value.name}: ${said}, ${input.on.text}`,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await readInField(tx, growOutId, today);
    if (!found.ok) return found;
    const by = await stewardFaults(tx, input.stewardId);
    return enterWalk(change, found.value, input, { by });
  });
}

/** Writes a walk, a row for each reason, and brings the grow-out's numbers into step; `id` is that of its first row. */
export async function enterWalk(
  change: ChangeWriter,
  field: InField,
  input: RogueWalkInput,
  {
    judged = true,
    by = [],
    id = uuidv7(),
    from,
  }: Entering & { readonly by?: readonly Refusal[]; readonly id?: string; readonly from?: FromPhone } = {},
): Promise<Outcome<FieldEntry>> {
  const pulled = input.pulled.reduce((sum, line) => sum + line.plants, 0);
  const own = judged ? walkFaults({ ...walkOf(input), pulled }, field.passes, field.counts, field.growOut) : [];
  const faults = [...own, ...by];
  if (faults.length > 0) return refused(...faults);
  const lines = input.pulled.length > 0 ? input.pulled : [{ reason: null, plants: 0 }];
  const rows = lines.map(
    ({ reason, plants }, place): PassOnRecord => ({
      id: place === 0 ? id : uuidv7(),
      ...walkOf(input),
      pulled: plants,
      reason,
      stage: input.stage,
      timing: input.timing,
      note: input.note,
      stewardId: input.stewardId,
      replacesId: null,
    }),
  );
  await change.createAll(
    "RoguePass",
    rows.map((row) => ({ ...stored(row, field.row.id), ...from })),
  );
  const is = { counts: field.counts, passes: [...field.passes, ...rows] };
  return entered(change, field, is, rows, spokenOf({ passes: rows }), { at: ["pulled"], judged });
}

/** Corrects a line of a walk by a new one that points to it; the old one stays to be read and counts no more. */
export async function correctRoguePass(
  db: Database,
  actor: Actor,
  passId: string,
  input: RoguePassCorrection,
  today: CivilDay,
): Promise<Outcome<Performed<FieldEntry>>> {
  const old = await recordToCorrect(db.read, "RoguePass", passId);
  if (!old.ok) return old;
  const { growOutId, name, stewardId } = old.value;
  const operation = {
    action: "correct-in-field" as const,
    title: `Grow-out ${name}: rogue pass corrected`,
    reason: input.why,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await readInField(tx, growOutId, today);
    if (!found.ok) return found;
    const field = found.value;
    const { pulled, reason, stage, timing, note } = input;
    const row: PassOnRecord = {
      id: uuidv7(),
      ...walkOf(input),
      ...{ pulled, reason, stage, timing, note },
      stewardId,
      replacesId: passId,
    };
    const others = field.passes.filter((pass) => pass.id !== passId);
    // The other lines of the same walk looked at the same plants.
    const walk = walksOf([...others, row]).find(({ passes }) => passes.some((pass) => pass.id === row.id));
    const apartFrom = others.filter((pass) => !walk?.passes.some((own) => own.id === pass.id));
    const judged = { ...walkOf(input), pulled: walk?.pulled ?? pulled };
    const faults = walkFaults(judged, apartFrom, field.counts, field.growOut);
    if (faults.length > 0) return refused(...faults);
    await change.create("RoguePass", stored(row, growOutId));
    const is = { counts: field.counts, passes: [...others, row] };
    const before = field.passes.filter((pass) => pass.id === passId);
    return entered(change, field, is, [row], spokenOf({ passes: [...before, row] }), { at: ["pulled"] });
  });
}

function walkOf({ on, looked, left }: Pick<RogueWalkInput, "on" | "looked" | "left">) {
  return { on: on.text, onFirst: on.first, onLast: on.last, looked, left };
}

/** A pass always has its day. */
function stored(row: PassOnRecord, growOutId: string) {
  return { ...row, growOutId, on: row.on ?? "", onFirst: row.onFirst ?? "", onLast: row.onLast ?? "" };
}
