import { Zip, ZipDeflate, ZipPassThrough } from "fflate";

// Archives hold wall-clock times without a zone; one fixed time gives the same bytes for the same files everywhere.
const MADE = new Date(2000, 0, 1);

/** The most bytes that go into one archive: its form knows no places beyond 4 GiB. */
export const MOST_IN_ARCHIVE = 3_500_000_000;

/** A file that is read when its turn comes; null: it is gone, and is left out. */
export interface LateFile {
  readonly path: string;
  readonly read: () => Promise<Uint8Array | null>;
}

/**
 * Packs files, by path, into a zip archive under one folder, and after them others that are read one by one, so that they are never all in memory. The
 * same files give the same bytes. Pictures are packed as they are; all else is compressed.
 */
export function writeArchive(
  files: ReadonlyMap<string, Uint8Array>,
  later: readonly LateFile[],
  folder: string,
): ReadableStream<Uint8Array> {
  const ready: Uint8Array[] = [];
  const zip = new Zip((error, piece) => {
    if (error) throw error;
    ready.push(piece);
  });
  const all = [...[...files].map(([path, bytes]) => ({ path, read: async () => bytes })), ...later];
  let next = 0;
  return new ReadableStream({
    async pull(to) {
      while (ready.length === 0 && next <= all.length) {
        const file = all[next];
        const bytes = await file?.read();
        if (file && bytes) pack(zip, `${folder}/${file.path}`, bytes);
        if (!file) zip.end();
        next += 1;
      }
      for (const piece of ready.splice(0)) to.enqueue(piece);
      if (next > all.length) to.close();
    },
  });
}

function pack(zip: Zip, path: string, bytes: Uint8Array): void {
  const entry = /\.(jpe?g|png|webp)$/i.test(path) ? new ZipPassThrough(path) : new ZipDeflate(path, { level: 6 });
  entry.mtime = MADE;
  zip.add(entry);
  entry.push(bytes, true);
}
