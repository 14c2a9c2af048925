import { createHash } from "node:crypto";
import sharp from "sharp";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { longestSide, mostBytesStored, mostPixels } from "./photo-limits";
import { isPlainJpeg } from "./plain-jpeg";
import { type ReEncoded, reEncoded } from "./re-encode";

/**
 * A picture that a registry stored once is kept as it is, byte for byte, so that it has one name wherever it goes: where it has nothing in it but
 * the picture, is no larger than what is stored here, and can be read to its end. Anything else is made into what is stored (see reEncoded).
 */
export async function keptOrReEncoded(bytes: Uint8Array, name: string): Promise<Outcome<ReEncoded>> {
  if (bytes.length > mostBytesStored || !isPlainJpeg(bytes)) return reEncoded(bytes, name);
  try {
    const { info } = await sharp(bytes, { failOn: "error", limitInputPixels: mostPixels })
      .raw()
      .toBuffer({ resolveWithObject: true });
    const { width, height } = info;
    if (Math.max(width, height) > longestSide) return reEncoded(bytes, name);
    const hash = createHash("sha256").update(bytes).digest("hex");
    return accepted({ jpeg: bytes, hash, width, height, bytes: bytes.length });
  } catch {
    return reEncoded(bytes, name);
  }
}
