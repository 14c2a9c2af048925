import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import path from "node:path";
import { type KeepingState, KeepingStateSchema } from "@/lib/schemas/backups/manifest";
import { stateFile } from "./places";

const nothing: KeepingState = { failure: null, verified: null };

/** What a data folder remembers of failed backups and of checks; nothing where the file is missing or not to be read. */
export function readKeepingState(folder: string): KeepingState {
  try {
    const read = KeepingStateSchema.safeParse(JSON.parse(readFileSync(path.join(folder, stateFile), "utf8")));
    return read.success ? read.data : nothing;
  } catch {
    return nothing;
  }
}

/** Remembers something. The file is put in place whole. */
export function storeKeepingState(folder: string, change: Partial<KeepingState>): void {
  const file = path.join(folder, stateFile);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const half = `${file}.${process.pid}`;
  writeFileSync(half, JSON.stringify({ ...readKeepingState(folder), ...change }), { mode: 0o600 });
  renameSync(half, file);
}
