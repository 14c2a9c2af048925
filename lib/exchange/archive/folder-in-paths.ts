import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { notebookFiles } from "../notebook-folder/draft";

/**
 * The files of the one notebook folder among some paths, named as they lie in it (`lots.csv`, `photos/1a.jpg`). The folder is
 * the one that holds files of a notebook; where none does, the deepest that holds all. Refused: two such folders.
 */
export function folderInPaths<Content>(paths: ReadonlyMap<string, Content>): Outcome<Map<string, Content>> {
  const own = [...paths].filter(([path]) => !isLeftover(path));
  const homes = new Set(
    own
      .map(([path]) => path)
      .filter(isNotebookFile)
      .map(folderOf),
  );
  if (homes.size > 1) {
    const wrong = "each hold files of a notebook";
    const given = [...homes].map((home) => home || "the top").join(", ");
    return refused(refusal("two-folders", [], given, wrong, "bring in one folder at a time"));
  }
  const home = [...homes][0] ?? sharedFolder(own.map(([path]) => path));
  const inside = own.filter(([path]) => path.startsWith(home));
  return accepted(new Map(inside.map(([path, content]) => [path.slice(home.length), content])));
}

/** With its last slash; empty for the top. */
function folderOf(path: string): string {
  return path.slice(0, path.lastIndexOf("/") + 1);
}

function isNotebookFile(path: string): boolean {
  return notebookFiles.includes(path.slice(path.lastIndexOf("/") + 1).toLowerCase());
}

/** What computers leave in a folder by themselves. */
function isLeftover(path: string): boolean {
  return path
    .split("/")
    .some((step) => step === "__MACOSX" || step.startsWith(".") || /^(thumbs\.db|desktop\.ini)$/i.test(step));
}

function sharedFolder(paths: readonly string[]): string {
  const [first = "", ...others] = paths.map(folderOf);
  return others.reduce((shared, folder) => {
    let home = shared;
    while (!folder.startsWith(home)) home = folderOf(home.slice(0, -1));
    return home;
  }, first);
}
