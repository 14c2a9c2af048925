import path from "node:path";
import type { Location } from "@/lib/db";
import { photosFolder } from "../safe-keeping/places";

/** Pictures of the demonstration stand apart and go with it. */
export const demonstrationPhotosFolder = "demonstration-photos";
/** in a folder of photos: under the hash of each file as a phone sent it, what is stored of it */
export const arrivingFolder = "arriving";

/** The folder of a registry's photos. */
export function folderOfPhotos({ folder, demonstration }: Pick<Location, "folder" | "demonstration">): string {
  return path.join(/* turbopackIgnore: true */ folder, demonstration ? demonstrationPhotosFolder : photosFolder);
}

/** Whether a text is a SHA-256 in hexadecimal, as photos are named. */
export function isPhotoHash(text: string): boolean {
  return /^[0-9a-f]{64}$/.test(text);
}

/** Where a photo lies under the folder of photos, with a forward slash: `ab/abcd….jpg`. */
export function pathOfPhoto(hash: string): string {
  return `${hash.slice(0, 2)}/${hash}.jpg`;
}

/** The path of a photo in a folder of plain files, as in a backup: `photos/ab/abcd….jpg`. */
export function pathInFolder(hash: string): string {
  return `${photosFolder}/${pathOfPhoto(hash)}`;
}

/** The hash of a photo by such a path; null where it is another. */
export function hashOfPhotoPath(file: string): string | null {
  const hash = /^photos\/([0-9a-f]{2}\/)?([0-9a-f]{64})\.jpg$/.exec(file)?.[2];
  return hash ?? null;
}
