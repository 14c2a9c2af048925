import path from "node:path";
import { dataFolder } from "@/lib/db";

/** The folder of backups: KINROW_BACKUPS, better on another disk; else `backups` in the data folder. */
export function backupsFolder(environment: NodeJS.ProcessEnv = process.env): string {
  const named = environment.KINROW_BACKUPS;
  return named
    ? path.resolve(/* turbopackIgnore: true */ process.cwd(), named)
    : path.join(/* turbopackIgnore: true */ dataFolder(environment), "backups");
}

/** True where backups lie in the data folder itself: then one disk holds everything. */
export function backupsBesideData(environment: NodeJS.ProcessEnv = process.env): boolean {
  return !environment.KINROW_BACKUPS;
}

/** in a data folder and in a backup alike */
export const registryFile = "registry.sqlite";
export const photosFolder = "photos";
/** in a data folder alone: certificate, keys and the secret of the cookies */
export const sharingFolder = "sharing";
/** in a backup: every record as plain CSV */
export const plainFilesFolder = "plain-files";
/** in a data folder: what is remembered of backups and checks */
export const stateFile = "safe-keeping.json";
/** the beginning of the name of a backup that is being made */
export const unfinished = ".unfinished-";

/** A backup's name by its moment: 2026-11-27T03:15:22.120Z gives "2026-11-27-031522". */
export function backupName(at: string): string {
  return `${at.slice(0, 10)}-${at.slice(11, 19).replaceAll(":", "")}`;
}
