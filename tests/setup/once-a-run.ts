import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import path from "node:path";

/** Where the process id of the run's database server stands. */
export function processOf(runFolder: string): string {
  return path.join(runFolder, "server.pid");
}

/**
 * Makes something once a run of the tests, whichever file needs it first, and gives what it told (a place, an address) to all. The other files
 * wait for it; where it could not be made they say why.
 */
export async function onceARun(
  runFolder: string,
  name: string,
  make: (folder: string) => Promise<string>,
): Promise<string> {
  const folder = path.join(runFolder, name);
  const told = path.join(runFolder, `${name}.told`);
  const failed = path.join(runFolder, `${name}.failed`);
  if (mine(folder)) {
    try {
      const answer = await make(folder);
      writeFileSync(`${told}.part`, answer);
      renameSync(`${told}.part`, told);
      return answer;
    } catch (error) {
      writeFileSync(failed, String(error instanceof Error ? error.stack : error));
      throw error;
    }
  }
  while (!existsSync(told)) {
    if (existsSync(failed))
      throw new Error(`${name} could not be made by another file: ${readFileSync(failed, "utf8")}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  return readFileSync(told, "utf8");
}

/** True for the one that makes the folder. */
function mine(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}
