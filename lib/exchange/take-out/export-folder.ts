import type { Database } from "@/lib/registry/handles";
import { readFurther } from "@/lib/registry/notebook/further/read-further";
import { readNotebook } from "@/lib/registry/notebook/read-notebook";
import { writeNotebookFolder } from "../notebook-folder/write-notebook-folder";

/** The whole registry as a folder that imports to the same registry: the seven files, and one for each other kind of record that is there. */
export async function exportFolder(db: Database): Promise<Map<string, Uint8Array>> {
  return writeNotebookFolder(await readNotebook(db.read), await readFurther(db.read));
}
