import { spawn } from "node:child_process";
import path from "node:path";
import Sqlite from "better-sqlite3";
import { StorageFault, storageFaultOf } from "./storage-fault";

/**
 * Copies an SQLite registry to a new file while it is open and written to: the registry at one moment, in one file without a log beside it.
 * Runs as a process of its own (why, stands in copy-program.mjs). Returns the number of pages.
 *
 * @throws StorageFault where the disk is full, the source is damaged or held, or a folder cannot be written
 */
export async function copyWhileOpen(source: string, target: string, root: string = process.cwd()): Promise<number> {
  const program = path.join(/* turbopackIgnore: true */ root, "lib", "db", "copy-program.mjs");
  const { output, errors } = await ended(program, [source, target], root);
  const told = lastLine(output);
  if (typeof told?.pages === "number") return told.pages;
  const error = Object.assign(new Error(String(told?.message ?? errors.trim())), { code: told?.code });
  throw storageFaultOf(error, error.code === "SQLITE_FULL" ? path.dirname(target) : source) ?? error;
}

function ended(program: string, args: string[], cwd: string): Promise<{ output: string; errors: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...args], { cwd, stdio: ["ignore", "pipe", "pipe"] });
    const heard = { output: "", errors: "" };
    (child.stdout as NodeJS.ReadableStream).on("data", (text: Buffer) => {
      heard.output += text.toString();
    });
    (child.stderr as NodeJS.ReadableStream).on("data", (text: Buffer) => {
      heard.errors += text.toString();
    });
    child.once("error", reject);
    child.once("close", () => resolve(heard));
  });
}

function lastLine(output: string): Record<string, unknown> | null {
  try {
    return JSON.parse(output.trim().split("\n").at(-1) ?? "") as Record<string, unknown>;
  } catch {
    return null;
  }
}

/** Brings what still stands in a file's log into the file, so that it can be moved or hashed alone. Nobody else may have it open. */
export function withoutLog(file: string): void {
  const db = new Sqlite(file);
  try {
    if (db.pragma("journal_mode = DELETE", { simple: true }) !== "delete")
      throw new StorageFault("held-by-another", file);
  } finally {
    db.close();
  }
}

/** True where another process has an SQLite registry open, or is in the middle of writing to it. A damaged file is open nowhere. */
export function isOpenElsewhere(file: string): boolean {
  let db: Sqlite.Database | null = null;
  try {
    db = new Sqlite(file, { timeout: 0, fileMustExist: true });
    // A connection that wants the file for itself gets it only where no other process has it open.
    db.pragma("locking_mode = EXCLUSIVE");
    db.exec("BEGIN IMMEDIATE; ROLLBACK");
    return false;
  } catch (error) {
    return storageFaultOf(error, file)?.kind === "held-by-another";
  } finally {
    db?.close();
  }
}
