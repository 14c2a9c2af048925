import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { WhySchema } from "@/lib/schemas/lots/merge-lots";
import { correctPhotoSchema } from "@/lib/schemas/photos/photo-words";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { readSettings } from "../settings/read-settings";
import { stewardNamed } from "../stewards/steward-named";

/** Puts right what is told of a picture, with a reason; what was told before stays in the history. */
export async function correctPhoto(
  db: Database,
  actor: Actor,
  photoId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ photoId: string }>>> {
  const read = parseForm(correctPhotoSchema((await readSettings(db.read)).hemisphere), input);
  if (!read.ok) return read;
  const { caption, takenOn, takenBy, scale, why } = read.value;
  const operation = { action: "picture" as const, title: "What is told of a picture put right", reason: why };
  return perform(db, actor, operation, async (change, tx) => {
    const known = await photoOf(tx, photoId);
    if (!known.ok) return known;
    const hand = takenBy === null ? accepted(null) : await stewardNamed(tx, takenBy, "takenBy");
    if (!hand.ok) return hand;
    const told = { caption, takenOn: takenOn?.text ?? null, stewardId: hand.value, scale };
    if (!(await change.update("Photo", photoId, told)))
      return refused(refusal("as-it-is", ["caption"], caption, "is what stands there", "change it, or leave it"));
    change.touchNothing();
    return accepted({ photoId });
  });
}

/** Takes a picture away from its record, with a reason. The history can put it back: its file stays. */
export async function takePhotoAway(
  db: Database,
  actor: Actor,
  photoId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ photoId: string }>>> {
  const read = parseForm(WhySchema, input);
  if (!read.ok) return read;
  const operation = { action: "picture" as const, title: "A picture taken away", reason: read.value.why };
  return perform(db, actor, operation, async (change, tx) => {
    const known = await photoOf(tx, photoId);
    if (!known.ok) return known;
    await change.remove("Photo", [photoId]);
    change.touchNothing();
    return accepted({ photoId });
  });
}

async function photoOf(tx: Transaction, photoId: string): Promise<Outcome<string>> {
  const found = await tx.photo.findUnique({ where: { id: photoId }, select: { id: true } });
  if (found) return accepted(found.id);
  return refused(refusal("unknown", ["photo"], photoId, "is no picture of this registry", "choose one of a page"));
}
