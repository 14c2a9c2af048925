import path from "node:path";
import { restoreBackup } from "@/lib/backups/restore-backup";
import { dataFolder, registryLocation } from "@/lib/db";
import { backupsFolder } from "@/lib/registry/safe-keeping/places";
import { backupLines, namedBackup } from "./named-backup";

// npm run restore -- BACKUP [--to FOLDER]: brings a backup back into a new folder, checks it there, and puts it in place last.
// Exit 0 done, 1 refused with nothing changed, 2 wrong call.
const args = process.argv.slice(2);
const at = args.indexOf("--to");
const to = at === -1 ? null : args[at + 1];
const names = at === -1 ? args : args.filter((_each, place) => place !== at && place !== at + 1);

if (names.length !== 1 || names[0]?.startsWith("--") || (at !== -1 && !to)) {
  console.error("usage: npm run restore -- BACKUP [--to FOLDER] (a backup's name, its folder, or newest)");
  const lines = await backupLines();
  console.error(
    lines.length > 0
      ? `Backups in ${backupsFolder()}:\n${lines.join("\n")}`
      : `There are no backups in ${backupsFolder()}.`,
  );
  process.exitCode = 2;
} else process.exitCode = await restore(names[0] as string);

async function restore(name: string): Promise<number> {
  if (registryLocation().engine === "postgresql" && !to) {
    console.error(
      "KINROW_DATABASE names a PostgreSQL server: bring its own dump back there (pg_restore). Nothing was changed. A backup of a registry in one file can be brought back to a folder: --to FOLDER.",
    );
    return 1;
  }
  const backup = await namedBackup(name);
  if (typeof backup === "string") {
    console.error(backup);
    return 2;
  }
  const folder = path.resolve(to ?? dataFolder());
  const say = (what: string) => console.error(`${what} ...`);
  const restored = await restoreBackup({ backup, to: folder, now: new Date(), say });
  if (!restored.ok) {
    for (const each of restored.refusals) console.error(each.sentence);
    console.error("Nothing was changed.");
    return 1;
  }
  const { aside, migrated, report } = restored.value;
  for (const each of report.findings) console.error(`${each.severity}: ${each.sentence}`);
  if (migrated.length > 0)
    console.log(`It was of an older release and was brought up to this one (${migrated.length} steps).`);
  if (aside) console.log(`What stood there before is kept in ${aside}`);
  console.log(`Restored as of ${backup.at}: ${folder}`);
  return 0;
}
