import { createInterface } from "node:readline/promises";
import { ownerHere } from "@/lib/access/actor";
import { checkFolder, importFolder } from "@/lib/exchange/bring-in/import-folder";
import { readFolder } from "@/lib/exchange/bring-in/read-folder";
import { findingLine } from "@/lib/exchange/notebook-folder/finding";
import { picturesIn } from "@/lib/exchange/pictures/pictures-of-folder";
import { withRegistry } from "./with-registry";

// npm run import -- FOLDER [--check] [--yes]: brings a notebook folder in, whole or not at all.
// Exit 0 done or nothing to do, 1 faults (nothing written), 2 wrong call, or a change that nobody agreed to.
const known = ["--check", "--yes"];
const flags = process.argv.slice(2).filter((argument) => argument.startsWith("--"));
const folders = process.argv.slice(2).filter((argument) => !argument.startsWith("--"));
const wrong = flags.find((flag) => !known.includes(flag));

if (wrong || folders.length !== 1) {
  console.error(wrong ? `${wrong} is no option here` : "name one folder");
  console.error("usage: npm run import -- FOLDER [--check] [--yes]");
  process.exitCode = 2;
} else {
  await bringIn(folders[0] as string);
}

async function bringIn(folder: string): Promise<void> {
  const files = await readFolder(folder);
  if (typeof files === "string") {
    console.error(files);
    process.exitCode = 2;
    return;
  }
  await withRegistry(async (db) => {
    const check = await checkFolder(db, files, picturesIn(folder));
    for (const finding of [...check.faults, ...check.warnings]) console.error(findingLine(finding));
    if (check.faults.length > 0) return 1;
    if (check.nothingNew) {
      console.log("The registry holds every row of this folder already; nothing was changed.");
      return 0;
    }
    for (const each of check.tally.filter((kind) => kind.added + kind.changed > 0)) {
      console.log(`${each.file}: ${each.added} new, ${each.changed} changed, ${each.same} there already`);
    }
    if (flags.includes("--check")) {
      for (const line of check.changes) console.log(`would change: ${line}`);
      console.log("Checked; nothing was written.");
      return 0;
    }
    if (check.changesStanding && !flags.includes("--yes")) {
      for (const line of check.changes) console.log(`would change: ${line}`);
      if (!process.stdin.isTTY) {
        console.error("This folder changes what is there. Run it again with --yes to agree; nothing was written.");
        return 2;
      }
      if (!(await agreed())) {
        console.log("Nothing was written.");
        return 2;
      }
    }
    const outcome = await importFolder(
      db,
      ownerHere(-new Date().getTimezoneOffset()),
      files,
      undefined,
      picturesIn(folder),
    );
    if (!outcome.ok) {
      for (const each of outcome.refusals) console.error(each.sentence);
      return 1;
    }
    console.log("Brought in.");
    return 0;
  });
}

async function agreed(): Promise<boolean> {
  const ask = createInterface({ input: process.stdin, output: process.stdout });
  const answer = await ask.question("Change these records? (yes or no) ");
  ask.close();
  return /^y(es)?$/i.test(answer.trim());
}
