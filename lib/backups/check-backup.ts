import { stat } from "node:fs/promises";
import path from "node:path";
import type { StoredBackup } from "@/lib/registry/safe-keeping/list-backups";
import { hashOfFile } from "@/lib/registry/safe-keeping/verify/check-photos";

/** Files of a backup that are not what its manifest says; none where each is there with its length and hash. */
export async function backupFaults({ folder, manifest }: StoredBackup): Promise<string[]> {
  const faults: string[] = [];
  for (const file of manifest.files) {
    const place = path.join(folder, file.path);
    if (path.relative(folder, place).startsWith("..")) {
      faults.push(`The backup's list names ${file.path}, which is outside it.`);
      continue;
    }
    const size = await stat(place).then(
      (found) => found.size,
      () => null,
    );
    if (size === null) faults.push(`${file.path} is missing in the backup ${folder}; take another backup.`);
    else if (size !== file.bytes || (await hashOfFile(place)) !== file.sha256)
      faults.push(
        `${file.path} in the backup ${folder} is not what was written then: it is damaged; take another backup.`,
      );
  }
  return faults;
}
