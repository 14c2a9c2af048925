import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { holderWordSchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName } from "../names/fold-name";
import { oneMeant } from "../search/one-meant";
import { readSettings } from "../settings/read-settings";
import { stewardNamed } from "../stewards/steward-named";
import { varietyOf } from "./variety-of";

/**
 * Writes down a holder's word: the seed is still there, or not, or nobody knows. `today` is the day on which it is written down; no word
 * can be of a later day.
 */
export async function confirmHolder(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
  today: string,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = parseForm(holderWordSchema((await readSettings(db.read)).hemisphere), input);
  if (!read.ok) return read;
  const { steward, on, still, lot, grams, note } = read.value;
  const day = on ?? { text: today, first: today, last: today };
  if (day.first > today) {
    return refused(refusal("in-the-future", ["on"], day.text, "is still to come", `write a day up to ${today}`));
  }
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const operation = { action: "desk" as const, title: `Word from ${steward} about ${known.value.name}` };
  return perform(db, actor, operation, async (change, tx) => {
    const holder = await stewardNamed(tx, steward);
    if (!holder.ok) return holder;
    const lots = lot === null ? [] : await tx.lot.findMany({ where: { numberKey: foldName(lot) } });
    const found = lot === null ? null : oneMeant(lot, lots, (each) => each.number);
    if (lot !== null && found?.varietyId !== varietyId) {
      const wrong = found ? "is a lot of another variety" : "is no lot here";
      return refused(refusal("unknown-lot", ["lot"], lot, wrong, "choose a lot of this variety, or leave it empty"));
    }
    await change.create("HolderConfirmation", {
      id: uuidv7(),
      varietyId,
      stewardId: holder.value,
      lotId: found?.id ?? null,
      on: day.text,
      onFirst: day.first,
      onLast: day.last,
      still,
      grams,
      note,
    });
    change.touch(varietyId);
    return accepted({ varietyId });
  });
}
