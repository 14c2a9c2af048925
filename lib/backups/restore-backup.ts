import { existsSync } from "node:fs";
import { mkdir, readdir, rename, rm } from "node:fs/promises";
import path from "node:path";
import {
  FolderHeldByAnother,
  holdFolder,
  isOpenElsewhere,
  type Location,
  MigrationRefused,
  migrate,
  openDatabase,
  rowCounts,
  storageFaultOf,
  withoutLog,
} from "@/lib/db";
import type { StoredBackup } from "@/lib/registry/safe-keeping/list-backups";
import { photosFolder, registryFile, sharingFolder } from "@/lib/registry/safe-keeping/places";
import { type VerifyReport, verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { backupFaults } from "./check-backup";
import { copyWhole, folderRights, isNewOrEmpty, ontoDisk } from "./whole-files";

export interface RestoreWanted {
  readonly backup: StoredBackup;
  /** the data folder that it becomes */
  readonly to: string;
  readonly now: Date;
  readonly say?: (what: string) => void;
  /** where the release's migrations stand */
  readonly root?: string;
}

export interface Restored {
  readonly folder: string;
  /** where the folder that stood there before is now; null where there was none */
  readonly aside: string | null;
  /** names of the migrations that brought an older release's backup up to this one */
  readonly migrated: readonly string[];
  readonly report: VerifyReport;
}

/**
 * Brings a backup back: into a new folder beside the wanted one, checked and brought up to this release there, and put in place last. What stood there
 * before is kept aside under another name, but for backups and the machine's certificate, which go on in the new folder; nothing is deleted. Refused, with
 * nothing changed: a backup whose files are not what its manifest says, or that does not verify; a folder that a server or another command has open, or
 * that holds other things than a registry; a backup of a newer release.
 */
export async function restoreBackup(wanted: RestoreWanted): Promise<Outcome<Restored>> {
  const { backup, to, now } = wanted;
  const say = wanted.say ?? (() => {});
  const against = await standsAgainst(wanted, say);
  if (against.length > 0) return refused(...against);
  const stamp = now.toISOString().slice(0, 19).replace("T", "-").replaceAll(":", "");
  const half = `${to}.restoring-${stamp}`;
  await rm(half, { recursive: true, force: true });
  try {
    const filled = await fill(backup, half, say, wanted.root);
    if (!filled.ok) {
      await rm(half, { recursive: true, force: true });
      return filled;
    }
    const aside = await putInPlace(half, to, `${to}.before-${stamp}`);
    return aside.ok ? accepted({ folder: to, aside: aside.value, ...filled.value }) : aside;
  } catch (error) {
    const storage = storageFaultOf(error, path.dirname(to));
    if (!storage) throw error;
    await rm(half, { recursive: true, force: true });
    return refused(no(storage.kind, to, storage.message));
  }
}

function no(code: string, given: string, sentence: string): Refusal {
  return { code, path: [], given, needed: "", sentence };
}

async function standsAgainst({ backup, to }: RestoreWanted, say: (what: string) => void): Promise<Refusal[]> {
  if (!backup.manifest.wholeRegistry) {
    const sentence = `${backup.folder} holds the plain files of a registry on PostgreSQL, not its database; restore the server's own dump, or bring its plain-files into an empty registry: npm run import -- ${path.join(backup.folder, "plain-files")}`;
    return [no("no-database", backup.folder, sentence)];
  }
  if (!backup.manifest.files.some((file) => file.path === registryFile)) {
    const sentence = `The list of the backup ${backup.folder} does not name its registry (${registryFile}): it is damaged; take another backup.`;
    return [no("backup-damaged", backup.folder, sentence)];
  }
  if (!(await isNewOrEmpty(to))) {
    if (!existsSync(path.join(to, registryFile))) {
      const others = (await readdir(to)).filter((name) => !standsWithoutRegistry.test(name));
      if (others.length > 0)
        return [
          no(
            "other-things",
            to,
            `${to} holds other things than a registry (${others.slice(0, 3).join(", ")}); name a new or empty folder.`,
          ),
        ];
    }
    const held = heldElsewhere(to);
    if (held) return [no("in-use", to, held)];
  }
  say("comparing each file of the backup with its hash");
  return (await backupFaults(backup)).map((sentence) => no("backup-damaged", backup.folder, sentence));
}

/** What a data folder may hold although no registry was made in it yet, or its file was lost. */
const standsWithoutRegistry =
  /^(backups|photos|demonstration-photos|sharing|uploads|(registry|demonstration)\.sqlite(-\w+)?|in-use\.\w+(-journal)?|safe-keeping\.json(\.\d+)?)$/;

/** The sentence of who has the folder open, or null. */
function heldElsewhere(folder: string): string | null {
  try {
    holdFolder(folder).release();
  } catch (error) {
    if (error instanceof FolderHeldByAnother)
      return `${folder} is open in a server (${error.holder ? `process ${error.holder.pid} on ${error.holder.host}` : "another process"}); end it first, then restore.`;
    throw error;
  }
  const file = path.join(folder, registryFile);
  return existsSync(file) && isOpenElsewhere(file)
    ? `Another command has ${file} open; wait until it is done, then restore.`
    : null;
}

async function fill(
  backup: StoredBackup,
  half: string,
  say: (what: string) => void,
  root?: string,
): Promise<Outcome<Pick<Restored, "migrated" | "report">>> {
  await mkdir(half, { recursive: true, mode: folderRights });
  const belongs = (file: string) => file === registryFile || file.startsWith(`${photosFolder}/`);
  const files = backup.manifest.files.filter((file) => belongs(file.path));
  for (const [place, file] of files.entries()) {
    if (place % 200 === 0) say(`copying files: ${place} of ${files.length}`);
    await copyWhole(path.join(backup.folder, file.path), path.join(half, file.path));
  }
  const url = path.join(half, registryFile);
  const location: Location = { engine: "sqlite", url, folder: half, demonstration: false };
  say("bringing it up to this release");
  let migrated: string[];
  try {
    migrated = await migrate(location, root);
  } catch (error) {
    if (error instanceof MigrationRefused) return refused(no("not-this-release", backup.folder, error.message));
    throw error;
  }
  const db = await openDatabase(location);
  try {
    const report = await verifyRegistry(db, path.join(half, photosFolder), (what) => say(`checking ${what}`));
    const lost = missingRows(backup, await rowCounts(db));
    const faults = [
      ...lost,
      ...report.findings.filter((each) => each.severity === "fault").map((each) => each.sentence),
    ];
    // A backup that was made of a damaged registry says so itself: it is still the best that there is, and its faults are told.
    if (faults.length > 0 && backup.sound)
      return refused(...faults.map((sentence) => no("not-sound", backup.folder, sentence)));
    return accepted({ migrated, report });
  } finally {
    await db.close();
    withoutLog(url);
    await ontoDisk(half);
  }
}

/** Tables with other numbers of rows than the manifest says. A table that a migration made is not in it. */
function missingRows({ manifest }: StoredBackup, counts: Readonly<Record<string, number>>): string[] {
  return Object.entries(manifest.counts)
    .filter(([table, count]) => table in counts && counts[table] !== count)
    .map(([table, count]) => `${table} has ${counts[table]} records where the backup's list says ${count}.`);
}

/** Puts the new folder in place; what stood there goes aside. Backups that lie in the data folder stay in it, and the machine's certificate. */
async function putInPlace(half: string, to: string, aside: string): Promise<Outcome<string | null>> {
  const stands = existsSync(to);
  if (stands && (await isNewOrEmpty(to))) await rm(to, { recursive: true });
  const kept = existsSync(to) ? aside : null;
  if (kept !== null) {
    const held = heldElsewhere(to);
    if (held) return refused(no("in-use", to, held));
    try {
      await rename(to, kept);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      const sentence = `${to} cannot be put aside (${code}), as it may be the root of a disk; restore to a folder inside it with --to and name that one in KINROW_DATA. What is restored so far stands in ${half}.`;
      return refused(no("cannot-put-aside", to, sentence));
    }
  }
  await rename(half, to);
  if (kept !== null) {
    if (existsSync(path.join(kept, "backups"))) await rename(path.join(kept, "backups"), path.join(to, "backups"));
    await keepCertificate(path.join(kept, sharingFolder), path.join(to, sharingFolder));
  }
  await ontoDisk(path.dirname(to));
  return accepted(kept);
}

/**
 * Devices go on trusting this machine. The secret that signs cookies stays aside and is made anew: with it, whoever was signed out since the backup was made
 * would be in again.
 */
async function keepCertificate(from: string, to: string): Promise<void> {
  const files = (await readdir(from).catch(() => [])).filter((name) => /\.(key|crt)$/.test(name));
  if (files.length > 0) await mkdir(to, { recursive: true, mode: folderRights });
  for (const name of files) await rename(path.join(from, name), path.join(to, name));
}
