import { spawn } from "node:child_process";
import path from "node:path";
import type { Location } from "@/lib/db";
import type { Manifest } from "@/lib/schemas/backups/manifest";
import { readKeepingState, storeKeepingState } from "./state";

/** How a backup ended: made, or the sentence that says why not. */
export type BackupRun = { readonly made: true } | { readonly made: false; readonly sentence: string };

const flags: Readonly<Record<Manifest["why"], readonly string[]>> = {
  daily: ["--daily"],
  "by hand": [],
  "before a new release": ["--before-release"],
};

/**
 * Makes a backup in a process of its own, as `npm run backup` does, so that pages are answered meanwhile. What failed is remembered in the data folder.
 */
export async function runBackup(
  location: Location,
  why: Manifest["why"],
  root: string = process.cwd(),
): Promise<BackupRun> {
  const begun = new Date().toISOString();
  const program = path.join(/* turbopackIgnore: true */ root, "lib", "cli", "backup.ts");
  const { code, errors } = await ended(program, flags[why], root, location);
  if (code === 0) return { made: true };
  const sentence = errors.trim().split("\n").at(-1) || "The backup ended without a word.";
  // The command remembers its own failures; one that was killed could not.
  const known = readKeepingState(location.folder).failure;
  if (known === null || known.at < begun) remember(location.folder, { at: begun, sentence });
  return { made: false, sentence };
}

/** Remembers a failed backup in the data folder; on a full disk not even that can be written, and nothing more is lost by it. */
export function remember(folder: string, failure: { at: string; sentence: string }): void {
  try {
    storeKeepingState(folder, { failure });
  } catch {
    // the next attempt tells it again
  }
}

function ended(
  program: string,
  args: readonly string[],
  cwd: string,
  location: Location,
): Promise<{ code: number | null; errors: string }> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["--import", "tsx", program, ...args], {
      cwd,
      stdio: ["ignore", "ignore", "pipe"],
      env: { ...process.env, KINROW_DATA: location.folder },
    });
    let errors = "";
    (child.stderr as NodeJS.ReadableStream).on("data", (text: Buffer) => {
      errors = `${errors}${text}`.slice(-4000);
    });
    child.once("error", (error) => resolve({ code: null, errors: error.message }));
    child.once("close", (code) => resolve({ code, errors }));
  });
}
