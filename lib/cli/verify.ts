import { existsSync } from "node:fs";
import path from "node:path";
import { backupFaults } from "@/lib/backups/check-backup";
import { openDatabase, registryLocation, storageFaultOf } from "@/lib/db";
import { counted } from "@/lib/display/plurals";
import { photosFolder } from "@/lib/registry/safe-keeping/places";
import { storeKeepingState } from "@/lib/registry/safe-keeping/state";
import { type VerifyReport, verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { namedBackup } from "./named-backup";

// npm run verify [-- BACKUP]: looks through the registry, or compares a backup with its manifest, and changes nothing.
// Exit 0 sound (notes may be told), 1 faults, 2 wrong call.
const args = process.argv.slice(2);
const location = registryLocation();

if (args.length > 1 || args[0]?.startsWith("--")) {
  console.error("usage: npm run verify [-- BACKUP] (a backup's name, its folder, or newest)");
  process.exitCode = 2;
} else if (args[0]) process.exitCode = await verifyBackup(args[0]);
else if (location.engine === "sqlite" && !existsSync(location.url)) {
  console.error(`There is no registry in ${location.folder} yet.`);
  process.exitCode = 1;
} else process.exitCode = await verifyOpen();

async function verifyBackup(name: string): Promise<number> {
  const backup = await namedBackup(name);
  if (typeof backup === "string") {
    console.error(backup);
    return 2;
  }
  console.error(`comparing ${counted(backup.manifest.files.length, "file")} with the backup's list ...`);
  const faults = await backupFaults(backup);
  for (const sentence of faults) console.error(`fault: ${sentence}`);
  if (faults.length > 0) return 1;
  for (const sentence of backup.manifest.check.faults) console.error(`fault: ${sentence}`);
  if (!backup.sound) {
    console.error(
      "Every file is as it was written; but the registry contradicted itself when the backup was made (above).",
    );
    return 1;
  }
  console.log(`Sound: every file of ${backup.name} is as it was written, and what it holds was found sound then.`);
  return 0;
}

async function verifyOpen(): Promise<number> {
  const report = await looked();
  if (typeof report === "string") {
    console.error(`fault: ${report}`);
    return 1;
  }
  for (const { of, count } of report.looked) if (count !== null) console.log(`${count} ${of}`);
  for (const each of report.findings) console.error(`${each.severity}: ${each.sentence}`);
  if (report.faults === 0) {
    console.log(report.notes === 0 ? "Sound." : `Sound, with ${counted(report.notes, "note")} for a person to settle.`);
    return 0;
  }
  console.error(
    `${counted(report.faults, "fault")}. Nothing was changed. Keep this folder as it is, and compare with the newest sound backup (npm run restore alone lists them).`,
  );
  return 1;
}

async function looked(): Promise<VerifyReport | string> {
  try {
    const db = await openDatabase(location);
    try {
      const say = (what: string) => console.error(`looking at ${what} ...`);
      const report = await verifyRegistry(db, path.join(location.folder, photosFolder), say);
      remembered(report);
      return report;
    } finally {
      await db.close();
    }
  } catch (error) {
    const fault = storageFaultOf(error, location.url);
    if (fault) return fault.message;
    throw error;
  }
}

/** What was found is told on the page as well; a folder that may only be read is verified all the same. */
function remembered({ faults, notes, findings }: VerifyReport): void {
  const first = findings.find((each) => each.severity === "fault")?.sentence ?? null;
  try {
    storeKeepingState(location.folder, { verified: { at: new Date().toISOString(), faults, notes, first } });
  } catch (error) {
    if (!storageFaultOf(error, location.folder)) throw error;
  }
}
