import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { touchVarietiesOf } from "./set-own-value";

/** Takes an own value back, so that the list's value holds again. */
export async function removeOwnValue(
  db: Database,
  actor: Actor,
  overrideId: string,
): Promise<Outcome<Performed<{ cropId: string }>>> {
  const row = await db.read.cropOverride.findUnique({ where: { id: overrideId }, include: { crop: true } });
  if (!row) {
    return refused(
      refusal("unknown-own-value", ["overrideId"], overrideId, "is no own value here", "look at the crop again"),
    );
  }
  const operation = { action: "settings" as const, title: `The list's value again for ${row.crop.commonName}` };
  return perform(db, actor, operation, async (change, tx) => {
    await change.remove("CropOverride", [overrideId]);
    await touchVarietiesOf(change, tx, row.cropId);
    return accepted({ cropId: row.cropId });
  });
}
