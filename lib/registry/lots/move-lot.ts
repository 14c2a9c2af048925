import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { MoveLotInput } from "@/lib/schemas/lots/lot-moves";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { unknownLot } from "../ledger/record-ledger-entry";
import { lotToMove } from "./lot-to-move";
import { moveFaults } from "./status-moves";

/**
 * Moves a lot on in its life (out of quarantine, on hold, released, finished, dead, discarded) with day, person and reason: they stand as an
 * observation of the lot beside its new status, so that they go out with it. Refused by `moveFaults`, for a day to come, and where it stands so.
 */
export async function moveLot(
  db: Database,
  actor: Actor,
  lotId: string,
  input: MoveLotInput,
  today: string,
): Promise<Outcome<Performed<{ lotId: string }>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId } });
  if (!lot) return refused(unknownLot(lotId));
  const operation = { action: "decide" as const, title: `Lot ${lot.number}: ${input.status}`, reason: input.reason };
  return perform(db, actor, operation, async (change, tx) => {
    if (input.on.first > today)
      return refused(refusal("in-the-future", ["on"], input.on.text, "is still to come", `write a day up to ${today}`));
    if (lot.status === input.status)
      return refused(refusal("as-it-is", ["status"], input.status, "is how it stands", "choose another, or leave it"));
    const faults = moveFaults(await lotToMove(tx, lot), input.status, input.reason);
    if (faults.length > 0) return refused(...faults);
    await writeMove(change, lot, { ...input, stewardId: actor.stewardId });
    return accepted({ lotId });
  });
}

/** How a lot stands from now on, since when, why, and who says so. */
export interface Move {
  readonly status: string;
  readonly on: FuzzyDate;
  readonly reason: string;
  readonly stewardId: string | null;
}

/** Writes a move inside a running change. */
export async function writeMove(change: ChangeWriter, lot: RowOf<"Lot">, move: Move): Promise<void> {
  const { status, on, reason, stewardId } = move;
  await change.update("Lot", lot.id, { status, statusReason: reason });
  await change.create("Observation", {
    ...{ id: uuidv7(), lotId: lot.id, on: on.text, onFirst: on.first, onLast: on.last, stewardId },
    words: `${lot.status === null ? "Now" : `From ${lot.status} to`} ${status}: ${reason}`,
  });
  change.touch(lot.varietyId);
}
