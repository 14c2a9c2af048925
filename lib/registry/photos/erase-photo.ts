import { rm } from "node:fs/promises";
import path from "node:path";
import type { Actor } from "@/lib/access/actor";
import type { Database, Location, Transaction } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { WhySchema } from "@/lib/schemas/lots/merge-lots";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { TableName } from "../change-set/records";
import { hashesSentOf, noteErased } from "./arriving";
import { erasedPicture, withoutWordsSent } from "./erased-picture";
import { folderOfPhotos, pathOfPhoto } from "./photo-place";

export interface ErasedPhoto {
  /** records that had the picture */
  readonly records: number;
}

/**
 * Erases a picture for good, with a reason: its file goes, every record that has it loses it, and in the history a mark stands in place of its file and of the
 * words beside it, in what a phone sent of it, too. That there was one, of what, who erased it, when and why stays. It cannot be taken back, and a phone that
 * still has it does not bring it again, nor its words. Copies made before hold the picture until they are so old that they go.
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
    const sent = await hashesSentOf(db, hash);
    const erased: Erased = { hash, sent: new Set(sent) };
    change.forget((json) => withoutPicture(json, erased));
    await change.remove("Photo", ids);
    await forgetInHistory(tx, { tableName: "Photo", held: [hash] }, erased);
    for (const { id, body } of await sentWith(tx, sent)) {
      const without = withoutWordsSent(body, erased.sent);
      if (without !== null) await change.update("FieldRecord", id, { body: without });
    }
    await forgetInHistory(tx, { tableName: "FieldRecord", held: sent }, erased);
    change.touchNothing();
    // Last of all: where the disk will not let the file go, nothing of this is stored.
    await removeFile(db.location, hash);
    return accepted({ records: ids.length });
  });
}

/** What is erased: the file by its hash, and the hashes under which phones sent it. */
interface Erased {
  readonly hash: string;
  readonly sent: ReadonlySet<string>;
}

/** A note of the history with the mark in place of the file and its words; null where it is about another. */
function withoutPicture(json: string, { hash, sent }: Erased): string | null {
  const row = JSON.parse(json) as Record<string, unknown>;
  // The words stand within what a phone sent.
  const body = row.kind === "photo" && typeof row.body === "string" ? withoutWordsSent(row.body, sent) : null;
  if (body !== null) return JSON.stringify({ ...row, body });
  if (row.hash !== hash) return null;
  const words = Object.fromEntries(["caption", "scale"].flatMap((name) => (row[name] ? [[name, erasedPicture]] : [])));
  return JSON.stringify({ ...row, ...words, hash: erasedPicture });
}

/** What phones sent under these hashes, whatever became of it. */
async function sentWith(tx: Transaction, hashes: readonly string[]) {
  if (hashes.length === 0) return [];
  return tx.fieldRecord.findMany({
    where: { kind: "photo", OR: hashes.map((hash) => ({ body: { contains: hash } })) },
    select: { id: true, body: true },
  });
}

async function forgetInHistory(
  tx: Transaction,
  { tableName, held }: { readonly tableName: TableName; readonly held: readonly string[] },
  erased: Erased,
): Promise<void> {
  if (held.length === 0) return;
  const rows = await tx.change.findMany({
    where: {
      tableName,
      OR: held.flatMap((hash) => [{ before: { contains: hash } }, { after: { contains: hash } }]),
    },
    select: { id: true, before: true, after: true },
  });
  const without = (json: string | null) => (json === null ? null : (withoutPicture(json, erased) ?? json));
  for (const { id, before, after } of rows)
    await tx.change.update({ where: { id }, data: { before: without(before), after: without(after) } });
}

async function removeFile(location: Location, hash: string): Promise<void> {
  await noteErased({ location }, hash);
  await rm(path.join(folderOfPhotos(location), pathOfPhoto(hash)), { force: true });
}
