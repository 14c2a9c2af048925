import { readFileSync } from "node:fs";
import path from "node:path";

/** The version of this release, as package.json has it. */
export function release(root: string = process.cwd()): string {
  const file = path.join(/* turbopackIgnore: true */ root, "package.json");
  return String((JSON.parse(readFileSync(file, "utf8")) as { version: unknown }).version);
}
