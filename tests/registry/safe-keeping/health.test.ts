import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { readHealth } from "@/lib/registry/safe-keeping/health";
import { storeKeepingState } from "@/lib/registry/safe-keeping/state";
import type { Manifest } from "@/lib/schemas/backups/manifest";
import { emptyRegistry, temporaryFolder } from "@/tests/setup/registry";

let db: Database;
let backups: string;

beforeEach(async () => {
  db = await emptyRegistry();
  backups = temporaryFolder();
  process.env.KINROW_BACKUPS = backups;
});

afterEach(() => {
  delete process.env.KINROW_BACKUPS;
});

function stored(name: string, at: string, more: Partial<Manifest> = {}): void {
  const manifest: Manifest = {
    ...{ kind: "kinrow backup", layout: 1, at, why: "daily", release: "0.1.0", engine: "sqlite", wholeRegistry: true },
    ...{ migrations: [], counts: {}, check: { sound: true, faults: [], notes: 0 } },
    files: [{ path: "registry.sqlite", bytes: 1000, sha256: "0".repeat(64) }],
    ...more,
  };
  mkdirSync(path.join(backups, name));
  writeFileSync(path.join(backups, name, "manifest.json"), JSON.stringify(manifest));
}

const at = (moment: string) => readHealth(db, new Date(moment));
/** What is said whatever the disk of the machine that runs the tests has left. */
const concerns = async (moment: string) =>
  (await at(moment)).concerns.filter((each) => each !== "space-low" && each !== "space-out");

describe("how a registry is kept", () => {
  it("without a backup says so, and that one is due at once", async () => {
    const health = await at("2026-05-01T08:00:00.000Z");
    expect([health.newest, health.nextAt, health.answers]).toEqual([null, "2026-05-01T08:00:00.000Z", true]);
    expect(await concerns("2026-05-01T08:00:00.000Z")).toEqual(["no-backup-yet"]);
  });

  it("is well for two days after a backup, and not a moment longer", async () => {
    stored("a", "2026-05-01T08:00:00.000Z");
    expect(await concerns("2026-05-03T08:00:00.000Z")).toEqual([]);
    expect(await concerns("2026-05-03T08:00:00.001Z")).toEqual(["backup-old"]);
  });

  it("goes by the newest backup that is not dated ahead of the clock", async () => {
    stored("a", "2026-05-01T08:00:00.000Z");
    stored("b", "2031-05-01T08:00:00.000Z");
    const health = await at("2026-05-02T08:00:00.000Z");
    expect(health.newest?.name).toBe("a");
    expect(health.backups.map((each) => [each.name, each.keptAs])).toEqual([
      ["b", ["dated ahead"]],
      ["a", ["day", "month", "year"]],
    ]);
  });

  it("tells a backup that failed until one is made", async () => {
    stored("a", "2026-05-01T08:00:00.000Z");
    storeKeepingState(db.location.folder, {
      failure: { at: "2026-05-02T07:30:00.000Z", sentence: "The disk is full." },
    });
    const health = await at("2026-05-02T07:40:00.000Z");
    expect([health.failure?.sentence, health.nextAt]).toEqual(["The disk is full.", "2026-05-02T08:30:00.000Z"]);
    expect(await concerns("2026-05-02T07:40:00.000Z")).toEqual(["backup-failed"]);
    stored("b", "2026-05-02T08:30:00.000Z");
    expect(await concerns("2026-05-02T08:40:00.000Z")).toEqual([]);
  });

  it("tells what the latest check found, of a backup or of the registry", async () => {
    stored("a", "2026-05-01T08:00:00.000Z", {
      check: { sound: false, faults: ["Lot 3 is its own ancestor."], notes: 0 },
    });
    expect(await concerns("2026-05-01T09:00:00.000Z")).toEqual(["faults-found"]);
    storeKeepingState(db.location.folder, {
      verified: { at: "2026-05-01T10:00:00.000Z", faults: 0, notes: 2, first: null },
    });
    expect(await concerns("2026-05-01T11:00:00.000Z")).toEqual([]);
  });

  it("says that one disk is no backup where no other is named", async () => {
    stored("a", "2026-05-01T08:00:00.000Z");
    delete process.env.KINROW_BACKUPS;
    expect(await concerns("2026-05-01T09:00:00.000Z")).toContain("one-disk");
  });

  it("does not answer where the registry is closed", async () => {
    const closed = { ...db, read: { setting: { count: () => Promise.reject(new Error("closed")) } } as never };
    expect((await readHealth(closed, new Date("2026-05-01T09:00:00.000Z"))).concerns[0]).toBe("no-answer");
  });

  it("passes over what is no backup: a folder without a list, one that is being made, a file", async () => {
    mkdirSync(path.join(backups, "letters"));
    mkdirSync(path.join(backups, ".unfinished-2026"));
    writeFileSync(path.join(backups, "note.txt"), "x");
    mkdirSync(path.join(backups, "half"));
    writeFileSync(path.join(backups, "half", "manifest.json"), '{"kind": "kinrow');
    expect((await at("2026-05-01T09:00:00.000Z")).backups).toEqual([]);
  });
});
