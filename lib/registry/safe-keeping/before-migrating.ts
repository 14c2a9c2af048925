import { existsSync } from "node:fs";
import { type Location, type MigrationState, migrationStateOfFile } from "@/lib/db";
import { runBackup } from "./run-backup";

/** Before a new release changes the tables of a registry, it is backed up as the old one left it. Where that fails it is said, and the change, which is whole or not at all, goes on. */
export async function backUpBeforeMigrating(
  location: Location,
  log: (sentence: string) => void,
  run: typeof runBackup = runBackup,
): Promise<void> {
  if (location.engine !== "sqlite" || !existsSync(location.url)) return;
  // What stands in the way of looking stands in the way of migrating, and is told there.
  const state = stateOrNull(location);
  if (state === null || state.applied.length === 0 || state.pending.length === 0) return;
  const backup = await run(location, "before a new release");
  if (!backup.made) log(`No backup before the new release: ${backup.sentence}`);
}

function stateOrNull(location: Location): MigrationState | null {
  try {
    return migrationStateOfFile(location);
  } catch {
    return null;
  }
}
