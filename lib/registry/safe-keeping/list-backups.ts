import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { type Manifest, ManifestSchema, manifestFile } from "@/lib/schemas/backups/manifest";
import type { DatedBackup } from "./kept-backups";
import { unfinished } from "./places";

/** A finished backup in its folder. */
export interface StoredBackup extends DatedBackup {
  readonly folder: string;
  readonly manifest: Manifest;
  /** of its files together; photos that several backups share count in each */
  readonly bytes: number;
}

/** The finished backups of a folder, the newest first. Folders without a manifest that can be read are no backups and are left alone. */
export async function listBackups(folder: string): Promise<StoredBackup[]> {
  const names = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const found = await Promise.all(
    names
      .filter((entry) => entry.isDirectory() && !entry.name.startsWith(unfinished))
      .map(async ({ name }) => storedBackup(path.join(folder, name))),
  );
  return found.flatMap((each) => each ?? []).sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** The backup in a folder, or null where there is none. */
export async function storedBackup(folder: string): Promise<StoredBackup | null> {
  try {
    const read = ManifestSchema.safeParse(JSON.parse(await readFile(path.join(folder, manifestFile), "utf8")));
    if (!read.success) return null;
    const manifest = read.data;
    return {
      name: path.basename(folder),
      at: manifest.at,
      sound: manifest.check.sound,
      byHand: manifest.why !== "daily",
      folder,
      manifest,
      bytes: manifest.files.reduce((sum, file) => sum + file.bytes, 0),
    };
  } catch {
    return null;
  }
}
