import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { makeBackup } from "@/lib/backups/make-backup";
import { restoreBackup } from "@/lib/backups/restore-backup";
import { type Database, holdFolder, openDatabase, StorageFault } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { readFolder } from "@/lib/exchange/bring-in/read-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { perform } from "@/lib/registry/change-set/perform";
import { figuresOfRecords } from "@/lib/registry/figures/figures-of-records";
import { readRecords } from "@/lib/registry/figures/read-records";
import { listBackups, type StoredBackup } from "@/lib/registry/safe-keeping/list-backups";
import { accepted } from "@/lib/science/outcome";
import { emptyRegistry, granted, temporaryFolder } from "@/tests/setup/registry";

const photo = new TextEncoder().encode("the bytes of a picture of a pod");
const photoPath = (hash: string) => `photos/${hash.slice(0, 2)}/${hash}.jpg`;
const sharing = ["authority.crt", "authority.key", "secret", "server.crt", "server.key"];
const photoHash = createHash("sha256").update(photo).digest("hex");

function hashOf(file: string): string {
  return createHash("sha256")
    .update(new Uint8Array(readFileSync(file)))
    .digest("hex");
}

async function figures(db: Database): Promise<string[]> {
  const crops = await db.read.crop.findMany({ where: { varieties: { some: {} } }, select: { id: true } });
  const records = await readRecords(
    db,
    crops.map((crop) => crop.id),
  );
  return granted(figuresOfRecords(records)).map((figure) => JSON.stringify(figure));
}

async function plainFiles(db: Database): Promise<[string, string][]> {
  return [...(await exportFolder(db))].map(([name, bytes]) => [name, Buffer.from(bytes).toString("hex")]);
}

/** The restore drill: a registry of forty years is backed up, damaged, brought back, and compared byte for byte. */
describe("the restore drill", () => {
  let db: Database;
  let folder: string;
  let backups: string;
  let before: { figures: string[]; files: [string, string][] };
  let backup: StoredBackup;

  beforeAll(async () => {
    db = await emptyRegistry();
    folder = db.location.folder;
    backups = path.join(folder, "backups");
    const files = (await readFolder("tests/reference/notebook")) as Map<string, Uint8Array>;
    granted(await importFolder(db, ownerHere(), files));
    mkdirSync(path.join(folder, "photos", photoHash.slice(0, 2)), { recursive: true });
    writeFileSync(path.join(folder, "photos", photoHash.slice(0, 2), `${photoHash}.jpg`), photo);
    mkdirSync(path.join(folder, "sharing"), { mode: 0o700 });
    for (const name of sharing) writeFileSync(path.join(folder, "sharing", name), `the ${name}`, { mode: 0o600 });
    const variety = await db.read.variety.findFirstOrThrow();
    const row = { id: "p1", hash: photoHash, varietyId: variety.id, width: 10, height: 10, bytes: photo.length };
    const stored = await perform(db, ownerHere(), { action: "record", title: "a photo" }, async (change) => {
      await change.create("Photo", row);
      return accepted(null);
    });
    granted(stored);
    before = { figures: await figures(db), files: await plainFiles(db) };
    const made = await makeBackup({
      location: db.location,
      backups,
      now: new Date("2026-05-01T08:00:00Z"),
      why: "daily",
    });
    backup = made.backup;
  });

  it("makes a backup of an open registry that holds everything, each file with its hash", async () => {
    expect(backup.name).toBe("2026-05-01-080000");
    expect(backup.manifest.check).toEqual({ sound: true, faults: [], notes: 0 });
    const paths = backup.manifest.files.map((file) => file.path);
    expect(paths).toContain("registry.sqlite");
    expect(paths).toContain(photoPath(photoHash));
    expect(paths).toContain("READ-ME.txt");
    expect(paths.filter((each) => each.startsWith("plain-files/")).length).toBe(before.files.length);
    expect(backup.manifest.counts.Lot).toBe(await db.read.lot.count());
    expect(backup.manifest.migrations.length).toBeGreaterThan(0);
    for (const file of backup.manifest.files) {
      expect([file.path, hashOf(path.join(backup.folder, file.path))]).toEqual([file.path, file.sha256]);
    }
  });

  it("leaves with the machine what it shares by", () => {
    const all = readdirSync(backup.folder, { recursive: true }).map(String);
    expect(all.filter((name) => /sharing|authority|secret|\.key$/.test(name))).toEqual([]);
  });

  it("leaves the open registry as it was, and itself for the owner alone", async () => {
    expect(await figures(db)).toEqual(before.figures);
    expect(statSync(backup.folder).mode & 0o077).toBe(0);
    for (const file of backup.manifest.files)
      expect([file.path, statSync(path.join(backup.folder, file.path)).mode & 0o077]).toEqual([file.path, 0]);
  });

  it("writes the records beside it as the plain files that taking everything out gives", () => {
    const beside = path.join(backup.folder, "plain-files");
    const written = readdirSync(beside).map((name) => [name, readFileSync(path.join(beside, name)).toString("hex")]);
    expect(written.sort()).toEqual([...before.files].sort());
  });

  it("brings figures and plain files back byte for byte after the registry was damaged", async () => {
    await db.close();
    for (const ending of ["-wal", "-shm"]) rmSync(`${db.location.url}${ending}`, { force: true });
    const damaged = new Uint8Array(readFileSync(db.location.url));
    damaged.fill(0, 4096 * 3, 4096 * 400);
    writeFileSync(db.location.url, damaged);
    const damagedHash = hashOf(db.location.url);
    rmSync(path.join(folder, "photos"), { recursive: true });

    const restored = granted(await restoreBackup({ backup, to: folder, now: new Date("2026-05-02T08:00:00Z") }));
    expect(restored.aside).toBe(`${folder}.before-2026-05-02-080000`);
    expect(hashOf(path.join(restored.aside as string, "registry.sqlite"))).toBe(damagedHash);
    const again = await openDatabase(db.location);
    try {
      expect(await figures(again)).toEqual(before.figures);
      expect(await plainFiles(again)).toEqual(before.files);
    } finally {
      await again.close();
    }
    expect(hashOf(path.join(folder, "photos", photoHash.slice(0, 2), `${photoHash}.jpg`))).toBe(photoHash);
    for (const file of ["registry.sqlite", photoPath(photoHash)])
      expect([file, statSync(path.join(folder, file)).mode & 0o077]).toEqual([file, 0]);
    // Devices go on trusting it; a cookie of before signs nobody in.
    expect(readdirSync(path.join(folder, "sharing")).sort()).toEqual(sharing.filter((name) => name !== "secret"));
    expect(statSync(path.join(folder, "sharing")).mode & 0o077).toBe(0);
    expect(readdirSync(path.join(restored.aside as string, "sharing"))).toEqual(["secret"]);
    expect((await listBackups(backups)).map((each) => each.name)).toEqual([backup.name]);
    rmSync(restored.aside as string, { recursive: true });
  });

  it("into another, new folder leaves the first alone", async () => {
    const to = path.join(temporaryFolder(), "elsewhere");
    const [kept] = await listBackups(backups);
    const restored = granted(
      await restoreBackup({ backup: kept as StoredBackup, to, now: new Date("2026-05-02T09:00:00Z") }),
    );
    expect([restored.aside, existsSync(path.join(to, "registry.sqlite"))]).toEqual([null, true]);
  });

  it("is refused while a server has the folder open, and changes nothing", async () => {
    const held = holdFolder(folder);
    // Another process would be refused; this one may hold its own folder twice, so a process of its own asks.
    try {
      execFileSync(process.execPath, ["--import", "tsx", "lib/cli/restore.ts", backup.name], {
        env: { ...process.env, KINROW_DATA: folder },
        stdio: "pipe",
      });
      expect.unreachable();
    } catch (error) {
      const { status, stderr } = error as { status: number; stderr: Buffer };
      expect(status).toBe(1);
      expect(stderr.toString()).toContain(`open in a server (process ${process.pid}`);
      expect(stderr.toString()).toContain("Nothing was changed.");
    } finally {
      held.release();
    }
  });

  it("is refused with the name of the file where a backup was damaged", async () => {
    const [kept] = await listBackups(backups);
    const file = path.join((kept as StoredBackup).folder, photoPath(photoHash));
    writeFileSync(file, photo.toReversed());
    const to = path.join(temporaryFolder(), "elsewhere");
    const refusedTo = await restoreBackup({ backup: kept as StoredBackup, to, now: new Date() });
    expect(refusedTo.ok).toBe(false);
    if (!refusedTo.ok) expect(refusedTo.refusals[0]?.sentence).toContain(photoPath(photoHash));
    expect(existsSync(to)).toBe(false);
    writeFileSync(file, photo);
  });

  it("keeps a photo once in all backups, but takes it anew where it rotted in the last", async () => {
    const next = async (day: string) =>
      (await makeBackup({ location: db.location, backups, now: new Date(`${day}T08:00:00Z`), why: "daily" })).backup;
    const photoOf = (made: StoredBackup) => path.join(made.folder, photoPath(photoHash));
    const second = await next("2026-05-03");
    expect(statSync(photoOf(second)).ino).toBe(statSync(photoOf(backup)).ino);
    writeFileSync(photoOf(second), photo.toReversed());
    const third = await next("2026-05-04");
    expect([third.sound, hashOf(photoOf(third))]).toEqual([true, photoHash]);
    writeFileSync(photoOf(second), photo);
  });

  it("goes into a folder whose registry was lost, though other things of it stand there", async () => {
    const [kept] = await listBackups(backups);
    const to = temporaryFolder();
    for (const name of ["photos", "sharing", "uploads"]) mkdirSync(path.join(to, name));
    for (const name of ["registry.sqlite-wal", "in-use.lock-journal", "safe-keeping.json"])
      writeFileSync(path.join(to, name), "");
    const now = new Date("2026-05-05T08:00:00Z");
    const restored = granted(await restoreBackup({ backup: kept as StoredBackup, to, now }));
    expect(existsSync(path.join(to, "registry.sqlite"))).toBe(true);
    rmSync(restored.aside as string, { recursive: true });
  });

  it("is refused for a folder that holds other things", async () => {
    const [kept] = await listBackups(backups);
    const to = temporaryFolder();
    writeFileSync(path.join(to, "letters.txt"), "mine");
    const refusedTo = await restoreBackup({ backup: kept as StoredBackup, to, now: new Date() });
    expect(refusedTo.ok).toBe(false);
    if (!refusedTo.ok) expect(refusedTo.refusals[0]?.sentence).toContain("letters.txt");
    expect(readdirSync(to)).toEqual(["letters.txt"]);
  });

  it("a backup that cannot be finished leaves no half one and the others alone", async () => {
    const before = readdirSync(backups).sort();
    const gone = { ...db.location, url: path.join(folder, "no-such.sqlite") };
    await expect(makeBackup({ location: gone, backups, now: new Date(), why: "daily" })).rejects.toThrow();
    const notOne = { ...db.location, url: path.join(temporaryFolder(), "not-one.sqlite") };
    writeFileSync(notOne.url, "no registry at all, but long enough to be looked at. ".repeat(100));
    await expect(makeBackup({ location: notOne, backups, now: new Date(), why: "daily" })).rejects.toThrow(
      StorageFault,
    );
    expect(readdirSync(backups).sort()).toEqual(before);
  });
});
