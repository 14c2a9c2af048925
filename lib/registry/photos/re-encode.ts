import { createHash } from "node:crypto";
import { open } from "node:fs/promises";
import sharp from "sharp";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { bytesThatTell, kindOfImage } from "./kind-of-image";
import { longestSide, mostBytesStored, mostPixels } from "./photo-limits";

/** What is known of a stored picture: the hash of its bytes (SHA-256, hexadecimal), its sides in pixels, its length. */
export interface PhotoFacts {
  readonly hash: string;
  readonly width: number;
  readonly height: number;
  readonly bytes: number;
}

export interface ReEncoded extends PhotoFacts {
  readonly jpeg: Uint8Array;
}

const qualities = [84, 74, 62, 48, 34];
const secondsAtMost = 30;

// One picture on one thread, and two at once: the pages are answered meanwhile. Nothing of a picture stays in memory.
sharp.concurrency(1);
sharp.cache(false);
const atOnce = 2;
let running = 0;
const waiting: (() => void)[] = [];

/**
 * Makes of a picture the JPEG that is stored: turned upright, at most 1600 pixels on its longest side, in sRGB on white, at most 2 MB, and without
 * anything that came with it: place, day, camera, words, a small copy. The same file gives the same bytes.
 * Refused: what is no still picture, has too many pixels to be unpacked, was cut off or is damaged.
 *
 * @param from the bytes, or the path of a file
 * @param name what the file is called in a refusal
 */
export async function reEncoded(from: Uint8Array | string, name: string): Promise<Outcome<ReEncoded>> {
  const kind = kindOfImage(typeof from === "string" ? await headOf(from) : from.subarray(0, bytesThatTell), name);
  if (!kind.ok) return kind;
  await turn();
  try {
    return await made(from, name);
  } catch (error) {
    return refused(faultOf(error, name));
  } finally {
    running -= 1;
    waiting.shift()?.();
  }
}

async function made(from: Uint8Array | string, name: string): Promise<Outcome<ReEncoded>> {
  const picture = () => sharp(from, { failOn: "error", limitInputPixels: mostPixels });
  const { pages = 1 } = await picture().metadata();
  if (pages > 1) return refused(no("photo-moves", name, "is a moving picture", "choose a still one"));
  for (const side of [longestSide, longestSide / 2]) {
    const upright = await picture()
      .timeout({ seconds: secondsAtMost })
      .autoOrient()
      .resize({ width: side, height: side, fit: "inside", withoutEnlargement: true })
      .flatten({ background: "#ffffff" })
      .toColourspace("srgb")
      .raw()
      .toBuffer({ resolveWithObject: true });
    const { width, height, channels } = upright.info;
    for (const quality of qualities) {
      const jpeg = await sharp(upright.data, { raw: { width, height, channels } }).jpeg({ quality }).toBuffer();
      if (jpeg.length > mostBytesStored) continue;
      const hash = createHash("sha256").update(jpeg).digest("hex");
      return accepted({ jpeg: Uint8Array.from(jpeg), hash, width, height, bytes: jpeg.length });
    }
  }
  return refused(no("photo-too-large", name, "stays over 2 MB however small it is made", "choose another"));
}

async function headOf(file: string): Promise<Uint8Array> {
  const handle = await open(file, "r");
  try {
    const { buffer, bytesRead } = await handle.read(new Uint8Array(bytesThatTell), 0, bytesThatTell, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await handle.close();
  }
}

async function turn(): Promise<void> {
  while (running >= atOnce) await new Promise<void>((go) => waiting.push(go));
  running += 1;
}

function faultOf(error: unknown, name: string) {
  const said = error instanceof Error ? error.message : String(error);
  if (/pixel limit/i.test(said)) {
    const most = `${mostPixels / 1_000_000} million pixels`;
    return no("photo-pixels", name, `has more than ${most}`, "make it smaller first");
  }
  if (/timeout/i.test(said))
    return no("photo-slow", name, "takes too long to unpack", "save it anew as JPEG, then choose that");
  return no(
    "photo-damaged",
    name,
    "cannot be read to its end: it was cut off or is damaged",
    "take it from the phone or camera once more",
  );
}

function no(code: string, name: string, wrong: string, needed: string) {
  return refusal(code, ["photo"], name, wrong, needed);
}
