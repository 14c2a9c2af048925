import { mkdir, readdir, rename, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import {
  copyWhileOpen,
  type Database,
  type Location,
  migrationState,
  openDatabase,
  rowCounts,
  StorageFault,
  withoutLog,
} from "@/lib/db";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { freeSpaceAt } from "@/lib/registry/safe-keeping/free-space";
import { keptBackups } from "@/lib/registry/safe-keeping/kept-backups";
import { listBackups, type StoredBackup, storedBackup } from "@/lib/registry/safe-keeping/list-backups";
import {
  backupName,
  photosFolder,
  plainFilesFolder,
  registryFile,
  unfinished,
} from "@/lib/registry/safe-keeping/places";
import { release } from "@/lib/registry/safe-keeping/release";
import { filesUnder, hashOfFile } from "@/lib/registry/safe-keeping/verify/check-photos";
import { type VerifyReport, verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { type Manifest, manifestFile } from "@/lib/schemas/backups/manifest";
import { heldForBackups } from "./held-for-backups";
import { readMe } from "./read-me";
import { copyWhole, fileRights, folderRights, hashedFiles, ontoDisk } from "./whole-files";

export interface BackupWanted {
  /** the registry; its photos stand in its folder */
  readonly location: Location;
  /** where backups go */
  readonly backups: string;
  readonly now: Date;
  readonly why: Manifest["why"];
  /** told each step before it is done */
  readonly say?: (what: string) => void;
}

export interface BackupMade {
  readonly backup: StoredBackup;
  readonly report: VerifyReport;
  /** names of older backups that had no place any more */
  readonly letGo: readonly string[];
}

/**
 * Makes a backup while the registry is open: its file as it is at one moment, checked; every record as plain CSV; photos; and a manifest with the hash of each
 * file. It is made beside its place under another name and put in place whole, last. Older ones that have no place any more go after that. The keys of
 * sharing stay with the machine: whoever has a copy of them could pose as it. On PostgreSQL the server's own dump keeps the database: here the plain files and photos are kept.
 *
 * @throws StorageFault where the disk is full or cannot be written; FolderHeldByAnother while another backup is being made
 */
export async function makeBackup(wanted: BackupWanted): Promise<BackupMade> {
  const { backups, now } = wanted;
  const say = wanted.say ?? (() => {});
  const held = heldForBackups(backups);
  try {
    await removeUnfinished(backups);
    const at = now.toISOString();
    const half = path.join(backups, `${unfinished}${backupName(at)}`);
    await mkdir(half, { recursive: true, mode: folderRights });
    try {
      const report = await fill(half, wanted, say);
      const place = await freePlace(backups, backupName(at));
      await rename(half, place);
      await ontoDisk(backups);
      const backup = await storedBackup(place);
      if (!backup) throw new StorageFault("disk-fault", place);
      return { backup, report, letGo: await letGo(backups, at) };
    } catch (error) {
      await rm(half, { recursive: true, force: true });
      throw error;
    }
  } finally {
    held.release();
  }
}

/** What a kill left behind: nobody is making it any more, since this process holds the folder. */
async function removeUnfinished(backups: string): Promise<void> {
  for (const name of await readdir(backups)) if (name.startsWith(unfinished)) await removed(path.join(backups, name));
}

async function fill(half: string, wanted: BackupWanted, say: (what: string) => void): Promise<VerifyReport> {
  const { location, backups, now, why } = wanted;
  const whole = location.engine === "sqlite";
  if (whole) {
    await hasRoom(location, backups);
    say("copying the registry");
    await writeFile(path.join(half, registryFile), "", { mode: fileRights });
    await copyWhileOpen(location.url, path.join(half, registryFile));
  }
  const [last] = await listBackups(backups);
  await copyPhotos(path.join(location.folder, photosFolder), path.join(half, photosFolder), say, last);
  const copy = whole ? { ...location, url: path.join(half, registryFile), folder: half } : location;
  const db = await openDatabase(copy);
  let made: Awaited<ReturnType<typeof contents>>;
  try {
    made = await contents(db, half, whole ? half : location.folder, say);
  } finally {
    await db.close();
  }
  if (whole) {
    withoutLog(copy.url);
    await ontoDisk(copy.url);
  }
  say("writing down the hash of each file");
  const soFar = {
    at: now.toISOString(),
    why,
    release: release(),
    engine: location.engine,
    wholeRegistry: whole,
    ...made.facts,
  };
  await writeFile(path.join(half, "READ-ME.txt"), readMe(soFar), { mode: fileRights });
  const manifest: Manifest = { kind: "kinrow backup", layout: 1, ...soFar, files: await hashedFiles(half) };
  const file = path.join(half, manifestFile);
  await writeFile(file, `${JSON.stringify(manifest, null, 1)}\n`, { mode: fileRights });
  await ontoDisk(file);
  await ontoDisk(half);
  return made.report;
}

/** Checks the copy and writes its records as plain files. */
async function contents(db: Database, half: string, photosIn: string, say: (what: string) => void) {
  const report = await verifyRegistry(db, path.join(photosIn, photosFolder), (what) => say(`checking ${what}`));
  const state = await migrationState(db).catch(() => null);
  const readable =
    state !== null && state.pending.length === 0 && !report.findings.some((each) => each.part === "file");
  if (readable) {
    say("writing every record as plain files");
    await mkdir(path.join(half, plainFilesFolder), { mode: folderRights });
    for (const [name, bytes] of await exportFolder(db)) {
      const file = path.join(half, plainFilesFolder, name);
      await writeFile(file, bytes, { mode: fileRights });
      await ontoDisk(file);
    }
  }
  const faults = report.findings.filter((each) => each.severity === "fault").map((each) => each.sentence);
  return {
    report,
    facts: {
      migrations: state?.applied.map((each) => ({ ...each })) ?? [],
      counts: await rowCounts(db).catch(() => ({})),
      check: { sound: report.faults === 0, faults, notes: report.notes },
    },
  };
}

async function copyPhotos(
  from: string,
  to: string,
  say: (what: string) => void,
  last: StoredBackup | undefined,
): Promise<void> {
  const files = await filesUnder(from);
  for (const [place, file] of files.entries()) {
    if (place % 200 === 0) say(`copying photos: ${place} of ${files.length}`);
    const before = last ? path.join(last.folder, photosFolder, file) : null;
    await copyWhole(path.join(from, file), path.join(to, file), before && (await isWhole(before)) ? before : null);
  }
}

/** A photo is named by its hash: one that rotted in the last backup is not handed on to the next. */
async function isWhole(photo: string): Promise<boolean> {
  return (await hashOfFile(photo).catch(() => null)) === path.parse(photo).name;
}

/** The copy, its log while it is checked and the plain files take about three times the registry's own size. */
async function hasRoom(location: Location, backups: string): Promise<void> {
  const free = await freeSpaceAt(backups);
  const size = (await stat(location.url)).size;
  if (free !== null && free < 3 * size) throw new StorageFault("disk-full", backups);
}

async function freePlace(backups: string, name: string): Promise<string> {
  const taken = new Set(await readdir(backups));
  for (let number = 1; ; number += 1) {
    const free = number === 1 ? name : `${name}-${number}`;
    if (!taken.has(free)) return path.join(backups, free);
  }
}

/** Removes backups that have no place any more: first under another name, so that half of one is none and the next backup clears it away. */
async function letGo(backups: string, now: string): Promise<string[]> {
  const all = await listBackups(backups);
  const kept = keptBackups(all, now);
  const gone = all.filter((backup) => !kept.has(backup.name));
  for (const { name, folder } of gone) {
    const going = path.join(backups, `${unfinished}${name}`);
    await rename(folder, going);
    await removed(going);
  }
  return gone.map((backup) => backup.name);
}

/** What a killed backup had begun to copy may still write into its folder for a moment. */
async function removed(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true, maxRetries: 3 });
}
