import { existsSync, readdirSync } from "node:fs";
import path from "node:path";
import { beforeAll, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { checkFolder, importFolder } from "@/lib/exchange/bring-in/import-folder";
import { forgetUpload, receiveUpload, uploadedFiles } from "@/lib/exchange/bring-in/uploads";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { emptyRegistry, granted, temporaryFolder } from "@/tests/setup/registry";
import { small } from "../../exchange/notebook-folder/small-notebook";
import { base, csv, fillEveryTable } from "../../registry/notebook/further/fill-every-table";
import { Drawn, fuzzWanted, tell } from "./drawn";
import { mangledArchive } from "./mangled-archive";
import { type Folder, mangled } from "./mangled-folder";
import { postedFiles } from "./posted";
import { hashOfTables, undone, wrongAfter, wrongInRoundTrip } from "./statement";

const { cases: all, seed } = fuzzWanted();
const cases = Math.ceil((all * 3) / 10);
const owner = ownerHere();

/** Sound folders: the small notebook, and one with a record in every file that there is. */
let sound: readonly ReadonlyMap<string, Uint8Array>[] = [];
const uploads = temporaryFolder();

beforeAll(async () => {
  const db = await emptyRegistry();
  granted(await importFolder(db, owner, base));
  await fillEveryTable(db);
  const everything = await exportFolder(db);
  sound = [csv(small), csv(small), everything, base];
});

/** The files as they come in: as a folder of this machine, or posted one by one or as a zip. */
async function received(folder: Folder, drawn: Drawn): Promise<ReadonlyMap<string, Uint8Array> | string> {
  const dice = drawn.whole(10);
  if (dice < 6) return folder;
  const zipped = dice < 9;
  const files = zipped ? new Map([["notebook.zip", mangledArchive(folder, drawn)]]) : folder;
  if (zipped && drawn.chance(0.1)) files.set("lots.csv", new Uint8Array());
  const { headers, body } = postedFiles(files, drawn);
  const upload = await receiveUpload(uploads, headers, body);
  if (!upload.ok) return `upload ${upload.refusals[0]?.code}`;
  const read = await uploadedFiles(uploads, upload.value);
  await forgetUpload(uploads, upload.value);
  if (read === null) throw new Error("an upload that was taken is gone");
  return read.ok ? read.value : `upload ${read.refusals[0]?.code}`;
}

interface Counted {
  accepted: number;
  nothingNew: number;
  refused: number;
  readonly codes: Map<string, number>;
  readonly wrong: string[];
}

async function oneCase(
  registries: { db: Database; empty: Database; before: string },
  number: number,
  counted: Counted,
): Promise<void> {
  const { db, empty, before } = registries;
  const drawn = new Drawn(seed * 100_003 + number);
  const refused = (code: string) => {
    counted.refused += 1;
    counted.codes.set(code, (counted.codes.get(code) ?? 0) + 1);
  };
  const folder = mangled(drawn.one(sound), drawn);
  const files = await received(folder, drawn);
  const wrong: string[] = [];
  if (typeof files === "string") refused(files);
  else {
    const check = await checkFolder(db, files);
    const brought = await importFolder(db, owner, files);
    if (check.faults.length > 0 && brought.ok) wrong.push("came in although it was checked as faulty");
    if (!brought.ok) refused(`${brought.refusals[0]?.code}${check.faults.length > 0 ? "" : " (only when brought in)"}`);
    else if (brought.value.value.nothingNew) counted.nothingNew += 1;
    else {
      counted.accepted += 1;
      wrong.push(...(await wrongAfter(db)));
      const again = await importFolder(db, owner, files);
      // A plant that plants.csv and scores.csv score otherwise keeps both, and its line is then another than the registry's.
      const scoredOtherwise = !again.ok && again.refusals.every((each) => each.code === "plant-twice");
      if (!again.ok && !scoredOtherwise) wrong.push(`is refused a second time: ${again.refusals[0]?.sentence}`);
      if (again.ok && again.value.changeSetId !== null) wrong.push("writes something a second time");
      wrong.push(...(await wrongInRoundTrip(db, empty)));
      wrong.push(...(await undone(db, brought.value.changeSetId)));
    }
  }
  if ((await hashOfTables(db, { tables: ["Change", "ChangeSet"], columns: ["revision"] })) !== before)
    wrong.push("left something behind");
  counted.wrong.push(...wrong.map((each) => `case ${number}: ${each}`));
  for (const each of wrong) tell(`case ${number}: ${each}`);
}

/** What does not answer at all is wrong, too. */
async function answered(work: Promise<void>): Promise<void> {
  let clock: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_answer, reject) => {
    clock = setTimeout(() => reject(new Error("no answer in a minute")), 60_000);
  });
  try {
    await Promise.race([work, late]);
  } finally {
    clearTimeout(clock);
  }
}

test(`${cases} mangled folders (seed ${seed}) come in whole and right, or are refused and leave nothing`, async () => {
  const counted: Counted = { accepted: 0, nothingNew: 0, refused: 0, codes: new Map(), wrong: [] };
  const only = Number(process.env.KINROW_FUZZ_ONLY ?? -1);
  let registries: { db: Database; empty: Database; before: string } | null = null;
  for (let number = 0; number < cases; number += 1) {
    if (only >= 0 && number !== only) continue;
    if (registries === null || number % 250 === 0) {
      const [db, empty] = [await emptyRegistry(), await emptyRegistry()];
      // Every other stretch is laid over a registry that has the small notebook already.
      if (Math.floor(number / 250) % 2 === 1) granted(await importFolder(db, owner, csv(small)));
      registries = {
        db,
        empty,
        before: await hashOfTables(db, { tables: ["Change", "ChangeSet"], columns: ["revision"] }),
      };
    }
    const wrong = counted.wrong.length;
    await answered(oneCase(registries, number, counted)).catch((error: unknown) => {
      const told = `case ${number}: broke: ${error instanceof Error ? error.stack : String(error)}`;
      counted.wrong.push(told);
      tell(told);
    });
    if (counted.wrong.length > wrong) registries = null;
    if (number % 1000 === 999) tell(`${number + 1} folders, ${counted.wrong.length} wrong`);
  }
  const left = existsSync(path.join(uploads, "uploads")) ? readdirSync(path.join(uploads, "uploads")) : [];
  tell(
    JSON.stringify({
      folders: cases,
      accepted: counted.accepted,
      nothingNew: counted.nothingNew,
      refused: counted.refused,
      seed,
    }),
  );
  tell(JSON.stringify(Object.fromEntries([...counted.codes].sort((one, other) => other[1] - one[1]))));
  expect(counted.wrong).toEqual([]);
  expect(left).toEqual([]);
  if (only < 0) {
    // Both ends were met, or nothing was tried.
    expect(counted.accepted).toBeGreaterThan(cases / 20);
    expect(counted.refused).toBeGreaterThan(cases / 5);
  }
}, 36_000_000);
