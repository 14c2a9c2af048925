import { createWriteStream, existsSync } from "node:fs";
import { mkdir, readdir, readFile, rm, stat } from "node:fs/promises";
import path from "node:path";
import { Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import busboy from "@fastify/busboy";
import { uuidv7 } from "uuidv7";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { LARGEST_ARCHIVE } from "../archive/archive-limits";
import { filesOfUpload } from "../archive/files-of-upload";

/** The most that one upload may hold: 64 MiB. */
const largestUpload = LARGEST_ARCHIVE;
const mostFiles = 60;
const keptHours = 24;

/** Uploads rest in the data folder until they are brought in, at most a day. */
function uploadsFolder(dataFolder: string): string {
  return path.join(dataFolder, "uploads");
}

function folderOf(dataFolder: string, id: string): string | null {
  return /^[0-9a-f-]{36}$/.test(id) ? path.join(uploadsFolder(dataFolder), id) : null;
}

/** Streams the files of a posted form into a folder of their own, never holding them in memory. Returns the upload's id. */
export async function receiveUpload(
  dataFolder: string,
  headers: Headers,
  body: NodeJS.ReadableStream,
): Promise<Outcome<string>> {
  await forgetOld(dataFolder);
  const id = uuidv7();
  const folder = folderOf(dataFolder, id) as string;
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const problem = await received(folder, headers, body);
  if (!problem && (await readdir(folder)).length > 0) return accepted(id);
  await rm(folder, { recursive: true, force: true });
  return refused(
    problem ?? refusal("nothing-sent", ["files"], null, "was chosen", "choose a zip or the CSV files of one folder"),
  );
}

async function received(folder: string, headers: Headers, body: NodeJS.ReadableStream) {
  const type = headers.get("content-type") ?? "";
  if (!type.startsWith("multipart/form-data"))
    return refusal("not-a-form", ["files"], type, "is no upload", "use the form of this page");
  const writing: Promise<void>[] = [];
  let tooLarge = false;
  let total = 0;
  const parser = busboy({ headers: { "content-type": type }, limits: { files: mostFiles, fileSize: largestUpload } });
  parser.on("file", (_field, stream, name) => {
    const file = path.basename(name.replaceAll("\\", "/"));
    stream.on("limit", () => {
      tooLarge = true;
    });
    const counted = new Transform({
      transform(chunk: Buffer, _encoding, done) {
        total += chunk.length;
        if (total > largestUpload) tooLarge = true;
        done(null, tooLarge ? undefined : chunk);
      },
    });
    if (!file) stream.resume();
    else writing.push(pipeline(stream, counted, createWriteStream(path.join(folder, file), { mode: 0o600 })));
  });
  try {
    await pipeline(body, parser);
    await Promise.all(writing);
  } catch {
    return refusal("cut-off", ["files"], null, "arrived whole: the upload was cut off", "send the files again");
  }
  return tooLarge
    ? refusal("too-large", ["files"], "The upload", "is over 64 MB", "send fewer files at once, or use npm run import")
    : null;
}

/** The files of an upload as one notebook folder, unpacked where it is a zip; null where the upload is gone. */
export async function uploadedFiles(dataFolder: string, id: string): Promise<Outcome<Map<string, Uint8Array>> | null> {
  const folder = folderOf(dataFolder, id);
  if (!folder || !existsSync(folder)) return null;
  const files = new Map<string, Uint8Array>();
  for (const name of (await readdir(folder)).sort())
    files.set(name, Uint8Array.from(await readFile(path.join(folder, name))));
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
    if ((await stat(place)).mtimeMs < before) await rm(place, { recursive: true, force: true });
  }
}
