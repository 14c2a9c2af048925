import { rm } from "node:fs/promises";
import path from "node:path";
import type { Actor } from "@/lib/access/actor";
import type { Database, Location, Transaction } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { WhySchema } from "@/lib/schemas/lots/merge-lots";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { noteErased } from "./arriving";
import { erasedPicture } from "./erased-picture";
import { folderOfPhotos, pathOfPhoto } from "./photo-place";

export interface ErasedPhoto {
  /** records that had the picture */
  readonly records: number;
}

/**
 * Erases a picture for good, with a reason: its file goes, every record that has it loses it, and in the history a mark stands in place of its file and of the
 * words beside it. That there was one, of what, who erased it, when and why stays. It cannot be taken back, and a phone that still has it does not bring
 * it again; the words that it sent with it stay among what was sent. Copies made before hold the picture until they are so old that they go.
 * Refused: no such picture; no reason; a file that cannot be removed, and then nothing is changed.
 */
export async function erasePhoto(
  db: Database,
  actor: Actor,
  photoId: string,
  input: FormTexts,
): Promise<Outcome<Performed<ErasedPhoto>>> {
  const read = parseForm(WhySchema, input);
  if (!read.ok) return read;
  const operation = { action: "erase" as const, title: "A picture erased for good", reason: read.value.why };
  return perform(db, actor, operation, async (change, tx) => {
    const photo = await tx.photo.findUnique({ where: { id: photoId }, select: { hash: true } });
    if (!photo)
      return refused(refusal("unknown", ["photo"], photoId, "is no picture of this registry", "choose one of a page"));
    const { hash } = photo;
    const ids = (await tx.photo.findMany({ where: { hash }, select: { id: true } })).map(({ id }) => id);
    change.forget((json) => withoutPicture(json, hash));
    await change.remove("Photo", ids);
    change.touchNothing();
    await forgetInHistory(tx, hash);
    // Last of all: where the disk will not let the file go, nothing of this is stored.
    await removeFile(db.location, hash);
    return accepted({ records: ids.length });
  });
}

/** A note of the history with the mark in place of the file and its words; null where it is about another. */
function withoutPicture(json: string, hash: string): string | null {
  const row = JSON.parse(json) as Record<string, unknown>;
  if (row.hash !== hash) return null;
  const words = Object.fromEntries(["caption", "scale"].flatMap((name) => (row[name] ? [[name, erasedPicture]] : [])));
  return JSON.stringify({ ...row, ...words, hash: erasedPicture });
}

async function forgetInHistory(tx: Transaction, hash: string): Promise<void> {
  const held = { contains: hash };
  const rows = await tx.change.findMany({
    where: { tableName: "Photo", OR: [{ before: held }, { after: held }] },
    select: { id: true, before: true, after: true },
  });
  const without = (json: string | null) => (json === null ? null : (withoutPicture(json, hash) ?? json));
  for (const { id, before, after } of rows)
    await tx.change.update({ where: { id }, data: { before: without(before), after: without(after) } });
}

async function removeFile(location: Location, hash: string): Promise<void> {
  await noteErased({ location }, hash);
  await rm(path.join(folderOfPhotos(location), pathOfPhoto(hash)), { force: true });
}
