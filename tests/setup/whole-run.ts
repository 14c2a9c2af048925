import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { TestProject } from "vitest/node";
import { processOf } from "./once-a-run";

/** A folder that lasts as long as one run of the tests: what every file needs is made in it once, by the file that needs it first. */
export default function wholeRun(project: TestProject): () => void {
  const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-run-"));
  project.provide("runFolder", folder);
  return () => {
    const server = processOf(folder);
    if (existsSync(server)) {
      try {
        // At once: its folder goes with it.
        process.kill(Number(readFileSync(server, "utf8")), "SIGQUIT");
      } catch {
        // it has ended by itself
      }
    }
    rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  };
}

declare module "vitest" {
  export interface ProvidedContext {
    runFolder: string;
  }
}
