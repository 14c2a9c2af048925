import type { Database } from "@/lib/db";
import { MigrationRefused, registryLocation, storageFaultOf } from "@/lib/db";
import { prepareRegistry } from "@/lib/registry/open-registry";

/** Opens the steward's registry for a command line, runs the work, closes it, and ends with the exit code that the work gives. */
export async function withRegistry(work: (db: Database) => Promise<number>): Promise<void> {
  const location = registryLocation();
  try {
    const db = await prepareRegistry(location);
    try {
      process.exitCode = await work(db);
    } finally {
      await db.close();
    }
  } catch (error) {
    const told = error instanceof MigrationRefused ? error : storageFaultOf(error, location.url);
    if (told === null) throw error;
    console.error(told.message);
    process.exitCode = 1;
  }
}
