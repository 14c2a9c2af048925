import { statfs } from "node:fs/promises";
import path from "node:path";

/** Bytes that may still be written where a folder is, or will be made; null where the system does not say. */
export async function freeSpaceAt(folder: string): Promise<number | null> {
  for (let at = folder; ; at = path.dirname(at)) {
    const found = await statfs(at).catch(() => null);
    if (found) return found.bavail * found.bsize;
    if (at === path.dirname(at)) return null;
  }
}
