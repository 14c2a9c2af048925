import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { MoistureReadingInput } from "@/lib/schemas/drying/drying-forms";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { unknownLot } from "../ledger/record-ledger-entry";

/** Writes down how moist a lot's seed is, or the air that it rests in. Refused: a reading that says neither. */
export async function recordMoisture(
  db: Database,
  actor: Actor,
  lotId: string,
  { on, ...reading }: MoistureReadingInput,
): Promise<Outcome<Performed<{ readingId: string }>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId } });
  if (!lot) return refused(unknownLot(lotId));
  return perform(db, actor, { action: "desk", title: `Lot ${lot.number}: moisture read` }, async (change) => {
    if (reading.percent === null && reading.relativeHumidityPercent === null) {
      const needed = "write the moisture of the seed, or the humidity of the air in its jar";
      return refused(refusal("missing", ["percent"], "", "stands here", needed));
    }
    const readingId = uuidv7();
    const date = { on: on.text, onFirst: on.first, onLast: on.last };
    await change.create("MoistureReading", { id: readingId, lotId, ...date, ...reading });
    change.touch(lot.varietyId);
    return accepted({ readingId });
  });
}
