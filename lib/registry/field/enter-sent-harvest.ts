import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { NewHarvestInput } from "@/lib/schemas/harvests/harvest-entry";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { enterHarvest, type RecordedHarvest } from "../harvests/record-harvest";
import { settleSent } from "./settle-sent";
import { sentRecord, superseded } from "./stored-record";
import { takingOf } from "./take-again";
import { partsOf } from "./take-harvest";
import { fromPhone, handOf } from "./taking";

/**
 * Enters at the desk a harvest that a phone recorded and that could not be taken as it was: with what the person wrote in its form. The record and the
 * seed that it names are settled with it. Refused as a harvest at the desk is, and where the record is settled already.
 */
export async function enterSentHarvest(
  db: Database,
  actor: Actor,
  sentId: string,
  input: NewHarvestInput,
  today: CivilDay,
  now: Date,
): Promise<Outcome<Performed<RecordedHarvest>>> {
  return perform(db, actor, { action: "record", title: "A harvest" }, async (change, tx) => {
    const stored = await tx.fieldRecord.findUnique({ where: { id: sentId } });
    const sent = stored && sentRecord(stored);
    if (stored?.state !== "question" || sent?.kind !== "harvest") {
      const needed = "look at what came home again";
      return refused(refusal("settled-already", [], "the harvest from the field", "is settled already", needed));
    }
    const taking = takingOf(db, actor, now, change, tx);
    const entered = await enterHarvest(change, sent.growOutId, input, today, {
      ...{ id: sent.id, from: fromPhone(sent), stewardId: await handOf(taking, sent) },
    });
    if (!entered.ok) return entered;
    const parts = await partsOf(taking, sent);
    const words = "Entered at the desk with its harvest";
    for (const row of parts.ok ? parts.value.rows : []) await settleSent(taking, row, { state: "taken", words });
    for (const row of parts.ok ? parts.value.replaced : [])
      await settleSent(taking, row, { state: "set aside", code: superseded, words: "Put right by a later record" });
    await settleSent(taking, stored, { state: "taken", words: "Entered at the desk" });
    return accepted(entered.value);
  });
}

/** What a harvest from the field says, for its form at the desk; null where it is none, or settled. */
export async function readSentHarvest(db: Database, sentId: string) {
  const stored = await db.read.fieldRecord.findUnique({ where: { id: sentId } });
  const sent = stored && stored.state === "question" ? sentRecord(stored) : null;
  if (sent?.kind !== "harvest") return null;
  const parts = await partsOf({ tx: db.read }, sent);
  const told = parts.ok ? parts.value.standing : [];
  const plants = await db.read.plant.findMany({
    where: { id: { in: told.map(({ body }) => body.plant.id) } },
    select: { id: true, sameAsId: true },
  });
  const leads = new Map(plants.map(({ id, sameAsId }) => [id, sameAsId ?? id]));
  return {
    on: sent.on,
    bulked: sent.body.bulked,
    note: sent.body.note,
    complete: parts.ok,
    parts: told.map(({ body: { plant, fate, grams, seeds } }) => ({
      ...{ plantId: leads.get(plant.id) ?? null, name: plant.name, fate, grams, seeds },
    })),
  };
}
export type SentHarvest = NonNullable<Awaited<ReturnType<typeof readSentHarvest>>>;
