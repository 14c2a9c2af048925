import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

/** The files of a folder by name; a sentence where it cannot be read. */
export async function readFolder(folder: string): Promise<Map<string, Uint8Array> | string> {
  try {
    const files = new Map<string, Uint8Array>();
    for (const entry of await readdir(folder, { withFileTypes: true })) {
      if (entry.isFile()) files.set(entry.name, Uint8Array.from(await readFile(path.join(folder, entry.name))));
    }
    return files;
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === "ENOENT") return `There is no folder "${folder}"; name the folder that holds the CSV files.`;
    if (code === "ENOTDIR") return `"${folder}" is a file; name the folder that holds the CSV files.`;
    return `The folder "${folder}" cannot be read (${code}).`;
  }
}
