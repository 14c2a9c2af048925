import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import os from "node:os";
import path from "node:path";
import { Readable } from "node:stream";
import { afterAll, beforeAll, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { makeBackup } from "@/lib/backups/make-backup";
import { restoreBackup } from "@/lib/backups/restore-backup";
import { openDatabase } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { addPhotos } from "@/lib/registry/photos/add-photos";
import { receiveChosen } from "@/lib/registry/photos/arriving";
import { storedBackup } from "@/lib/registry/safe-keeping/list-backups";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { small } from "../../exchange/notebook-folder/small-notebook";
import { csv } from "../../registry/notebook/further/fill-every-table";
import { withPlace } from "../../registry/photos/pictures";
import { locationOf } from "../protocol";
import { Drawn, fuzzWanted, tell } from "./drawn";
import { oddWord } from "./odd-words";
import { hashOfTables, wrongAfter } from "./statement";

const { cases: all, seed } = fuzzWanted();
const cases = Math.ceil(all / 200);
const now = new Date("2026-05-01T08:00:00Z");
const owner = ownerHere();

let work = "";
let good = "";
let before = "";

beforeAll(async () => {
  work = mkdtempSync(path.join(os.tmpdir(), "kinrow-backups-"));
  const db = await emptyRegistry();
  granted(await importFolder(db, owner, csv(small)));
  const lot = await db.read.lot.findFirstOrThrow();
  const sent = Readable.from([Buffer.from(await withPlace())]);
  granted(
    await addPhotos(db, owner, { kind: "lot", id: lot.id }, {}, [granted(await receiveChosen(db, "a.jpg", sent))]),
  );
  before = await hashOfTables(db);
  const made = await makeBackup({ location: db.location, backups: path.join(work, "backups"), now, why: "daily" });
  good = made.backup.folder;
});

afterAll(() => rmSync(work, { recursive: true, force: true }));

const filesOf = (folder: string) =>
  (readdirSync(folder, { recursive: true, encoding: "utf8" }) as string[])
    .filter((name) => statSync(path.join(folder, name)).isFile())
    .sort();

/** Spoils one thing of a backup; what it did, in words. With `forged` its list says that all is as it should be. */
function spoil(folder: string, drawn: Drawn): { did: string; forged: boolean } {
  const file = drawn.chance(0.4) ? "registry.sqlite" : drawn.one(filesOf(folder));
  const place = path.join(folder, file);
  const forged = drawn.chance(0.3);
  const dice = drawn.whole(5);
  if (dice === 0) rmSync(place);
  else if (dice === 1) truncateSync(place, drawn.whole(statSync(place).size + 1));
  else if (dice === 2) writeFileSync(place, drawn.bytes(5000));
  else if (dice === 3) {
    const bytes = Uint8Array.from(readFileSync(place));
    for (let left = 1 + drawn.whole(40); left > 0; left -= 1) bytes[drawn.whole(bytes.length)] = drawn.whole(256);
    writeFileSync(place, bytes);
  }
  const did = `${["removed", "cut", "replaced", "flipped", "list of"][dice]} ${file}`;
  if (dice === 4) return { did: spoilList(folder, file, drawn), forged: true };
  if (forged && file !== "manifest.json") listAgain(folder);
  return { did, forged };
}

type List = { files: { path: string; bytes: number; sha256: string }[] } & Record<string, unknown>;

const readList = (folder: string) => JSON.parse(readFileSync(path.join(folder, "manifest.json"), "utf8")) as List;
const writeList = (folder: string, list: unknown) =>
  writeFileSync(path.join(folder, "manifest.json"), JSON.stringify(list));

/** The list names what is there, with the hash that it has now. */
function listAgain(folder: string): void {
  const list = readList(folder);
  const files = filesOf(folder)
    .filter((name) => name !== "manifest.json")
    .map((name) => {
      const bytes = readFileSync(path.join(folder, name));
      return {
        path: name.replaceAll(path.sep, "/"),
        bytes: bytes.length,
        sha256: createHash("sha256").update(new Uint8Array(bytes)).digest("hex"),
      };
    });
  writeList(folder, { ...list, files });
}

/** Another list: what it says of a file or of the whole is not so. */
function spoilList(folder: string, file: string, drawn: Drawn): string {
  const list = readList(folder);
  const dice = drawn.whole(5);
  if (dice === 0) writeList(folder, { ...list, files: list.files.filter((each) => each.path !== file) });
  else if (dice === 1)
    writeList(folder, {
      ...list,
      files: [...list.files, { path: `../${oddWord(drawn)}`, bytes: 0, sha256: "0".repeat(64) }],
    });
  else if (dice === 2)
    writeList(folder, {
      ...list,
      check: { sound: false, faults: [], notes: 0 },
      files: list.files.filter((each) => each.path !== file),
    });
  else if (dice === 3)
    writeList(folder, {
      ...list,
      [drawn.one(Object.keys(list))]: drawn.one<unknown>([null, [], {}, 0, oddWord(drawn), true]),
    });
  else writeList(folder, { ...list, counts: {}, migrations: [] });
  return `list ${dice} without ${file}`;
}

test(`${cases} spoilt backups (seed ${seed}) come back as they were, or are refused and leave nothing`, async () => {
  const counted = { came: 0, refused: 0, none: 0, wrong: [] as string[] };
  for (let number = 0; number < cases; number += 1) {
    const drawn = new Drawn(seed * 100_003 + 9_000_000 + number);
    const folder = path.join(work, "spoilt", String(number));
    cpSync(good, folder, { recursive: true });
    const { did, forged } = spoil(folder, drawn);
    const to = path.join(work, "to");
    const wrong: string[] = [];
    const backup = await storedBackup(folder);
    try {
      const outcome = backup === null ? null : await restoreBackup({ backup, to, now });
      if (outcome === null) counted.none += 1;
      else if (outcome.ok) {
        counted.came += 1;
        const db = await openDatabase(locationOf(to));
        if (!forged && (await hashOfTables(db)) !== before) wrong.push("came back as something else");
        if ((await db.read.lot.count()) === 0) wrong.push("came back empty");
        wrong.push(...(await wrongAfter(db)));
        await db.close();
      } else {
        counted.refused += 1;
        if (outcome.refusals.some((each) => each.sentence.length < 20)) wrong.push("is refused without a sentence");
        if (existsSync(to) || readdirSync(work).some((name) => name.startsWith("to.")))
          wrong.push("left something behind");
      }
    } catch (error) {
      wrong.push(`broke: ${error instanceof Error ? error.stack : String(error)}`);
    }
    counted.wrong.push(...wrong.map((each) => `case ${number} (${did}${forged ? ", forged" : ""}): ${each}`));
    for (const name of readdirSync(work))
      if (name.startsWith("to") || name === "spoilt") rmSync(path.join(work, name), { recursive: true });
  }
  for (const each of counted.wrong) tell(each);
  tell(JSON.stringify({ backups: cases, came: counted.came, refused: counted.refused, none: counted.none, seed }));
  expect(counted.wrong).toEqual([]);
}, 36_000_000);
