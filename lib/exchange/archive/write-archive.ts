import { zipSync } from "fflate";

// Archives hold wall-clock times without a zone; one fixed time gives the same bytes for the same files everywhere.
const MADE = new Date(2000, 0, 1);

/**
 * Packs files, by path, into a zip archive under one folder. The same files give the same bytes. Pictures are packed as they
 * are; all else is compressed.
 */
export function writeArchive(files: ReadonlyMap<string, Uint8Array>, folder: string): Uint8Array {
  const packed = [...files].map(([path, bytes]) => {
    const level = /\.(jpe?g|png|webp)$/i.test(path) ? 0 : 6;
    return [`${folder}/${path}`, [bytes, { level, mtime: MADE }]] as const;
  });
  return zipSync(Object.fromEntries(packed) as Parameters<typeof zipSync>[0]);
}
