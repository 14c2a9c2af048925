import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { LookInput } from "@/lib/schemas/neighbours/look";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { growOutOf } from "../grow-outs/grow-out-of";

/**
 * Writes down the day on which somebody last looked for neighbours of a grow-out. Looked and none found is said by the day and an empty
 * list, so none cannot have been found where sources stand on record. Refused too: a day that has not come.
 */
export async function recordLook(
  db: Database,
  actor: Actor,
  growOutId: string,
  { on, noneFound }: LookInput,
  today: CivilDay,
): Promise<Outcome<Performed<null>>> {
  const growOut = await growOutOf(db.read, growOutId);
  if (!growOut.ok) return growOut;
  const found = noneFound ? ", none found" : "";
  const title = `Grow-out ${growOut.value.name}: looked for neighbours on ${on.text}${found}`;
  return perform(db, actor, { action: "record-in-field", title }, async (change, tx) => {
    if (on.first > today)
      return refused(refusal("not-yet", ["on"], on.text, "has not come yet", "write the day on which somebody looked"));
    const standing = noneFound ? await tx.neighbourSource.count({ where: { growOutId } }) : 0;
    if (standing > 0) {
      const needed = "take them out where they are gone, or leave this box empty";
      const wrong = `cannot be said: ${standing} on record`;
      return refused(refusal("some-on-record", ["noneFound"], "none found", wrong, needed));
    }
    await change.update("GrowOut", growOutId, { neighboursLookedOn: on.text });
    change.touch(growOut.value.varietyId);
    return accepted(null);
  });
}

/** Takes back that somebody looked: from then on the neighbourhood is not assessed. */
export async function takeLookBack(db: Database, actor: Actor, growOutId: string): Promise<Outcome<Performed<null>>> {
  const growOut = await growOutOf(db.read, growOutId);
  if (!growOut.ok) return growOut;
  const title = `Grow-out ${growOut.value.name}: nobody looked for neighbours`;
  return perform(db, actor, { action: "correct-in-field", title }, async (change) => {
    await change.update("GrowOut", growOutId, { neighboursLookedOn: null });
    change.touch(growOut.value.varietyId);
    return accepted(null);
  });
}
