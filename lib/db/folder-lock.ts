import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import Sqlite from "better-sqlite3";
import { storageFaultOf } from "./storage-fault";

/** Who has a folder open. */
export interface FolderHolder {
  readonly pid: number;
  readonly host: string;
  readonly since: string;
}

/** A folder that this process holds until it lets go or ends. */
export interface HeldFolder {
  readonly folder: string;
  /** who held it before and ended without letting go: a kill or a power cut; null where nobody did */
  readonly leftBy: FolderHolder | null;
  release(): void;
}

/** Another process has the folder; the message says which, and what to do. */
export class FolderHeldByAnother extends Error {
  constructor(
    readonly folder: string,
    readonly holder: FolderHolder | null,
  ) {
    const who = holder ? `process ${holder.pid} on ${holder.host}, since ${holder.since}` : "another process";
    super(
      `The folder ${folder} is open in another Kinrow already (${who}); two at once would not know of each other. End that one first, or name another folder in KINROW_DATA.`,
    );
  }
}

interface Holding {
  readonly lock: Sqlite.Database;
  readonly leftBy: FolderHolder | null;
  count: number;
}

// One holding a folder for the life of the process, also across reloads of the code while developing.
const holdings = globalThis as unknown as { kinrowHeld?: Map<string, Holding> };

/**
 * Holds a folder for this process, so that no second server opens it. The lock is the operating system's own, on an empty file of the folder:
 * it goes with the process, however that ends, so none is ever left behind. Beside it stands who holds it, for the sentence that the second
 * one gets. Holding it again in the same process is free; it is let go when all have let go.
 *
 * @param purpose the lock's name in the folder: "in-use" for a data folder
 * @throws FolderHeldByAnother where another process has it; StorageFault where the folder cannot be written
 */
export function holdFolder(folder: string, purpose = "in-use"): HeldFolder {
  const file = path.join(folder, `${purpose}.lock`);
  const held = holdings.kinrowHeld ?? new Map<string, Holding>();
  holdings.kinrowHeld = held;
  const holding = held.get(file) ?? taken(folder, purpose, file);
  holding.count += 1;
  held.set(file, holding);
  let open = true;
  return {
    folder,
    leftBy: holding.leftBy,
    release: () => {
      if (!open) return;
      open = false;
      holding.count -= 1;
      if (holding.count > 0) return;
      held.delete(file);
      rmSync(holderFile(folder, purpose), { force: true });
      holding.lock.close();
    },
  };
}

function taken(folder: string, purpose: string, file: string): Holding {
  let lock: Sqlite.Database | null = null;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    // Made here, so that only its owner may read it, as all else in the folder.
    writeFileSync(file, "", { flag: "a", mode: 0o600 });
    lock = new Sqlite(file, { timeout: 0 });
    lock.exec("BEGIN EXCLUSIVE");
    const leftBy = holderOf(folder, purpose);
    const me: FolderHolder = { pid: process.pid, host: os.hostname(), since: new Date().toISOString() };
    writeFileSync(holderFile(folder, purpose), JSON.stringify(me), { mode: 0o600 });
    return { lock, leftBy, count: 0 };
  } catch (error) {
    lock?.close();
    const fault = storageFaultOf(error, folder);
    if (fault?.kind === "held-by-another") throw new FolderHeldByAnother(folder, holderOf(folder, purpose));
    throw fault ?? error;
  }
}

function holderFile(folder: string, purpose: string): string {
  return path.join(folder, `${purpose}.json`);
}

function holderOf(folder: string, purpose: string): FolderHolder | null {
  try {
    const { pid, host, since } = JSON.parse(readFileSync(holderFile(folder, purpose), "utf8")) as FolderHolder;
    return { pid, host, since };
  } catch {
    // not there, or cut off in the middle of writing: nobody is known
    return null;
  }
}
