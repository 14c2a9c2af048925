import "server-only";
import { readFile } from "node:fs/promises";
import path from "node:path";
import type { FieldFiles } from "./field-document";

const folder = path.join(process.cwd(), ".next", "field");

/** The list of the field's files; null where they were not bundled. Read anew each time: it is one small file. */
export async function fieldFiles(): Promise<FieldFiles | null> {
  const text = await readFile(path.join(folder, "files.json"), "utf8").catch(() => null);
  return text === null ? null : (JSON.parse(text) as FieldFiles);
}

/** One of the listed files; null for any other name. */
export async function fieldFile(name: string): Promise<Uint8Array<ArrayBuffer> | null> {
  const listed = await fieldFiles();
  if (!listed?.all.includes(name)) return null;
  return new Uint8Array(await readFile(path.join(folder, name)));
}
