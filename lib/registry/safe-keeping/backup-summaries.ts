import { readdir, stat } from "node:fs/promises";
import path from "node:path";
import { type Manifest, manifestFile } from "@/lib/schemas/backups/manifest";
import type { DatedBackup } from "./kept-backups";
import { storedBackup } from "./list-backups";
import { unfinished } from "./places";

/** What is told of a backup. */
export interface BackupSummary extends DatedBackup {
  readonly why: Manifest["why"];
  readonly release: string;
  readonly bytes: number;
  readonly faults: readonly string[];
  readonly wholeRegistry: boolean;
}

// A manifest lists thousands of photos: each is read once, as long as it does not change.
const kept = new Map<string, { readonly changed: number; readonly summary: BackupSummary | null }>();

/** The finished backups of a folder in short, the newest first; none where the folder is not there. */
export async function backupSummaries(folder: string): Promise<BackupSummary[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const names = entries.filter((entry) => entry.isDirectory() && !entry.name.startsWith(unfinished));
  const found = await Promise.all(names.map(({ name }) => summaryOf(path.join(folder, name))));
  return found.flatMap((each) => each ?? []).sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

async function summaryOf(folder: string): Promise<BackupSummary | null> {
  const changed = await stat(path.join(folder, manifestFile)).then(
    (found) => found.mtimeMs,
    () => null,
  );
  if (changed === null) return null;
  const known = kept.get(folder);
  if (known?.changed === changed) return known.summary;
  const backup = await storedBackup(folder);
  const summary = backup && {
    name: backup.name,
    at: backup.at,
    sound: backup.sound,
    byHand: backup.byHand,
    why: backup.manifest.why,
    release: backup.manifest.release,
    bytes: backup.bytes,
    faults: backup.manifest.check.faults.slice(0, 5),
    wholeRegistry: backup.manifest.wholeRegistry,
  };
  kept.set(folder, { changed, summary });
  return summary;
}
