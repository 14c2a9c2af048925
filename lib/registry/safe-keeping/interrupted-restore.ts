import { existsSync, readdirSync } from "node:fs";
import path from "node:path";
import type { Location } from "@/lib/db";
import { registryFile } from "./places";

/** A restore was broken off between putting the old folder aside and the new one in its place; the message says where the records stand. */
export class RestoreInterrupted extends Error {}

/**
 * Stops a server from making a new registry in an empty folder where a restore was broken off: the records stand beside it.
 *
 * @throws RestoreInterrupted
 */
export function interruptedRestore({ engine, folder, url }: Location): void {
  if (engine !== "sqlite" || existsSync(url)) return;
  const name = path.basename(folder);
  const parent = path.dirname(folder);
  const aside = readdirSync(parent)
    .filter((other) => other.startsWith(`${name}.before-`) && existsSync(path.join(parent, other, registryFile)))
    .sort()
    .at(-1);
  if (!aside) return;
  throw new RestoreInterrupted(
    `A restore to ${folder} was broken off: the records from before it stand in ${path.join(parent, aside)}. Restore once more (backups may stand in there: npm run restore -- ${path.join(parent, aside, "backups")}/NAME), or give that folder its name ${name} back.`,
  );
}
