import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import { moments, type Organ } from "@/lib/schemas/grow-outs/field-kinds";
import type { NeighbourFloweringInput } from "@/lib/schemas/neighbours/neighbour-flowering";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import { type FloweringOnRecord, standingOf, surelyBefore } from "../grow-outs/field-records";
import { neighbourOf } from "./neighbour-of";

type Note = RowOf<"FloweringNote">;

/**
 * Writes down a day on which a neighbour source was seen in flower or shedding pollen. Noted already is refused: `correct` puts the note
 * that stands right, by a new one that points to it. Refused too: a day that has not come, and first, half and last out of order.
 */
export async function recordNeighbourFlowering(
  db: Database,
  actor: Actor,
  neighbourId: string,
  input: NeighbourFloweringInput,
  today: CivilDay,
  correct = false,
): Promise<Outcome<Performed<{ growOutId: string }>>> {
  const found = await neighbourOf(db.read, neighbourId);
  if (!found.ok) return found;
  const { growOut, neighbour } = found.value;
  const title = `Grow-out ${growOut.name}: ${input.moment} ${input.organ} of ${neighbour.what}, ${input.on.text}`;
  return perform(db, actor, { action: correct ? "correct" : "record", title }, async (change, tx) => {
    const standing = await notesThatStand(tx, neighbourId);
    const same = standing.find((note) => note.organ === input.organ && note.moment === input.moment);
    const others = standing.filter((note) => note !== same);
    const faults = noteFaults(input, others, today);
    if (same && !correct) {
      const needed = "say that it puts that one right";
      faults.push(
        refusal("noted-already", ["on"], input.on.text, `cannot stand beside ${same.on}, noted already`, needed),
      );
    }
    if (faults.length > 0) return refused(...faults);
    await change.create("FloweringNote", {
      id: uuidv7(),
      neighbourId,
      organ: input.organ,
      moment: input.moment,
      on: input.on.text,
      onFirst: input.on.first,
      onLast: input.on.last,
      stewardId: actor.stewardId,
      note: input.note,
      replacesId: same?.id ?? null,
    });
    change.touch(growOut.varietyId);
    return accepted({ growOutId: growOut.id });
  });
}

async function notesThatStand(tx: Transaction, neighbourId: string): Promise<(Note & FloweringOnRecord)[]> {
  const rows = await tx.floweringNote.findMany({ where: { neighbourId }, orderBy: { id: "asc" } });
  return standingOf(rows) as (Note & FloweringOnRecord)[];
}

function noteFaults(input: NeighbourFloweringInput, others: readonly FloweringOnRecord[], today: CivilDay): Refusal[] {
  const { on } = input;
  const faults: Refusal[] = [];
  if (on.first > today)
    faults.push(refusal("not-yet", ["on"], on.text, "has not come yet", "write the day on which it was seen"));
  const seen = { on: on.text, onFirst: on.first, onLast: on.last, note: null, stewardId: null, replacesId: null };
  for (const other of others.filter((each) => each.organ === (input.organ as Organ))) {
    const order = moments.indexOf(input.moment) - moments.indexOf(other.moment);
    const crossed = order > 0 ? surelyBefore(seen, other) : order < 0 && surelyBefore(other, seen);
    if (!crossed) continue;
    const wrong = `cannot be ${input.moment}: ${other.moment} was on ${other.on}`;
    faults.push(refusal("out-of-order", ["on"], on.text, wrong, "first, half and last come in this order"));
  }
  return faults;
}
