import { mkdir, readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { picturesOut } from "@/lib/exchange/take-out/pictures-out";
import { withRegistry } from "./with-registry";

// npm run export -- FOLDER: writes a folder that imports to the same registry. The folder must be new or empty.
const [folder, ...rest] = process.argv.slice(2);

if (!folder || folder.startsWith("--") || rest.length > 0) {
  console.error("usage: npm run export -- FOLDER (new or empty)");
  process.exitCode = 2;
} else {
  const there = await readdir(folder).catch((error: NodeJS.ErrnoException) => (error.code === "ENOENT" ? [] : error));
  if (there instanceof Error) {
    console.error(`"${folder}" cannot be written (${there.code}); name a folder.`);
    process.exitCode = 2;
  } else if (there.length > 0) {
    console.error(
      `"${folder}" holds files already; name a new or empty folder, so that nothing of yours is written over.`,
    );
    process.exitCode = 2;
  } else {
    await withRegistry(async (db) => {
      const files = await exportFolder(db);
      await mkdir(folder, { recursive: true });
      for (const [name, bytes] of files) await writeFile(path.join(folder, name), bytes);
      const { pictures } = await picturesOut(db);
      let missing = 0;
      for (const { path: inside, read } of pictures) {
        const bytes = await read();
        if (bytes === null) missing += 1;
        else {
          const file = path.join(folder, inside);
          await mkdir(path.dirname(file), { recursive: true });
          await writeFile(file, bytes);
        }
      }
      if (missing > 0)
        console.error(`${missing} pictures are gone or damaged and are not in it; npm run verify names them.`);
      if (pictures.length > missing) console.log(`${pictures.length - missing} pictures written under photos`);
      console.log(`${files.size} files written to ${folder}`);
      return 0;
    });
  }
}
