import { FolderHeldByAnother, type HeldFolder, holdFolder } from "@/lib/db";

/** Another process is making a backup into the same folder; the message says what to do. */
export class BackupUnderWay extends Error {
  constructor(backups: string) {
    super(`A backup is being made in ${backups} already; wait until it is done.`);
  }
}

/** Holds the folder of backups, so that one is made at a time. */
export function heldForBackups(backups: string): HeldFolder {
  try {
    return holdFolder(backups, "being-made");
  } catch (error) {
    throw error instanceof FolderHeldByAnother ? new BackupUnderWay(backups) : error;
  }
}
