import { type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type ArchiveLimits, archiveLimits } from "./archive-limits";
import { folderInPaths } from "./folder-in-paths";
import { isArchive, readArchive } from "./read-archive";

/**
 * What was uploaded as the files of one notebook folder: a zip of the folder, or its files one by one (by name or by path).
 * Refused: a zip among other files, and what `readArchive` and `folderInPaths` refuse.
 */
export async function filesOfUpload(
  uploaded: ReadonlyMap<string, Uint8Array>,
  limits: ArchiveLimits = archiveLimits,
): Promise<Outcome<Map<string, Uint8Array>>> {
  const archives = [...uploaded].filter(([, bytes]) => isArchive(bytes));
  const [archive] = archives;
  if (archive === undefined) return folderInPaths(uploaded);
  if (uploaded.size > 1) {
    const wrong = "is an archive among other files";
    return refused(
      refusal("archive-among-files", [archive[0]], archive[0], wrong, "choose one zip, or CSV files alone"),
    );
  }
  const unpacked = await readArchive(archive[1], limits);
  if (!unpacked.ok) return unpacked;
  const folder = folderInPaths(unpacked.value);
  if (!folder.ok || folder.value.size > 0) return folder;
  const empty = refusal(
    "archive-empty",
    [archive[0]],
    archive[0],
    "holds no file",
    "pack the folder with its CSV files",
  );
  return refused(empty);
}
