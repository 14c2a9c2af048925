import { type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type ArchiveLimits, archiveLimits } from "./archive-limits";
import { folderInPaths } from "./folder-in-paths";
import { isArchive, readArchive } from "./read-archive";

/**
 * What was uploaded as the files of one notebook folder: a zip of the folder, or its files one by one (by name or by path).
 * Refused: a zip among other files, tables with more rows than may be looked through at once, and what `readArchive` and `folderInPaths` refuse.
 */
export async function filesOfUpload(
  uploaded: ReadonlyMap<string, Uint8Array>,
  limits: ArchiveLimits = archiveLimits,
): Promise<Outcome<Map<string, Uint8Array>>> {
  // A spreadsheet's own file is packed like a zip; it is no folder of files, and is told of as what it is.
  const archives = [...uploaded].filter(([name, bytes]) => isArchive(bytes) && !/\.(xlsx|ods|docx|odt)$/i.test(name));
  const [archive] = archives;
  if (archive === undefined) return withinRows(folderInPaths(uploaded), limits.rows);
  if (uploaded.size > 1) {
    const wrong = "is an archive among other files";
    return refused(
      refusal("archive-among-files", [archive[0]], archive[0], wrong, "choose one zip, or CSV files alone"),
    );
  }
  const unpacked = await readArchive(archive[1], limits);
  if (!unpacked.ok) return unpacked;
  const folder = folderInPaths(unpacked.value);
  if (!folder.ok || folder.value.size > 0) return withinRows(folder, limits.rows);
  const empty = refusal(
    "archive-empty",
    [archive[0]],
    archive[0],
    "holds no file",
    "pack the folder with its CSV files",
  );
  return refused(empty);
}

function withinRows(folder: Outcome<Map<string, Uint8Array>>, most: number): Outcome<Map<string, Uint8Array>> {
  if (!folder.ok) return folder;
  let rows = 0;
  for (const [name, bytes] of folder.value) {
    if (/\.csv$/i.test(name)) rows += lineBreaks(bytes, most - rows);
    if (rows <= most) continue;
    const needed = `bring at most ${most.toLocaleString("en-GB")} rows in at once, or use npm run import`;
    return refused(refusal("too-many-rows", ["files"], name, "has more rows than a page can look through", needed));
  }
  return folder;
}

/** How many lines end in some bytes, counted until there are more than `most`: a line ends with a line feed, or with the carriage return of old machines. */
function lineBreaks(bytes: Uint8Array, most: number): number {
  const ending = bytes.includes(0x0a) ? 0x0a : 0x0d;
  let found = 0;
  for (let at = bytes.indexOf(ending); at >= 0 && found <= most; at = bytes.indexOf(ending, at + 1)) found += 1;
  return found;
}
