import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { inject } from "vitest";
import { type Database, type Location, openDatabase } from "@/lib/db";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { whenFileEnds } from "./left-behind";
import { onceARun } from "./once-a-run";

/** A folder that goes when the test file ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-test-"));
  whenFileEnds(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A migrated registry with the crop list, made once a run and copied for each test. */
function templateFile(): Promise<string> {
  return onceARun(inject("runFolder"), "sqlite", async (folder) => {
    const location = at(folder);
    const db = await prepareRegistry(location);
    await db.write.$queryRawUnsafe("PRAGMA wal_checkpoint(TRUNCATE)");
    await db.close();
    return location.url;
  });
}

function at(folder: string): Location {
  return { engine: "sqlite", url: path.join(folder, "registry.sqlite"), folder, demonstration: false };
}

/** An empty SQLite registry of its own. */
export async function emptyRegistry(options: Parameters<typeof openDatabase>[1] = {}): Promise<Database> {
  const from = await templateFile();
  const location = at(temporaryFolder());
  mkdirSync(location.folder, { recursive: true });
  copyFileSync(from, location.url);
  const db = await openDatabase(location, options);
  whenFileEnds(() => db.close());
  return db;
}

/** The value of an accepted outcome; fails the test with the refusals otherwise. */
export function granted<T>(
  outcome: { ok: true; value: T } | { ok: false; refusals: readonly { sentence: string }[] },
): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.refusals.map((each) => each.sentence).join("\n"));
}
