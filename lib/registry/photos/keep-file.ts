import { createHash } from "node:crypto";
import { mkdir, open, readFile, rename, rm } from "node:fs/promises";
import path from "node:path";
import { uuidv7 } from "uuidv7";
import type { Location } from "@/lib/db";
import { folderOfPhotos, pathOfPhoto } from "./photo-place";
import type { ReEncoded } from "./re-encode";

/** Owner alone: a picture shows people and places. */
const folderRights = 0o700;
const fileRights = 0o600;

type Place = Pick<Location, "folder" | "demonstration">;

/**
 * Puts a stored picture into its place, whole or not at all: written under another name, seen onto the disk, then named by its hash. The same picture
 * twice is one file; one that was lost or rotted is made good. The errors of the disk are thrown as they come.
 */
export async function keepPhotoFile(place: Place, { hash, jpeg }: Pick<ReEncoded, "hash" | "jpeg">): Promise<void> {
  const file = path.join(folderOfPhotos(place), pathOfPhoto(hash));
  if ((await bytesOfPhoto(place, hash)).state === "whole") return;
  await putWhole(place.folder, file, jpeg);
}

/** Writes a file beside the data and then gives it its name; folders are made as they are needed. */
export async function putWhole(dataFolder: string, file: string, bytes: Uint8Array): Promise<void> {
  const beside = path.join(/* turbopackIgnore: true */ dataFolder, "uploads");
  await mkdir(beside, { recursive: true, mode: folderRights });
  await mkdir(path.dirname(file), { recursive: true, mode: folderRights });
  const half = path.join(beside, `${uuidv7()}.half`);
  try {
    const handle = await open(half, "wx", fileRights);
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(half, file);
  } catch (error) {
    await rm(half, { force: true });
    throw error;
  }
  await namesOntoDisk(path.dirname(file));
}

/** Systems that cannot sync a folder are left alone. */
async function namesOntoDisk(folder: string): Promise<void> {
  const handle = await open(folder, "r").catch(() => null);
  await handle?.sync().catch(() => {});
  await handle?.close();
}

/** A stored picture's bytes; or that its file is gone, or is not what was stored. */
export type StoredPhoto =
  | { readonly state: "whole"; readonly bytes: Uint8Array }
  | { readonly state: "gone" | "broken" };

/** Reads a stored picture and holds its bytes against their hash. */
export async function bytesOfPhoto(place: Place, hash: string): Promise<StoredPhoto> {
  let bytes: Uint8Array;
  try {
    bytes = Uint8Array.from(await readFile(path.join(folderOfPhotos(place), pathOfPhoto(hash))));
  } catch (error) {
    return { state: (error as NodeJS.ErrnoException).code === "ENOENT" ? "gone" : "broken" };
  }
  return createHash("sha256").update(bytes).digest("hex") === hash ? { state: "whole", bytes } : { state: "broken" };
}
