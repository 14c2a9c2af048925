import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** The longer side of a picture as it is kept, in pixels. */
export const longestSide = 1600;
const quality = 0.82;

export interface ShrunkPhoto {
  /** SHA-256 of the bytes, in hex */
  readonly hash: string;
  readonly bytes: Blob;
}

/** The size at which a picture is kept: as it is, or its longer side at `longestSide`. */
export function shrunkSize(width: number, height: number): { readonly width: number; readonly height: number } {
  const share = Math.min(1, longestSide / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * share)), height: Math.max(1, Math.round(height * share)) };
}

/**
 * A picture as it is kept: upright, at most 1600 pixels on its longer side, as JPEG. It is drawn anew, so where it was taken, when, and with what
 * is not in it. Refused: what is no picture.
 */
export async function shrinkPhoto(file: Blob): Promise<Outcome<ShrunkPhoto>> {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
  if (picture === null) return wrong("is no picture that this phone can read", "take it anew");
  const { width, height } = shrunkSize(picture.width, picture.height);
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  canvas.getContext("2d")?.drawImage(picture, 0, 0, width, height);
  picture.close();
  const bytes = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", quality));
  if (bytes === null) return wrong("could not be made smaller", "close other pages on this phone and take it anew");
  const digest = await crypto.subtle.digest("SHA-256", await bytes.arrayBuffer());
  const hash = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return accepted({ hash, bytes });
}

function wrong(what: string, needed: string): Outcome<never> {
  return refused(refusal("not-a-picture", ["photo"], "this file", what, needed));
}
