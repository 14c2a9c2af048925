// Makes a backup of a folder's registry, and says on its output what stood against it.
import path from "node:path";
import { makeBackup } from "@/lib/backups/make-backup";
import { storageFaultOf } from "@/lib/db";
import { locationOf } from "./protocol";

const folder = process.argv[2] as string;
// What the system does when a file grows beyond what it may have is an error, not the end of this process.
process.on("SIGXFSZ" as NodeJS.Signals, () => {});
try {
  await makeBackup({
    location: locationOf(folder),
    backups: path.join(folder, "backups"),
    now: new Date(),
    why: "by hand",
  });
  console.log("made");
} catch (error) {
  console.log(storageFaultOf(error, folder)?.message ?? String(error));
}
