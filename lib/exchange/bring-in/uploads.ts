import { setMaxListeners } from "node:events";
import { createWriteStream, existsSync } from "node:fs";
import { mkdir, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import busboy from "@fastify/busboy";
import { uuidv7 } from "uuidv7";
import { storageRefusalOf } from "@/lib/registry/change-set/storage-refusal";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { LARGEST_ARCHIVE } from "../archive/archive-limits";
import { filesOfUpload } from "../archive/files-of-upload";

/** The most that one upload may hold: 64 MiB, in so many files. */
const largestUpload = LARGEST_ARCHIVE;
export const mostFiles = 200;
/** Whoever sends nothing for so long is no longer there. */
const patience = 60_000;
/** So long the files of an upload may still be taken apart and written when all of it has come. */
const afterTheEnd = 20_000;
const keptHours = 24;
/** Files lie under numbers, whatever they are called; this one says which is which, and is written when all of them are there. */
const namesFile = "names.json";

/** Uploads rest in the data folder until they are brought in, at most a day. */
function uploadsFolder(dataFolder: string): string {
  return path.join(dataFolder, "uploads");
}

function folderOf(dataFolder: string, id: string): string | null {
  return /^[0-9a-f-]{36}$/.test(id) ? path.join(uploadsFolder(dataFolder), id) : null;
}

/**
 * Streams the files of a posted form into a folder of their own, never holding them in memory. Returns the upload's id. Refused, with nothing kept: what is
 * no form, what is larger or more than it may be, two files of one name, a name that no file has, and an upload that breaks off or stands still.
 *
 * @param waits milliseconds without a byte after which it is given up
 */
export async function receiveUpload(
  dataFolder: string,
  headers: Headers,
  body: NodeJS.ReadableStream,
  waits: number = patience,
): Promise<Outcome<string>> {
  const id = uuidv7();
  const folder = folderOf(dataFolder, id) as string;
  try {
    await forgetOld(dataFolder);
    await mkdir(folder, { recursive: true, mode: 0o700 });
    const names = await received(folder, headers, body, waits);
    if (names.ok) await writeFile(path.join(folder, namesFile), JSON.stringify(names.value), { mode: 0o600 });
    else await rm(folder, { recursive: true, force: true });
    return names.ok ? accepted(id) : names;
  } catch (error) {
    await rm(folder, { recursive: true, force: true }).catch(() => {});
    const storage = storageRefusalOf(error, dataFolder);
    if (storage) return refused(storage);
    throw error;
  }
}

/** The names of the files in the order in which they came; each lies in the folder under its place in it. */
async function received(
  folder: string,
  headers: Headers,
  body: NodeJS.ReadableStream,
  waits: number,
): Promise<Outcome<string[]>> {
  const type = headers.get("content-type") ?? "";
  const parser = parserOf(type);
  if (parser === null)
    return refused(refusal("not-a-form", ["files"], type, "is no upload", "use the form of this page"));
  if (Number(headers.get("content-length") ?? 0) > largestUpload + 1_000_000) return refused(tooLarge());
  const names: string[] = [];
  const writing: Promise<void>[] = [];
  const faults: Refusal[] = [];
  const given = new AbortController();
  const { signal } = given;
  setMaxListeners(mostFiles + 10, signal);
  let broken: unknown = null;
  const giveUp = (error: unknown) => {
    broken ??= error;
    given.abort();
  };
  parser.on("file", (_field, stream, sent) => {
    const name = path.posix.basename(sent.replaceAll("\\", "/"));
    const fault = name === "" ? null : nameFault(name, names);
    if (fault) faults.push(fault);
    (stream as NodeJS.ReadableStream).on("error", giveUp);
    if (fault || name === "") return void stream.resume();
    const place = path.join(folder, String(names.push(name) - 1));
    stream.on("limit", () => faults.push(tooLarge()));
    writing.push(pipeline(stream, createWriteStream(place, { mode: 0o600, flags: "wx" }), { signal }).catch(giveUp));
  });
  parser.on("filesLimit", () => faults.push(tooMany()));
  // A form whose border is broken in some ways keeps the parser waiting for more when all has come.
  let over: NodeJS.Timeout | undefined;
  const ended = () => {
    over = setTimeout(() => giveUp(new Error("its end is missing")), Math.min(waits, afterTheEnd));
  };
  await pipeline(body, watched(waits, giveUp, faults, ended), parser, { signal }).catch(giveUp);
  await Promise.all(writing);
  clearTimeout(over);
  const [fault] = faults;
  if (fault) return refused(fault);
  const storage = broken === null ? null : storageRefusalOf(broken, folder);
  if (storage) return refused(storage);
  if (broken !== null)
    return refused(
      refusal("cut-off", ["files"], null, "arrived whole: the upload was cut off", "send the files again"),
    );
  if (names.length > 0) return accepted(names);
  return refused(refusal("nothing-sent", ["files"], null, "was chosen", "choose a zip or the CSV files of one folder"));
}

/** Null where the type tells of no form with files. */
function parserOf(type: string) {
  if (!type.startsWith("multipart/form-data")) return null;
  const limits = { files: mostFiles, fileSize: largestUpload, fields: 20, fieldSize: 1000, headerPairs: 50 };
  try {
    return busboy({ headers: { "content-type": type }, limits });
  } catch {
    return null;
  }
}

/** Lets through as much as an upload may have and drops what comes beyond, up to some times as much; who is silent or never ends is given up. */
function watched(waits: number, giveUp: (error: unknown) => void, faults: Refusal[], ended: () => void): Transform {
  let total = 0;
  const late = () => giveUp(new Error("nothing came for too long"));
  let clock = setTimeout(late, waits);
  return new Transform({
    transform(chunk: Buffer, _encoding, done) {
      clearTimeout(clock);
      clock = setTimeout(late, waits);
      total += chunk.length;
      if (total <= largestUpload + 1_000_000) return done(null, chunk);
      if (faults.length === 0) faults.push(tooLarge());
      if (total > 4 * largestUpload) giveUp(new Error("it does not end"));
      done();
    },
    final(done) {
      clearTimeout(clock);
      ended();
      done();
    },
    destroy(error, done) {
      clearTimeout(clock);
      done(error);
    },
  });
}

/** A name that a file cannot have, or has already in this upload. */
function nameFault(name: string, names: readonly string[]): Refusal | null {
  if (name === "." || name === ".." || name.length > 200 || /\p{Cc}/u.test(name)) {
    const given = `${name.replace(/\p{Cc}/gu, "?").slice(0, 40)}`;
    return refusal(
      "file-name",
      ["files"],
      given,
      "is no name of a file of a notebook",
      "send the CSV files under their own names",
    );
  }
  if (!names.includes(name)) return null;
  return refusal("file-twice", ["files"], name, "was sent twice", "choose the files of one folder");
}

function tooLarge(): Refusal {
  return refusal(
    "too-large",
    ["files"],
    "The upload",
    "is over 64 MB",
    "send fewer files at once, or use npm run import",
  );
}

function tooMany(): Refusal {
  const wrong = `files are more than one upload may have`;
  return refusal(
    "too-many",
    ["files"],
    `More than ${mostFiles}`,
    wrong,
    "pack the folder as one zip, or use npm run import",
  );
}

/** The files of an upload as one notebook folder, unpacked where it is a zip; null where the upload is gone. */
export async function uploadedFiles(dataFolder: string, id: string): Promise<Outcome<Map<string, Uint8Array>> | null> {
  const folder = folderOf(dataFolder, id);
  if (!folder || !existsSync(path.join(folder, namesFile))) return null;
  const names = JSON.parse(await readFile(path.join(folder, namesFile), "utf8")) as string[];
  const files = new Map<string, Uint8Array>();
  for (const [place, name] of names.entries())
    files.set(name, Uint8Array.from(await readFile(path.join(folder, String(place)))));
  return filesOfUpload(files);
}

export async function forgetUpload(dataFolder: string, id: string): Promise<void> {
  const folder = folderOf(dataFolder, id);
  if (folder) await rm(folder, { recursive: true, force: true });
}

async function forgetOld(dataFolder: string): Promise<void> {
  const all = uploadsFolder(dataFolder);
  if (!existsSync(all)) return;
  const before = Date.now() - keptHours * 3_600_000;
  for (const name of await readdir(all)) {
    const place = path.join(all, name);
    const found = await stat(place).catch(gone);
    if (found && found.mtimeMs < before) await rm(place, { recursive: true, force: true });
  }
}

/** Another upload may have cleared it away in the meantime. */
function gone(error: NodeJS.ErrnoException): null {
  if (error.code === "ENOENT") return null;
  throw error;
}
