import { type ChildProcess, spawn } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import Sqlite from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { makeBackup } from "@/lib/backups/make-backup";
import { FolderHeldByAnother, holdFolder, StorageFault } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { interruptedRestore } from "@/lib/registry/safe-keeping/interrupted-restore";
import { backUpIfDue } from "@/lib/registry/safe-keeping/keep-backing-up";
import { listBackups } from "@/lib/registry/safe-keeping/list-backups";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { changeSettings } from "@/lib/registry/settings/change-settings";
import { emptyRegistry, granted, temporaryFolder } from "@/tests/setup/registry";
import { folderOf, locationOf } from "./protocol";

const owner = ownerHere();

async function sound(db: Awaited<ReturnType<typeof emptyRegistry>>): Promise<void> {
  expect((await verifyRegistry(db, path.join(db.location.folder, "photos"))).findings).toEqual([]);
}

describe("a full disk", () => {
  // SQLite itself says that the disk is full when a file has reached the most pages that it may have.
  it("refuses an import with a sentence, leaves nothing of it, and lets the next entry in once there is space", async () => {
    const db = await emptyRegistry();
    const [size] = await db.write.$queryRawUnsafe<{ page_count: number | bigint }[]>("PRAGMA page_count");
    await db.write.$queryRawUnsafe(`PRAGMA max_page_count = ${Number(size?.page_count) + 10}`);
    const before = await db.read.changeSet.count();
    const refused = await importFolder(db, owner, folderOf("large", 2000));
    expect(refused.ok).toBe(false);
    if (!refused.ok) {
      expect(refused.refusals.map((each) => each.code)).toEqual(["disk-full"]);
      expect(refused.refusals[0]?.sentence).toContain("is full, so nothing of this was written");
    }
    expect([await db.read.changeSet.count(), await db.read.lot.count()]).toEqual([before, 0]);
    await sound(db);
    await db.write.$queryRawUnsafe("PRAGMA max_page_count = 1073741823");
    granted(await importFolder(db, owner, folderOf("large", 2000)));
    expect(await db.read.lot.count()).toBe(2000);
    await sound(db);
  });
});

describe("a disk that takes no more while a backup is made", () => {
  // The system itself refuses what goes beyond the size that a file may have (ulimit -f, in blocks of 512 bytes or 1 kB).
  it("says so, leaves no half backup and the registry as it was", async () => {
    const db = await emptyRegistry();
    granted(await importFolder(db, owner, folderOf("kept", 300)));
    const before = await db.lastChange();
    const { location } = db;
    const run = spawn(
      "sh",
      ["-c", `ulimit -f 200; exec "$0" --import tsx tests/faults/backer.ts "$1"`, process.execPath, location.folder],
      {
        stdio: ["ignore", "pipe", "pipe"],
      },
    );
    let said = "";
    (run.stdout as NodeJS.ReadableStream).on("data", (text: Buffer) => {
      said += text;
    });
    await new Promise((resolve) => run.once("close", resolve));
    expect(said).toMatch(/did not take|is full/);
    expect((await listBackups(path.join(location.folder, "backups"))).length).toBe(0);
    expect(await db.lastChange()).toBe(before);
    await sound(db);
    const made = await makeBackup({
      location,
      backups: path.join(location.folder, "backups"),
      now: new Date(),
      why: "by hand",
    });
    expect(made.backup.sound).toBe(true);
    expect(
      readdirSync(path.join(location.folder, "backups")).filter((name) => /^\d/.test(name) || name.startsWith(".")),
    ).toHaveLength(1);
  });
});

describe("a locked file", () => {
  it("refuses an entry with a sentence when the other does not let go in time, and takes it afterwards", async () => {
    const db = await emptyRegistry();
    await db.write.$queryRawUnsafe("PRAGMA busy_timeout = 50");
    const other = new Sqlite(db.location.url);
    other.exec("BEGIN IMMEDIATE");
    const refused = await changeSettings(db, owner, { confirmedYears: 7 });
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(refused.refusals[0]?.sentence).toContain("Another program holds");
    other.exec("ROLLBACK");
    other.close();
    granted(await changeSettings(db, owner, { confirmedYears: 7 }));
    await sound(db);
  });
});

/** As somebody who is not root, whom no right would stop. */
function asNobody<T>(work: () => T): T {
  const root = process.geteuid?.() === 0;
  if (root) process.seteuid?.(65_534);
  try {
    return work();
  } finally {
    if (root) process.seteuid?.(0);
  }
}

describe("a folder that may only be read", () => {
  it("is refused with a sentence that says what to do, and nothing is made in it", () => {
    const folder = temporaryFolder();
    chmodSync(folder, 0o555);
    const opening = () => asNobody(() => holdFolder(folder));
    expect(opening).toThrow(StorageFault);
    expect(opening).toThrow(/may only be read, so nothing was written/);
    expect(readdirSync(folder)).toEqual([]);
    chmodSync(folder, 0o700);
  });
});

describe("a file that is no registry", () => {
  it("is told as damaged and left as it is", async () => {
    const folder = temporaryFolder();
    const text = "letters, not a database. ".repeat(200);
    writeFileSync(path.join(folder, "registry.sqlite"), text);
    await expect(prepareRegistry(locationOf(folder))).rejects.toThrow();
    expect(readFileSync(path.join(folder, "registry.sqlite"), "utf8")).toBe(text);
  });
});

/** A process of its own that holds a folder until it is killed. */
async function holder(folder: string): Promise<ChildProcess> {
  const child = spawn(process.execPath, ["--import", "tsx", "tests/faults/holder.ts", folder], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  await new Promise<void>((resolve) => (child.stdout as NodeJS.ReadableStream).once("data", () => resolve()));
  return child;
}

/** What the start command said and how it ended. */
async function started(environment: Record<string, string>): Promise<{ code: number | null; said: string }> {
  const child = spawn(process.execPath, ["scripts/start.mjs"], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, ...environment },
  });
  let said = "";
  for (const stream of [child.stdout, child.stderr] as NodeJS.ReadableStream[])
    stream.on("data", (text: Buffer) => {
      said += text;
    });
  const code = await new Promise<number | null>((resolve) => child.once("exit", (ended) => resolve(ended)));
  return { code, said };
}

describe("a port that another program has", () => {
  it("is said with what to do before anything is built, and the data folder stays empty", async () => {
    const folder = temporaryFolder();
    const other = net.createServer();
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", () => resolve()));
    const { port } = other.address() as net.AddressInfo;
    const { code, said } = await started({ KINROW_DATA: folder, PORT: String(port) });
    other.close();
    expect(code).toBe(1);
    expect(said).toContain(`Port ${port} is taken by another program`);
    expect(said).toContain(`start with PORT=${port + 1}`);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("is refused by name where it is no port", async () => {
    const { code, said } = await started({ KINROW_DATA: temporaryFolder(), PORT: "seven" });
    expect([code, said.includes('PORT is "seven"; write a whole number from 1 to 65535.')]).toEqual([1, true]);
  });
});

describe("two servers on one folder", () => {
  it("the second is refused with who has it; after a kill nothing is left in the way", async () => {
    const folder = temporaryFolder();
    const first = await holder(folder);
    expect(() => holdFolder(folder)).toThrow(FolderHeldByAnother);
    expect(() => holdFolder(folder)).toThrow(`process ${first.pid} on `);
    const ended = new Promise<void>((resolve) => first.once("exit", () => resolve()));
    first.kill("SIGKILL");
    await ended;
    const held = holdFolder(folder);
    expect(held.leftBy?.pid).toBe(first.pid);
    held.release();
    const again = holdFolder(folder);
    expect(again.leftBy).toBeNull();
    again.release();
  });
});

describe("a clock that was set back", () => {
  it("keeps the backups that are dated ahead, makes one, and does not make one after the other", async () => {
    const db = await emptyRegistry();
    const { location } = db;
    const backups = path.join(location.folder, "backups");
    process.env.KINROW_BACKUPS = backups;
    try {
      const ahead = [];
      for (const at of ["2026-06-01T08:00:00Z", "2026-06-02T08:00:00Z"])
        ahead.push((await makeBackup({ location, backups, now: new Date(at), why: "daily" })).backup.name);
      const back = new Date("2026-05-01T08:00:00Z");
      const run = async () => {
        await makeBackup({ location, backups, now: back, why: "daily" });
        return { made: true as const };
      };
      expect(await backUpIfDue(location, back, () => {}, run)).toBe(true);
      expect(await backUpIfDue(location, new Date("2026-05-01T08:10:00Z"), () => {}, run)).toBe(false);
      const names = (await listBackups(backups)).map((each) => each.name);
      expect(names).toEqual([...ahead.reverse(), "2026-05-01-080000"]);
    } finally {
      delete process.env.KINROW_BACKUPS;
    }
  });
});

describe("a restore that was broken off", () => {
  it("stops a server from beginning anew beside the records, and says where they stand", () => {
    const folder = path.join(temporaryFolder(), "data");
    expect(() => interruptedRestore(locationOf(folder))).not.toThrow();
    mkdirSync(folder);
    writeFileSync(path.join(folder, "registry.sqlite"), "");
    renameSync(folder, `${folder}.before-2026-05-02-080000`);
    mkdirSync(folder);
    expect(() => interruptedRestore(locationOf(folder))).toThrow(`${folder}.before-2026-05-02-080000`);
    expect(existsSync(path.join(folder, "registry.sqlite"))).toBe(false);
  });
});
