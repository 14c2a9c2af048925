import { createReadStream, createWriteStream } from "node:fs";
import { link, mkdir, open, readdir, stat } from "node:fs/promises";
import path from "node:path";
import { pipeline } from "node:stream/promises";
import { filesUnder, hashOfFile } from "@/lib/registry/safe-keeping/verify/check-photos";

/** A file of a backup with its hash. */
export interface HashedFile {
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
}

/** Owner alone: backups hold contacts, and the hashes of passphrases. */
export const folderRights = 0o700;
export const fileRights = 0o600;

/**
 * Copies a file and sees it onto the disk. Where `earlier` is the same file of an earlier backup, the disk keeps it once (a hard link). Its rights are given as
 * it is made and never changed: disks that know no rights refuse a change of them.
 */
export async function copyWhole(from: string, to: string, earlier: string | null = null): Promise<void> {
  await mkdir(path.dirname(to), { recursive: true, mode: folderRights });
  if (earlier !== null) {
    const linked = await link(earlier, to).then(
      () => true,
      () => false,
    );
    if (linked) return;
  }
  await pipeline(createReadStream(from), createWriteStream(to, { flags: "wx", mode: fileRights }));
  await ontoDisk(to);
}

/** Waits until a file, or the names in a folder, stand on the disk. A system that cannot do it for folders is left alone. */
export async function ontoDisk(place: string): Promise<void> {
  const folder = (await stat(place)).isDirectory();
  try {
    const handle = await open(place, folder ? "r" : "r+");
    try {
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

/** True where there is nothing, or an empty folder. */
export async function isNewOrEmpty(folder: string): Promise<boolean> {
  return (
    (await readdir(folder).catch((error: NodeJS.ErrnoException) => (error.code === "ENOENT" ? [] : ["?"]))).length === 0
  );
}
