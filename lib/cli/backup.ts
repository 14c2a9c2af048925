import { existsSync } from "node:fs";
import { BackupUnderWay } from "@/lib/backups/held-for-backups";
import { makeBackup } from "@/lib/backups/make-backup";
import { registryLocation, storageFaultOf } from "@/lib/db";
import { backupsBesideData, backupsFolder } from "@/lib/registry/safe-keeping/places";
import { remember } from "@/lib/registry/safe-keeping/run-backup";
import { storeKeepingState } from "@/lib/registry/safe-keeping/state";
import type { Manifest } from "@/lib/schemas/backups/manifest";

// npm run backup: a backup of the registry, also while it is open. The server makes the daily one with --daily.
// Exit 0 made and sound, 1 not made, or made of a registry in which something contradicts itself, 2 wrong call.
const reasons: Readonly<Record<string, Manifest["why"]>> = {
  "": "by hand",
  "--daily": "daily",
  "--before-release": "before a new release",
};
const why = reasons[process.argv.slice(2).join(" ")];
const location = registryLocation();
const backups = backupsFolder();

if (why === undefined) {
  console.error("usage: npm run backup (KINROW_DATA names the data folder, KINROW_BACKUPS the folder of backups)");
  process.exitCode = 2;
} else if (location.engine === "sqlite" && !existsSync(location.url)) {
  console.error(`There is no registry in ${location.folder} yet, so nothing is to be backed up.`);
  process.exitCode = 1;
} else await backUp(why);

async function backUp(reason: Manifest["why"]): Promise<void> {
  const now = new Date();
  try {
    const say = (what: string) => console.error(`${what} ...`);
    const { backup, report, letGo } = await makeBackup({ location, backups, now, why: reason, say });
    storeKeepingState(location.folder, { failure: null });
    for (const each of report.findings) console.error(`${each.severity}: ${each.sentence}`);
    if (letGo.length > 0) console.log(`${letGo.length} older backups had no place any more: ${letGo.join(", ")}`);
    if (!backup.manifest.wholeRegistry)
      console.log("The database itself is kept by the PostgreSQL server: keep its own dump (pg_dump) as well.");
    else if (backupsBesideData())
      console.log(
        "It lies on the same disk as the registry. Name another disk in KINROW_BACKUPS: one disk is no backup.",
      );
    console.log(`Backup made: ${backup.folder}`);
    if (backup.sound) return;
    console.error("The backup is made, but what it holds contradicts itself (see above); older backups are kept.");
    process.exitCode = 1;
  } catch (error) {
    const known = error instanceof BackupUnderWay ? error : storageFaultOf(error, backups);
    if (!known) throw error;
    remember(location.folder, { at: now.toISOString(), sentence: known.message });
    console.error(known.message);
    process.exitCode = 1;
  }
}
