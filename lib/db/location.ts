import { rm } from "node:fs/promises";
import path from "node:path";

export type Engine = "sqlite" | "postgresql";

/** Where a registry is kept: one file in the data folder, or a PostgreSQL address. */
export interface Location {
  readonly engine: Engine;
  /** path of the file, or the address */
  readonly url: string;
  readonly folder: string;
  readonly demonstration: boolean;
}

/** The data folder: KINROW_DATA, else ./data. */
export function dataFolder(environment: NodeJS.ProcessEnv = process.env): string {
  return path.resolve(/* turbopackIgnore: true */ process.cwd(), environment.KINROW_DATA || "data");
}

/** The steward's own registry: KINROW_DATABASE where a circle shares one on PostgreSQL, else one file in the data folder. */
export function registryLocation(environment: NodeJS.ProcessEnv = process.env): Location {
  const folder = dataFolder(environment);
  const shared = environment.KINROW_DATABASE;
  if (shared && /^postgres(ql)?:\/\//.test(shared)) {
    return { engine: "postgresql", url: shared, folder, demonstration: false };
  }
  return { engine: "sqlite", url: path.join(folder, "registry.sqlite"), folder, demonstration: false };
}

/** The demonstration is always a file of its own, never mixed with the steward's registry. */
export function demonstrationLocation(environment: NodeJS.ProcessEnv = process.env): Location {
  const folder = dataFolder(environment);
  return { engine: "sqlite", url: path.join(folder, "demonstration.sqlite"), folder, demonstration: true };
}

/** Removes the demonstration's file with its log. The steward's own registry is never removed. */
export async function removeDatabase(location: Location): Promise<void> {
  if (!location.demonstration || location.engine !== "sqlite")
    throw new Error("only the demonstration is ever removed");
  for (const ending of ["", "-wal", "-shm"]) await rm(`${location.url}${ending}`, { force: true });
}
