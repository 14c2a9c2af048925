import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const reference = fileURLToPath(new URL("../../reference", import.meta.url));

/** The CSV files of a folder of tests/reference, by name. */
export function referenceFolder(name: string): Map<string, Uint8Array> {
  const folder = path.join(reference, name);
  const names = readdirSync(folder).filter((file) => file.endsWith(".csv"));
  return new Map(names.map((file) => [file, new Uint8Array(readFileSync(path.join(folder, file)))]));
}

/** A file of tests/reference as text. */
export function referenceText(name: string, file: string): string {
  return readFileSync(path.join(reference, name, file), "utf8");
}

/** Files by name from their text. */
export function filesOf(texts: Readonly<Record<string, string>>): Map<string, Uint8Array> {
  return new Map(Object.entries(texts).map(([name, text]) => [name, new TextEncoder().encode(text)]));
}
