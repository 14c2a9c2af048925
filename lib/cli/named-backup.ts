import path from "node:path";
import { listBackups, type StoredBackup, storedBackup } from "@/lib/registry/safe-keeping/list-backups";
import { backupsFolder } from "@/lib/registry/safe-keeping/places";

/** The backup that a person means: `newest` (the newest sound one), the name of one, or the path of its folder; else a sentence that says what is there. */
export async function namedBackup(name: string): Promise<StoredBackup | string> {
  const folder = backupsFolder();
  const all = await listBackups(folder);
  if (name === "newest") return all.find((backup) => backup.sound) ?? `There is no sound backup in ${folder}.`;
  const found = all.find((backup) => backup.name === name) ?? (await storedBackup(path.resolve(name)));
  return found ?? `"${name}" is no backup: name its folder, one of those in ${folder}, or newest.`;
}

/** A line for each backup of the folder, the newest first. */
export async function backupLines(): Promise<string[]> {
  const all = await listBackups(backupsFolder());
  return all.map(
    ({ name, manifest, sound }) =>
      `  ${name}  ${manifest.why}, release ${manifest.release}${sound ? "" : ", with faults"}`,
  );
}
