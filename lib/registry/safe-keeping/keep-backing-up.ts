import type { Location } from "@/lib/db";
import { backupDue } from "./backup-due";
import { backupSummaries } from "./backup-summaries";
import { backupsFolder } from "./places";
import { runBackup } from "./run-backup";
import { readKeepingState } from "./state";

// One watch a data folder for the life of the process, also across reloads of the code while developing.
const watches = globalThis as unknown as { kinrowWatches?: Map<string, NodeJS.Timeout> };

const firstLook = 60_000;
const lookEvery = 600_000;

/**
 * Looks every ten minutes whether a backup is due and makes it. So it is made up for soon after a machine was off or asleep, and tried again after one that failed.
 */
export function keepBackingUp(location: Location, log: (sentence: string) => void): void {
  watches.kinrowWatches ??= new Map();
  if (watches.kinrowWatches.has(location.folder)) return;
  let busy = false;
  const look = async () => {
    if (busy) return;
    busy = true;
    try {
      await backUpIfDue(location, new Date(), log);
    } catch (error) {
      log(`The backup could not be looked after: ${error instanceof Error ? error.message : String(error)}`);
    } finally {
      busy = false;
    }
  };
  setTimeout(look, firstLook).unref();
  watches.kinrowWatches.set(location.folder, setInterval(look, lookEvery).unref());
}

/** Makes a backup where one is due. Returns whether one was made. */
export async function backUpIfDue(
  location: Location,
  now: Date,
  log: (sentence: string) => void,
  run: typeof runBackup = runBackup,
): Promise<boolean> {
  const made = await backupSummaries(backupsFolder());
  const failed = readKeepingState(location.folder).failure;
  const due = backupDue(
    made.map((backup) => backup.at),
    failed?.at ?? null,
    now.toISOString(),
  );
  if (!due.now) return false;
  const ended = await run(location, "daily");
  if (!ended.made) log(`No backup: ${ended.sentence}`);
  return ended.made;
}
