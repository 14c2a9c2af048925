/**
 * Whether some bytes are a JPEG with nothing in it but the picture (ITU-T T.81, annex B): tables, one frame, scans, the end, and nothing behind the end.
 * No application data (Exif and its place, colour profiles, small copies) and no comment.
 */
export function isPlainJpeg(bytes: Uint8Array): boolean {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return false;
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return false;
    const marker = bytes[at + 1] ?? 0;
    if (!pictureSegments.has(marker)) return false;
    at += 2 + (bytes[at + 2] ?? 0) * 256 + (bytes[at + 3] ?? 0);
    if (marker !== startOfScan) continue;
    at = endOfScan(bytes, at);
    if (bytes[at + 1] === endOfImage) return at + 2 === bytes.length;
  }
  return false;
}

const startOfScan = 0xda;
const endOfImage = 0xd9;
/** quantization and Huffman tables, restart interval, baseline and progressive frames, scans */
const pictureSegments: ReadonlySet<number> = new Set([0xdb, 0xc4, 0xdd, 0xc0, 0xc1, 0xc2, startOfScan]);

/** The place of the first marker behind a scan: ff 00 is data, ff d0 to ff d7 restart within it. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at += 1) {
    const next = bytes[at + 1] ?? 0;
    if (bytes[at] === 0xff && next !== 0 && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}
