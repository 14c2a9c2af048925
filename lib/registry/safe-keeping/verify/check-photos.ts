import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import path from "node:path";
import type { Database } from "@/lib/db";
import { arrivingFolder } from "../../photos/photo-place";
import { type Finding, fault, note } from "./finding";

/** The hash of a file's bytes, SHA-256 in hexadecimal; read in pieces. */
export async function hashOfFile(file: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const piece of createReadStream(file)) hash.update(piece as Uint8Array);
  return hash.digest("hex");
}

/** All files under a folder, as paths from it with forward slashes, in order; none where there is no folder. */
export async function filesUnder(folder: string): Promise<string[]> {
  const names = await readdir(folder, { recursive: true }).catch(() => []);
  const files: string[] = [];
  for (const name of names)
    if ((await stat(path.join(folder, name))).isFile()) files.push(name.split(path.sep).join("/"));
  return files.sort();
}

/** Every photo on record has its file, named by the hash of its bytes. A file that no record names is a note: it stays. */
export async function checkPhotos(db: Database, folder: string): Promise<{ looked: number; findings: Finding[] }> {
  const photos = await db.read.photo.findMany({ select: { hash: true, caption: true, takenOn: true } });
  // What is remembered of pictures that phones sent is no picture.
  const pictures = (await filesUnder(folder)).filter((file) => !file.startsWith(`${arrivingFolder}/`));
  const files = new Map(pictures.map((file) => [path.parse(file).name, file]));
  const findings: Finding[] = [];
  const hashes = new Set(photos.map((photo) => photo.hash));
  for (const hash of hashes) {
    const file = files.get(hash);
    if (!file) findings.push(fault("photos", `The photo ${hash} is on record, but its file is not there.`));
    else if ((await hashOfFile(path.join(folder, file))) !== hash)
      findings.push(fault("photos", `The file of the photo ${hash} is not what was stored: its bytes changed.`));
  }
  const alone = [...files.keys()].filter((name) => !hashes.has(name));
  if (alone.length > 0)
    findings.push(note("photos", `${alone.length} files under photos belong to no record any more.`));
  return { looked: hashes.size, findings };
}
