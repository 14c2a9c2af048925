import { type Entry, fromBufferPromise, type ZipFile } from "yauzl";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type ArchiveLimits, archiveLimits } from "./archive-limits";

/** Whether some bytes are a zip archive, by their first four. */
export function isArchive(bytes: Uint8Array): boolean {
  return (
    bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 0x03 || bytes[2] === 0x05) && bytes[3] === bytes[2] + 1
  );
}

/**
 * Unpacks a zip archive into bytes by path, in memory. Refused, with nothing unpacked further: an archive or content above the
 * limits, whatever sizes it states; paths that lead out of it; a locked file; what is no zip or is damaged.
 */
export async function readArchive(
  bytes: Uint8Array,
  limits: ArchiveLimits = archiveLimits,
): Promise<Outcome<Map<string, Uint8Array>>> {
  if (bytes.length > limits.archiveBytes) {
    return refused(tooLarge(bytes.length, "bytes are more than an archive may have", limits.archiveBytes));
  }
  try {
    const zip = await fromBufferPromise(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length));
    return await unpacked(zip, limits);
  } catch (error) {
    const wrong = `cannot be unpacked (${whyNot(error)})`;
    return refused(refusal("archive-damaged", [], "the archive", wrong, "pack the folder again as a zip"));
  }
}

async function unpacked(zip: ZipFile, limits: ArchiveLimits): Promise<Outcome<Map<string, Uint8Array>>> {
  const files = new Map<string, Uint8Array>();
  let left = limits.contentBytes;
  for await (const entry of zip.eachEntry()) {
    if (entry.fileName.endsWith("/")) continue;
    left -= entry.uncompressedSize;
    const fault = entryFault(entry, files, left, limits);
    if (fault) return refused(fault);
    files.set(entry.fileName, await contentOf(zip, entry));
  }
  return accepted(files);
}

function entryFault(
  entry: Entry,
  files: ReadonlyMap<string, unknown>,
  left: number,
  limits: ArchiveLimits,
): Refusal | null {
  const path = [entry.fileName];
  if (left < 0) return tooLarge(entry.fileName, "makes the content more than may come out", limits.contentBytes);
  if (files.size >= limits.files)
    return tooLarge(files.size + 1, "files are more than an archive may hold", limits.files);
  if (entry.isEncrypted()) {
    return refusal("archive-locked", path, entry.fileName, "is locked", "pack the folder without a password");
  }
  if (files.has(entry.fileName)) {
    return refusal("archive-path-twice", path, entry.fileName, "lies in the archive twice", "pack the folder again");
  }
  return null;
}

/** The reader stops a stream that gives more than its entry states, so that the sum of stated sizes can be trusted. */
async function contentOf(zip: ZipFile, entry: Entry): Promise<Uint8Array> {
  const content = new Uint8Array(entry.uncompressedSize);
  let filled = 0;
  for await (const chunk of await zip.openReadStreamPromise(entry)) {
    const piece = chunk as Uint8Array;
    content.set(piece, filled);
    filled += piece.length;
  }
  return content;
}

function tooLarge(given: number | string, wrong: string, most: number): Refusal {
  return refusal(
    "archive-too-large",
    [],
    given,
    wrong,
    `at most ${most}: bring the files in by parts, or from a folder`,
  );
}

/** The reader says in words what is wrong: a path with "..", a checksum, a size that was not true; where its end is missing, in words of its own trade. */
function whyNot(error: unknown): string {
  const said = error instanceof Error ? error.message : String(error);
  return /central directory|truncated|unexpected end/i.test(said) ? "it is damaged, or did not come whole" : said;
}
