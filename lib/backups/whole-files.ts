import { constants } from "node:fs";
import { copyFile, link, mkdir, open, readdir, stat, statfs } from "node:fs/promises";
import path from "node:path";
import { filesUnder, hashOfFile } from "@/lib/registry/safe-keeping/verify/check-photos";

/** A file of a backup with its hash. */
export interface HashedFile {
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
}

/** Owner alone: backups hold contacts and secrets. */
export const folderRights = 0o700;
export const fileRights = 0o600;

/** Copies a file and sees it onto the disk. Where `earlier` is the same file of an earlier backup, the disk keeps it once (a hard link). */
export async function copyWhole(from: string, to: string, earlier: string | null = null): Promise<void> {
  await mkdir(path.dirname(to), { recursive: true, mode: folderRights });
  if (earlier !== null) {
    const linked = await link(earlier, to).then(
      () => true,
      () => false,
    );
    if (linked) return;
  }
  await copyFile(from, to, constants.COPYFILE_EXCL);
  await ontoDisk(to, fileRights);
}

/** Waits until a file, or the names in a folder, stand on the disk. A system that cannot do it for folders is left alone. */
export async function ontoDisk(place: string, rights?: number): Promise<void> {
  const folder = (await stat(place)).isDirectory();
  try {
    const handle = await open(place, folder ? "r" : "r+");
    try {
      if (rights !== undefined) await handle.chmod(rights);
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch (error) {
    if (!folder) throw error;
  }
}

/** Every file under a folder with its hash, in the order of their paths; `leave`: files that are not listed. */
export async function hashedFiles(folder: string, leave: readonly string[] = []): Promise<HashedFile[]> {
  const files: HashedFile[] = [];
  for (const file of await filesUnder(folder)) {
    if (leave.includes(file)) continue;
    const place = path.join(folder, file);
    files.push({ path: file, bytes: (await stat(place)).size, sha256: await hashOfFile(place) });
  }
  return files;
}

/** Bytes that may still be written where a folder stands; null where the system does not say. */
export async function freeBytes(folder: string): Promise<number | null> {
  try {
    const { bavail, bsize } = await statfs(folder);
    return bavail * bsize;
  } catch {
    return null;
  }
}

/** True where there is nothing, or an empty folder. */
export async function isNewOrEmpty(folder: string): Promise<boolean> {
  return (
    (await readdir(folder).catch((error: NodeJS.ErrnoException) => (error.code === "ENOENT" ? [] : ["?"]))).length === 0
  );
}
