import { furtherSpecs } from "@/lib/registry/notebook/further/specs";
import { notebookFiles } from "./draft";

const known: ReadonlySet<string> = new Set([...notebookFiles, ...furtherSpecs.map(({ file }) => file)]);

/** The files of a folder under the names that a notebook has for them, in whatever letter case they came ("Lots.CSV"); of two, that of the very name. */
export function byKnownNames<Content>(files: ReadonlyMap<string, Content>): Map<string, Content> {
  const named = new Map<string, Content>();
  for (const [name, content] of files) {
    const plain = name.toLowerCase();
    const isMeant = known.has(plain) && !files.has(plain) && !named.has(plain);
    named.set(isMeant ? plain : name, content);
  }
  return named;
}

/** Whether a folder has any file that is read as a table. */
export function hasTables(files: ReadonlyMap<string, unknown>): boolean {
  return [...files.keys()].some((name) => known.has(name));
}
