import { createHash } from "node:crypto";
import { mkdir, open, readdir, readFile, rm, stat } from "node:fs/promises";
import path from "node:path";
import { Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { uuidv7 } from "uuidv7";
import { z } from "zod";
import { type Database, storageFaultOf } from "@/lib/db";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { putWhole } from "./keep-file";
import { mostBytesSent } from "./photo-limits";
import { arrivingFolder, folderOfPhotos, isPhotoHash, pathOfPhoto } from "./photo-place";
import type { PhotoFacts } from "./re-encode";
import { storePhoto } from "./store-photo";

const factsSchema = z.object({
  hash: z.string().refine(isPhotoHash),
  width: z.int(),
  height: z.int(),
  bytes: z.int(),
});

type Place = Pick<Database, "location">;

const erased = z.object({ erased: z.literal(true) });

/**
 * What is stored of a picture that a phone sent under this hash; null where it has not come (yet). It is known for ever, so that a record that names the
 * picture may come before or after it.
 */
export async function photoArrived({ location }: Place, sentHash: string): Promise<PhotoFacts | null> {
  if (!isPhotoHash(sentHash)) return null;
  const facts = factsSchema.safeParse(await noteOf({ location }, sentHash));
  return facts.success ? facts.data : null;
}

/** Whether what a phone sent under this hash was erased since: it is taken from no phone again. */
export async function photoErased({ location }: Place, sentHash: string): Promise<boolean> {
  if (!isPhotoHash(sentHash)) return false;
  const note = await noteOf({ location }, sentHash);
  return note !== null && erased.safeParse(note).success;
}

/** The hashes under which phones sent a picture that is stored. */
export async function hashesSentOf({ location }: Place, hash: string): Promise<string[]> {
  const sent: string[] = [];
  for (const name of await readdir(path.join(folderOfPhotos(location), arrivingFolder)).catch(() => []))
    if ((await photoArrived({ location }, name))?.hash === hash) sent.push(name);
  return sent;
}

/** Notes of a stored picture that it was erased, under every hash by which a phone sent it. */
export async function noteErased({ location }: Place, hash: string): Promise<void> {
  const folder = path.join(folderOfPhotos(location), arrivingFolder);
  for (const name of await hashesSentOf({ location }, hash)) {
    const note = JSON.stringify({ ...(await photoArrived({ location }, name)), erased: true });
    await putWhole(location.folder, path.join(folder, name), new TextEncoder().encode(note));
  }
}

async function noteOf({ location }: Place, sentHash: string): Promise<unknown> {
  const file = path.join(folderOfPhotos(location), arrivingFolder, sentHash);
  return readFile(file, "utf8")
    .then(JSON.parse, () => null)
    .catch(() => null);
}

/**
 * Takes a picture as a phone sends it, in pieces: it is held against the hash that the phone gives, made into what is stored, and remembered under that
 * hash. Sent again, it changes nothing. Refused: another hash, too long, cut off, no picture; storage that will not take it.
 */
export async function receivePhoto(
  { location }: Place,
  sentHash: string,
  body: NodeJS.ReadableStream,
): Promise<Outcome<PhotoFacts>> {
  watched(body);
  if (!isPhotoHash(sentHash))
    return refused(refusal("not-a-hash", ["sha256"], sentHash, "is no SHA-256", "64 hexadecimal digits of the file"));
  const known = await photoArrived({ location }, sentHash);
  if (known && ((await isThere({ location }, known.hash)) || (await photoErased({ location }, sentHash)))) {
    body.resume();
    return accepted(known);
  }
  return received({ location }, body, async (sent) => {
    if (sent.sha256 !== sentHash)
      return refused(
        refusal(
          "not-whole",
          ["sha256"],
          sent.sha256,
          "is the hash of what came, another than was told",
          "send it again",
        ),
      );
    const stored = await storePhoto({ location }, sent.file, "the picture");
    if (!stored.ok) return stored;
    const note = path.join(folderOfPhotos(location), arrivingFolder, sentHash);
    await putWhole(location.folder, note, new TextEncoder().encode(JSON.stringify(stored.value)));
    return stored;
  });
}

/** Takes a picture that somebody chose at the desk; nothing is remembered of how it came. */
export async function receiveChosen(
  { location }: Place,
  name: string,
  body: NodeJS.ReadableStream,
): Promise<Outcome<PhotoFacts>> {
  const take = async (sent: Sent) => {
    // What takes a form apart stops at the limit without an error.
    if ((body as { truncated?: boolean }).truncated) throw new TooLong();
    return storePhoto({ location }, sent.file, name);
  };
  return received({ location }, body, take, name);
}

interface Sent {
  readonly file: string;
  readonly sha256: string;
}

/** Writes what comes into a file of its own, never holding it in memory, and lets it go afterwards. */
async function received<T>(
  { location }: Place,
  body: NodeJS.ReadableStream,
  take: (sent: Sent) => Promise<Outcome<T>>,
  name = "the picture",
): Promise<Outcome<T>> {
  watched(body);
  const folder = path.join(/* turbopackIgnore: true */ location.folder, "uploads");
  const file = path.join(folder, `${uuidv7()}.sent`);
  const hash = createHash("sha256");
  let length = 0;
  const counted = new Transform({
    transform(piece: Buffer, _encoding, done) {
      length += piece.length;
      hash.update(piece as Uint8Array);
      done(length > mostBytesSent ? new TooLong() : null, piece);
    },
  });
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    // Opened first, so that a sending that breaks off at once leaves no file that is made only afterwards.
    const handle = await open(file, "wx", 0o600);
    await pipeline(body, counted, handle.createWriteStream());
    return await take({ file, sha256: hash.digest("hex") });
  } catch (error) {
    return refused(faultOf(error, name, location.folder));
  } finally {
    await rm(file, { force: true });
  }
}

/** A sender may break off before anything reads: that is told by the reading, and stops nothing else. */
function watched(body: NodeJS.ReadableStream): void {
  body.on("error", () => {});
}

class TooLong extends Error {}

function faultOf(error: unknown, name: string, place: string): Refusal {
  if (error instanceof TooLong)
    return refusal("photo-too-large", ["photo"], name, "is over 30 MB", "make it smaller first");
  const storage = storageFaultOf(error, place);
  if (storage) return { code: storage.kind, path: ["photo"], given: place, needed: "", sentence: storage.message };
  return refusal("cut-off", ["photo"], name, "did not come whole: the sending was cut off", "send it again");
}

async function isThere({ location }: Place, hash: string): Promise<boolean> {
  return stat(path.join(folderOfPhotos(location), pathOfPhoto(hash))).then(
    (found) => found.isFile(),
    () => false,
  );
}
